//! How far each input may be from what it says.

use crate::boat::{
    Alternator, Basis, HOT_RATED_ANCHOR_SPAN_C, HotRating, Key, WhichAlternator, Worksheet, key,
};
use crate::schema::{Confidence, Kind, Spread, Value};
use crate::simulation::cooling::winding_cooled_as_usual_c;
use crate::units::UnitOfMeasure;
use crate::units::{CELSIUS, KELVIN};

/// Part by which a figure printed on a machine may be off: common practice.
const NAMEPLATE: f64 = 0.05;
/// Part by which a reading may be off: a clamp meter, a tape on a pulley, a
/// rev counter held against another. Common practice.
const MEASURED: f64 = 0.02;
/// The same for temperatures \[K\], where a share of the figure means nothing: a
/// thermometer is off by 2, and so is where it is held.
const NAMEPLATE_K: f64 = 5.0;
const MEASURED_K: f64 = 3.0;

/// An input that may be another than it says.
pub struct Factor {
    /// Which one.
    pub key: Key,
    moves: Moves,
}

enum Moves {
    /// By at most so much down and up, in its unit.
    Number { down: f64, up: f64 },
    /// To any of so many options.
    Choice(usize),
    /// The whole list of loads, by a part of it either way.
    List(f64),
}

/// Every input that may be another than it says, in worksheet order, so that
/// one which follows from another comes after it.
pub fn factors(sheet: &Worksheet) -> Vec<Factor> {
    let usual = Worksheet::default();
    Key::all()
        .filter(|key| key.applies(&sheet.inputs))
        .filter_map(|key| moves(sheet, &usual, key).map(|moves| Factor { key, moves }))
        .collect()
}

fn moves(sheet: &Worksheet, usual: &Worksheet, key: Key) -> Option<Moves> {
    let spec = key.spec();
    let known = sheet.knowledge(key);
    match (spec.kind, spec.spread?) {
        (Kind::Choice { options, .. }, Spread::Either) => {
            // The usual option also stands for papers that do not say.
            let unsaid = known == Confidence::Nameplate && sheet.inputs.get(key) == spec.default();
            (unsaid || !known.is_read()).then_some(Moves::Choice(options.len()))
        }
        // The choice of a list stands for the whole list.
        (Kind::Choice { .. }, Spread::Percent(percent)) => {
            let part = finest(known, None, 1.0).unwrap_or(percent / 100.0);
            (sheet.inputs.daily.basis == Basis::Listed).then_some(Moves::List(part))
        }
        (Kind::Choice { .. }, _) => None,
        (_, spread) => {
            let stands = sheet.figure(key)?;
            let spread = of_this_boat(sheet, key).unwrap_or(spread);
            let usual = usual.figure(key).unwrap_or(stands);
            let guess = reach(spread, stands, usual);
            let (down, up) = match finest(known, spec.unit(), stands) {
                None => guess,
                Some(off) => {
                    let off = off.min(0.5 * (guess.0 + guess.1));
                    (off, off)
                }
            };
            (down + up > 0.0).then_some(Moves::Number { down, up })
        }
    }
}

/// How far a guess may be off where that depends on the boat.
fn of_this_boat(sheet: &Worksheet, key: Key) -> Option<Spread> {
    /// Lithium returns nearly all that goes in \[%\].
    const LITHIUM_EFFICIENCY: Spread = Spread::By(0.5);
    let inputs = &sheet.inputs;
    if key == key!(bank.charge_efficiency_pct) && inputs.bank.chemistry.lead().is_none() {
        return Some(LITHIUM_EFFICIENCY);
    }
    let rated_hot = WhichAlternator::ALL.into_iter().any(|which| {
        key == which.key(Alternator::anchor_winding_c)
            && inputs.as_described(which).alternator.hot_rating == HotRating::At93
    });
    rated_hot.then_some(Spread::Between(
        HOT_RATED_ANCHOR_SPAN_C.0,
        HOT_RATED_ANCHOR_SPAN_C.1,
    ))
}

/// How far a guess may be off, down and up.
///
/// A guess outside the plausible range is taken as one for a boat of another
/// size: the range then moves along with it.
fn reach(spread: Spread, stands: f64, usual: f64) -> (f64, f64) {
    match spread {
        Spread::Between(low, high) => {
            let scale = if (low..=high).contains(&stands) || usual == 0.0 {
                1.0
            } else {
                (stands / usual).abs()
            };
            (
                (stands - scale * low).max(0.0),
                (scale * high - stands).max(0.0),
            )
        }
        Spread::Percent(percent) => {
            let off = stands.abs() * percent / 100.0;
            (off, off)
        }
        Spread::By(off) => (off, off),
        Spread::Either => (0.0, 0.0),
    }
}

/// How far a figure may be off that is no guess; none for a guess.
fn finest(known: Confidence, unit: Option<&UnitOfMeasure>, stands: f64) -> Option<f64> {
    let warmth = unit == Some(CELSIUS) || unit == Some(KELVIN);
    match (known, warmth) {
        (Confidence::Guess | Confidence::Proposed, _) => None,
        (Confidence::Nameplate, false) => Some(NAMEPLATE * stands.abs()),
        (Confidence::Nameplate, true) => Some(NAMEPLATE_K),
        (Confidence::Measured, false) => Some(MEASURED * stands.abs()),
        (Confidence::Measured, true) => Some(MEASURED_K),
    }
}

