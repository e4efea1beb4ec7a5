//! How far each input may be from what it says.

use crate::boat::{Alternator, Basis, Key, WhichAlternator, Worksheet};
use crate::schema::{Confidence, Kind, Spread, Value};
use crate::units::UnitOfMeasure;
use crate::units::{CELSIUS, KELVIN};

/// Part by which a figure printed on a machine may be off: common practice.
const NAMEPLATE: f64 = 0.05;
/// Part by which a reading may be off: a clamp meter, a tape on a pulley, a
/// rev counter held against another. Common practice.
const MEASURED: f64 = 0.02;
/// The same for temperatures \[K\], where a share of the figure means nothing.
const NAMEPLATE_K: f64 = 5.0;
const MEASURED_K: f64 = 2.0;

/// An input that may be another than it says.
pub struct Factor {
    /// Which one.
    pub key: Key,
    /// The one that is moved in its place.
    moved: Key,
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
        .filter_map(|key| moves(sheet, &usual, key).map(|moves| factor(sheet, key, moves)))
        .collect()
}

/// The usual winding temperature on the bench belongs to a machine of usual
/// efficiency and must stay that; it is as much hotter as the air is cooler.
fn factor(sheet: &Worksheet, key: Key, moves: Moves) -> Factor {
    let air = WhichAlternator::ALL
        .into_iter()
        .find(|which| which.key(Alternator::anchor_winding_c) == key)
        .filter(|_| sheet.inputs.get(key) == Value::Absent)
        .map(|which| which.key(Alternator::anchor_air_c));
    match (air, moves) {
        (Some(moved), Moves::Number { down, up }) => Factor {
            key,
            moved,
            moves: Moves::Number { down: up, up: down },
        },
        (_, moves) => Factor {
            key,
            moved: key,
            moves,
        },
    }
}

fn moves(sheet: &Worksheet, usual: &Worksheet, key: Key) -> Option<Moves> {
    let spec = key.spec();
    let known = sheet.knowledge(key);
    match (spec.kind, spec.spread?) {
        (Kind::Choice { options, .. }, Spread::Either) => {
            (!known.is_read()).then_some(Moves::Choice(options.len()))
        }
        // The choice of a list stands for the whole list.
        (Kind::Choice { .. }, Spread::Percent(percent)) => {
            let part = finest(known, None, 1.0).unwrap_or(percent / 100.0);
            (sheet.inputs.daily.basis == Basis::Listed).then_some(Moves::List(part))
        }
        (Kind::Choice { .. }, _) => None,
        (_, spread) => {
            let stands = sheet.figure(key)?;
            let guess = reach(spread, stands, usual.figure(key)?);
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
                let range = self.moved.spec().range();
                if let (Some(stands), Some((low, high))) = (drawn.figure(self.moved), range) {
                    let number = stands + triangle(share, down, up);
                    let number = Value::Number(number.clamp(low, high));
                    let _ = drawn.inputs.set(self.moved, number);
                }
            }
            Moves::Choice(options) => {
                let at = ((share * options as f64) as usize).min(options.saturating_sub(1));
                let _ = drawn.inputs.set(self.moved, Value::Choice(at));
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

/// Where a share (0 to 1) of a triangle lies below, measured from its peak;
/// `down` and `up` are the reach of its sides. By hand from the triangle's area;
/// see S. Kotz, J. R. van Dorp, "Beyond Beta", 2004, chapter 1 (from memory).
fn triangle(share: f64, down: f64, up: f64) -> f64 {
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
            Some(2.0)
        );
    }
}
