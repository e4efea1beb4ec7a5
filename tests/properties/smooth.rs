//! A small change of an input is a small change of the answers.

use ampwright_core::boat::Key;
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::normal_boat;

/// How much an input is changed.
const NUDGE: f64 = 0.001;
/// How much a built-in regulator's voltage is: where it holds the current back,
/// a thousandth of it is 14 mV over some 3 mΩ of bank.
const NUDGE_V: f64 = 0.0001;
/// How much an answer may change.
const MOST: f64 = 0.02;

fn answers(sheet: &Worksheet) -> (f64, Option<f64>) {
    let report = report(sheet);
    (
        report.analyses.output.hot_a,
        report.analyses.run.minutes_to_target,
    )
}

/// The sheet with one figure changed.
fn nudged(sheet: &Worksheet, key: Key) -> Option<Worksheet> {
    let (low, high) = key.spec().range()?;
    let now = sheet.figure(key)?;
    let nudge = if key.name() == "reg_fixed_v" {
        NUDGE_V
    } else {
        NUDGE
    };
    let up = now * (1.0 + nudge);
    let to = if (low..=high).contains(&up) {
        up
    } else {
        now * (1.0 - nudge)
    };
    let mut other = sheet.clone();
    other.state(key, Value::Number(to)).ok()?;
    Some(other)
}

/// With the winding's anchors and the heat from it to the case stated: an empty one
/// means more than its figure, it belongs to a machine of usual efficiency, or to
/// one of whose winding nobody knows.
fn anchored(mut sheet: Worksheet) -> Worksheet {
    for key in Key::all().filter(is_anchor) {
        let figure = sheet.figure(key).expect("a figure");
        sheet.state(key, Value::Number(figure)).expect("in range");
    }
    sheet
}

fn is_anchor(key: &Key) -> bool {
    key.name().ends_with("_anchor_winding_c") || key.name().ends_with("_coupling_w_k")
}

proptest! {
    #![proptest_config(crate::cases(40))]

    #[test]
    fn a_thousandth_of_any_input(drawn in normal_boat()) {
        let sheet = anchored(drawn.0);
        let (hot_a, minutes) = answers(&sheet);
        for key in Key::all() {
            let Some(other) = nudged(&sheet, key) else { continue };
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

    /// An empty field stands for its figure, except a winding's anchor.
    #[test]
    fn stating_what_an_empty_field_means(drawn in normal_boat()) {
        let before = report(&drawn.0);
        for key in Key::all().filter(|key| !is_anchor(key)) {
            let (Value::Absent, Some(figure)) = (drawn.0.inputs.get(key), drawn.0.figure(key)) else {
                continue;
            };
            let mut stated = drawn.0.clone();
            // A figure may lie outside what the field takes: no bank is that large.
            if stated.state(key, Value::Number(figure)).is_ok() {
                let mut after = report(&stated);
                // A lead bank in this one's place would have other usual volts.
                after.analyses.lead = before.analyses.lead.clone();
                // A cable's words say where its current comes from.
                after.analyses.cables = before.analyses.cables.clone();
                prop_assert_eq!(&after, &before, "{}", key.name());
            }
        }
    }
}
