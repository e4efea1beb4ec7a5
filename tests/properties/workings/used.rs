//! What a figure is and what it used is the report's and the worksheet's own.

use ampwright_core::Worksheet;
use ampwright_core::boat::Key;
use ampwright_core::explain::Working;
use ampwright_core::schema::Value;
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::workings::calculator::come_to;

/// What stands in the report under a dotted name, in which a number is a place
/// in a list; none outside of it.
fn found<'a>(json: &'a Json, id: &str) -> Option<&'a Json> {
    id.split('.').try_fold(json, |json, part| match json {
        Json::Null => Some(json),
        Json::Object(parts) => parts.get(part),
        Json::Array(rows) => rows.get(part.parse::<usize>().ok()?),
        _ => None,
    })
}

/// The figure is the report's, and its numbers come to it.
pub fn agrees(json: &Json, working: &Working) -> Result<(), TestCaseError> {
    let half = 0.5 * 10f64.powi(-(working.decimals as i32));
    let id = working.id;
    if !id.starts_with("inner.") && !id.starts_with("moment.") {
        let reported = found(json, id.trim_start_matches("arrangement."));
        prop_assert!(reported.is_some(), "{id} is not in the report");
        prop_assert_eq!(reported.and_then(Json::as_f64), working.value, "{}", id);
    }
    if working.figures.is_empty() {
        prop_assert!(
            !working.note.is_empty(),
            "{id} has neither formula nor note"
        );
        return Ok(());
    }
    let value = working.value.unwrap_or(f64::NAN);
    let given = come_to(&working.figures)?;
    prop_assert!(
        (given - value).abs() <= half + 1e-9 * value.abs(),
        "{id} is {value}, but {} = {} gives {given}",
        working.symbols,
        working.figures
    );
    Ok(())
}

/// Inputs are the worksheet's own; other workings are what they say.
pub fn used_is_own(
    sheet: &Worksheet,
    all: &[Working],
    working: &Working,
) -> Result<(), TestCaseError> {
    for used in &working.uses {
        prop_assert!(!used.name.is_empty(), "{}: {used:?}", working.id);
        prop_assert_ne!(&used.symbol, "?", "{}: {:?}", working.id, used);
        if let Some(name) = &used.key {
            let key = Key::named(name).expect("a key");
            let known = key.spec().is_fact().then(|| sheet.knowledge(key));
            prop_assert_eq!(used.known, known, "{}", name);
            prop_assert_eq!(used.value, sheet.figure(key), "{}", name);
            prop_assert_eq!(
                used.says.is_empty(),
                matches!(sheet.inputs.get(key), Value::Number(_)),
                "{}",
                name
            );
        } else {
            prop_assert_eq!(used.known, None);
        }
        if let Some(id) = used.working {
            let other = all.iter().find(|other| other.id == id);
            prop_assert!(other.is_some(), "{}: no working {id}", working.id);
            // Minutes and seconds may round the moment's last digit.
            let same = match (other.and_then(|other| other.value), used.value) {
                (Some(one), Some(two)) => (one - two).abs() <= 1e-9 * one.abs(),
                (one, two) => one == two,
            };
            prop_assert!(same, "{} uses {id} as {:?}", working.id, used.value);
        }
    }
    Ok(())
}
