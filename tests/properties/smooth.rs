//! A small change of an input is a small change of the answers.

use ampwright_core::fields::Value;
use ampwright_core::worksheet::Key;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::normal_boat;

/// How much an input is changed.
const NUDGE: f64 = 0.001;
/// How much an answer may change.
const MOST: f64 = 0.02;

fn answers(sheet: &Worksheet) -> (f64, Option<f64>) {
    let report = report(sheet);
    (report.machine.hot_a, report.run.minutes_to_target)
}

/// The sheet with its figure for an input stated, and with that figure changed.
///
/// Stated, because an empty field may mean more than its figure: an empty
/// winding anchor belongs to a machine of usual efficiency.
fn nudged(sheet: &Worksheet, key: Key) -> Option<(Worksheet, Worksheet)> {
    let (low, high) = key.spec().range()?;
    let now = sheet.figure(key)?;
    let up = now * (1.0 + NUDGE);
    let to = if (low..=high).contains(&up) {
        up
    } else {
        now * (1.0 - NUDGE)
    };
    let with = |number: f64| {
        let mut other = sheet.clone();
        other.state(key, Value::Number(number)).ok()?;
        Some(other)
    };
    Some((with(now)?, with(to)?))
}

proptest! {
    #![proptest_config(crate::cases(100))]

    #[test]
    fn a_thousandth_of_any_input(drawn in normal_boat()) {
        for key in Key::all() {
            let Some((sheet, other)) = nudged(&drawn.0, key) else { continue };
            let (hot_a, minutes) = answers(&sheet);
            let (hot_there_a, minutes_there) = answers(&other);
            let name = key.name();
            prop_assert!(
                (hot_there_a - hot_a).abs() <= MOST * hot_a + 0.05,
                "{name}: {hot_a} A became {hot_there_a}"
            );
            // Whether the target is within reach is a threshold of its own.
            if let (Some(minutes), Some(there)) = (minutes, minutes_there) {
                prop_assert!(
                    (there - minutes).abs() <= MOST * minutes + 0.05,
                    "{name}: {minutes} min became {there}"
                );
            }
        }
    }

    /// An empty field stands for its figure, except the winding's anchor.
    #[test]
    fn stating_what_an_empty_field_means(drawn in normal_boat()) {
        let before = report(&drawn.0);
        for key in Key::all().filter(|key| key.name() != "alt_anchor_winding_c") {
            let (Value::Absent, Some(figure)) = (drawn.0.inputs.get(key), drawn.0.figure(key)) else {
                continue;
            };
            let mut stated = drawn.0.clone();
            // A figure may lie outside what the field takes: no bank is that large.
            if stated.state(key, Value::Number(figure)).is_ok() {
                prop_assert_eq!(&report(&stated), &before, "{}", key.name());
            }
        }
    }
}