impl Factor {
    /// What it is called.
    pub fn label(&self) -> &'static str {
        match self.moves {
            Moves::List(_) => "The list of loads",
            _ => self.key.spec().label,
        }
    }

    /// Puts into `drawn` what the input is when a share (0 to 1) of all cases
    /// lies below. `sheet` is the worksheet as it stands.
    pub fn apply(&self, sheet: &Worksheet, drawn: &mut Worksheet, share: f64) {
        match self.moves {
            Moves::Number { down, up } => {
                let range = self.key.spec().range();
                if let (Some(stands), Some((low, high))) = (drawn.figure(self.key), range) {
                    let number = stands + triangle(share, down, up);
                    let number = as_own(drawn, self.key, number).clamp(low, high);
                    let _ = drawn.inputs.set(self.key, Value::Number(number));
                    move_anchor(drawn, self.key, number / stands);
                }
            }
            Moves::Choice(options) => {
                let at = ((share * options as f64) as usize).min(options.saturating_sub(1));
                let _ = drawn.inputs.set(self.key, Value::Choice(at));
            }
            Moves::List(part) => {
                let factor = 1.0 + triangle(share, part, part);
                for (load, said) in drawn.loads.iter_mut().zip(&sheet.loads) {
                    load.row.draw = said.row.draw * factor;
                }
            }
        }
    }
}

/// What a case was read at was an engine speed: by another pulley ratio the shaft
/// turned as much faster then.
fn move_anchor(drawn: &mut Worksheet, key: Key, ratio: f64) {
    let turned = WhichAlternator::ALL.into_iter().find(|which| {
        let installed = drawn.inputs.as_described(*which);
        which.key(Alternator::pulley_ratio) == key && installed.known_by_case()
    });
    if let Some(which) = turned {
        drawn.inputs.alternator_mut(which).anchor_rpm *= ratio;
    }
}

/// A figure that nobody stated belongs to a usual alternator: the winding's
/// temperature on the bench is told of one with its own losses as soon as it is
/// stated.
fn as_own(drawn: &Worksheet, key: Key, number: f64) -> f64 {
    let anchored = WhichAlternator::ALL
        .into_iter()
        .find(|which| which.key(Alternator::anchor_winding_c) == key)
        .filter(|_| drawn.inputs.get(key) == Value::Absent);
    match anchored {
        Some(which) => winding_cooled_as_usual_c(&drawn.inputs.as_described(which), number),
        None => number,
    }
}

/// Where a share (0 to 1) of a triangle lies below, measured from its peak;
/// `down` and `up` are the reach of its sides. By hand from the triangle's area;
/// see S. Kotz, J. R. van Dorp, "Beyond Beta", 2004, chapter 1 (from memory).
pub(super) fn triangle(share: f64, down: f64, up: f64) -> f64 {
    let whole = down + up;
    if whole <= 0.0 {
        0.0
    } else if share * whole < down {
        (share * whole * down).sqrt() - down
    } else {
        up - ((1.0 - share) * whole * up).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use crate::decision::uncertainty::spread::{finest, reach, triangle};
    use crate::schema::{Confidence, Spread};
    use crate::units::{AMPERE, CELSIUS};

    /// By hand: a quarter of a triangle from −1 to 3 lies below its peak, half
    /// of one from −2 to 2, and an eighth of that below −1.
    #[test]
    fn triangles() {
        assert_eq!(triangle(0.25, 1.0, 3.0), 0.0);
        assert_eq!(triangle(0.0, 1.0, 3.0), -1.0);
        assert_eq!(triangle(1.0, 1.0, 3.0), 3.0);
        assert_eq!(triangle(0.125, 2.0, 2.0), -1.0);
        assert_eq!(triangle(0.5, 0.0, 0.0), 0.0);
        // All on one side: three quarters lie below half way.
        assert_eq!(triangle(0.75, 0.0, 2.0), 1.0);
    }

    #[test]
    fn reaches() {
        let between = Spread::Between(100.0, 200.0);
        assert_eq!(reach(between, 150.0, 150.0), (50.0, 50.0));
        assert_eq!(reach(between, 110.0, 150.0), (10.0, 90.0));
        // Twice the usual boat: 200 to 400.
        assert_eq!(reach(between, 300.0, 150.0), (100.0, 100.0));
        assert_eq!(reach(Spread::Percent(25.0), 80.0, 120.0), (20.0, 20.0));
        assert_eq!(reach(Spread::By(5.0), -3.0, 28.0), (5.0, 5.0));
    }

    #[test]
    fn what_is_read_is_closer() {
        assert_eq!(finest(Confidence::Guess, Some(AMPERE), 100.0), None);
        assert_eq!(
            finest(Confidence::Nameplate, Some(AMPERE), 100.0),
            Some(5.0)
        );
        assert_eq!(finest(Confidence::Measured, Some(AMPERE), 100.0), Some(2.0));
        assert_eq!(
            finest(Confidence::Measured, Some(CELSIUS), 100.0),
            Some(3.0)
        );
    }
}
