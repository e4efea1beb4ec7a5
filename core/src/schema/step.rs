//! A figure stepped up or down by a button or an arrow key, on round numbers.

use crate::schema::{FieldSpec, Value};
use crate::units::{Other, UnitOfMeasure};

/// Share of the figure that a step is, at most.
const SHARE: f64 = 0.02;
/// Share of the range that it is at least, where the figure is usually nought.
const RANGE_SHARE: f64 = 1.0 / 500.0;

impl FieldSpec {
    /// The next round figure above or below, of the unit the entry is shown in;
    /// an empty entry begins with what it stands for. Steps are 1, 2 or 5 of a
    /// decimal place, about 2 % of the figure, and never out of range; a choice
    /// stays what it is.
    pub fn step(
        &self,
        other: Option<Other>,
        value: Value,
        stands_for: Option<f64>,
        up: bool,
    ) -> Value {
        let (Some((low, high)), Some(unit)) = (self.range(), self.unit()) else {
            return value;
        };
        let number = match value {
            Value::Number(number) => number,
            _ => stands_for.unwrap_or(low),
        };
        let shown = |number: f64| other.map_or(number, |other| other.to(number));
        let usual = match self.default() {
            Value::Number(default) => shown(default).abs(),
            _ => stands_for.map_or(0.0, |figure| shown(figure).abs()),
        };
        let here = shown(number);
        let step = by(unit, here.abs(), usual, shown(high) - shown(low));
        // A figure on a step, give or take a rounding, goes to the next one.
        let at = here / step;
        let next = if up {
            (at + 1e-6).floor() + 1.0
        } else {
            (at - 1e-6).ceil() - 1.0
        };
        let next = (next * step * 1e6).round() / 1e6;
        let next = other.map_or(next, |other| other.back(next));
        Value::Number(next.clamp(low, high))
    }
}

/// How far a step goes from a figure, with what it usually is and its range.
fn by(unit: &UnitOfMeasure, figure: f64, usual: f64, range: f64) -> f64 {
    let least = if usual > 0.0 {
        0.5 * SHARE * usual
    } else {
        RANGE_SHARE * range
    };
    round_down((SHARE * figure).max(least)).max(unit.least_step)
}

/// The largest of 1, 2 and 5 times a power of ten that is no larger.
fn round_down(figure: f64) -> f64 {
    let figure = figure.max(1e-4) * 1.000_001;
    let mut ten = 1e-4;
    while ten * 10.0 <= figure {
        ten *= 10.0;
    }
    [5.0, 2.0]
        .into_iter()
        .map(|times| times * ten)
        .find(|step| *step <= figure)
        .unwrap_or(ten)
}

#[cfg(test)]
mod tests {
    use crate::boat::Section as _;
    use crate::boat::{Key, LoadRow, Worksheet, key};
    use crate::schema::step::*;

    fn stepped(name: &str, from: f64, up: bool) -> f64 {
        let spec = Key::named(name).unwrap().spec();
        number(spec.step(None, Value::Number(from), None, up))
    }

    fn number(value: Value) -> f64 {
        match value {
            Value::Number(number) => number,
            other => panic!("{other:?}"),
        }
    }

    /// By hand: 2 % of the figure, rounded down to 1, 2 or 5.
    #[test]
    fn steps_are_round_and_sensible() {
        for (name, from, down, up) in [
            ("bank_capacity_ah", 400.0, 395.0, 405.0),
            ("bank_capacity_ah", 403.0, 400.0, 405.0),
            ("eng_rpm", 1500.0, 1480.0, 1520.0),
            ("alt_pulley_ratio", 2.2, 2.18, 2.22),
            ("bank_charge_v", 13.9, 13.8, 14.0),
            ("space_outside_c", 25.0, 24.0, 26.0),
            ("space_outside_c", 0.0, -1.0, 1.0),
            ("run_from_pct", 30.5, 30.0, 31.0),
            ("space_blower_m3h", 0.0, 0.0, 5.0),
            ("space_blower_m3h", 200.0, 195.0, 205.0),
            ("rule_quiet_from_h", 21.0, 20.5, 21.5),
        ] {
            let found = (stepped(name, from, false), stepped(name, from, true));
            assert_eq!(found, (down, up), "{name} from {from}");
        }
    }

    #[test]
    fn loads_are_whole_pieces() {
        let at = LoadRow::column("count").unwrap();
        let spec = &LoadRow::FIELDS[at].spec;
        let step = |up| number(spec.step(None, Value::Number(3.0), None, up));
        assert_eq!((step(false), step(true)), (2.0, 4.0));
    }

    /// 77 °F is 25 °C; a step is a whole degree of what is shown.
    #[test]
    fn steps_are_round_in_the_unit_shown() {
        let spec = key!(space.outside_c).spec();
        let other = spec.unit().unwrap().other;
        let up = spec.step(other, Value::Number(25.0), None, true);
        assert_eq!(spec.write_in(other, up), "78");
    }

    /// From either end to the other, each step inside the range and no standstill.
    #[test]
    fn every_entry_can_be_stepped_through() {
        let sheet = Worksheet::default();
        for key in Key::all() {
            let spec = key.spec();
            let Some((low, high)) = spec.range() else {
                assert_eq!(spec.step(None, spec.default(), None, true), spec.default());
                continue;
            };
            for other in [None, spec.unit().unwrap().other] {
                let mut here = low;
                for _ in 0..200 {
                    let next = number(spec.step(other, Value::Number(here), None, true));
                    assert!(next > here || here == high, "{}: {here}", key.name());
                    assert!(spec.accept(Value::Number(next)).is_ok(), "{}", key.name());
                    here = next;
                }
                let stands_for = sheet.figure(key);
                for up in [false, true] {
                    let next = spec.step(other, spec.default(), stands_for, up);
                    assert!(spec.accept(next).is_ok(), "{}: {next:?}", key.name());
                }
            }
        }
    }
}
