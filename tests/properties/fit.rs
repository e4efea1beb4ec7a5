//! Fitting it safely: every finding about belts, speeds and defences comes out
//! of some worksheet, a fresh one asks no more than once for each, and every
//! input moves something.

use crate::regulated;
use ampwright_core::boat::Key;
use ampwright_core::schema::{Kind, Value};
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;
use serde_json::Value as Json;

/// JSON holds no number that is not finite, it writes `null`; no sentence
/// tells of one.
pub fn sound(json: &Json, may_be_null: &[&str]) -> Result<(), TestCaseError> {
    match json {
        Json::Array(rows) => rows.iter().try_for_each(|row| sound(row, may_be_null))?,
        Json::Object(parts) => {
            for (name, part) in parts {
                let absent = part.is_null() && may_be_null.contains(&name.as_str());
                prop_assert!(absent || !part.is_null(), "{name} is no number");
                if !absent {
                    sound(part, may_be_null)?;
                }
            }
        }
        Json::String(text) => {
            for word in ["NaN", "inf ", "inf.", "-0 ", "%%"] {
                prop_assert!(!text.contains(word), "“{word}” in {text}");
            }
        }
        Json::Null | Json::Bool(_) | Json::Number(_) => {}
    }
    Ok(())
}

/// A finding and a worksheet that has it.
const FOUND: &[(&str, &str)] = &[
    ("belt_not_said", "alt_rated_a=150&bank_capacity_ah=800"),
    (
        "belt_not_said",
        "belt_kind=two_v13&two_role=house&alt2_rated_a=150&bank_capacity_ah=800",
    ),
    ("belt_too_small", "belt_kind=v10&alt_rated_a=150"),
    ("belt_too_small", "belt_kind=ribs10&belt_tight_n=100"),
    ("pulleys_overlap", "belt_kind=v13&belt_centres_mm=90"),
    ("ratio_disagrees", "belt_kind=v13&belt_engine_mm=100"),
    ("belt_wrap_small", "belt_kind=v13&belt_wrap_deg=110"),
    ("belt_wrap_small", "belt_kind=ribs6&belt_wrap_deg=130"),
    ("belt_pulley_small", "belt_kind=v13&belt_pulley_mm=55"),
    (
        "belt_shared_pump",
        "belt_kind=two_v13&belt_pump=yes&alt_rated_a=150",
    ),
    (
        "crank_side_load",
        "belt_kind=two_v13&alt_rated_a=350&bank_capacity_ah=1000",
    ),
    (
        "crank_side_load",
        "belt_kind=v13&two_role=house&belt2_kind=v13&alt_rated_a=150&alt2_rated_a=150&bank_capacity_ah=800",
    ),
    ("overspeed", "alt_pulley_ratio=3&eng_top_rpm=6000"),
    (
        "overspeed",
        "two_role=start&alt2_pulley_ratio=3&eng_top_rpm=6000",
    ),
    (
        "overspeed",
        "alt_max_rpm=5000&eng_rpm=2500&eng_top_rpm=2000",
    ),
    ("faster_than_top", "eng_rpm=2500&eng_top_rpm=2000"),
    ("second_too_slow", "two_role=start&alt2_pulley_ratio=0.6"),
    (
        "engine_overloaded",
        "alt_rated_a=250&bank_capacity_ah=1000&eng_displacement_l=0.5",
    ),
    ("disconnect_not_said", ""),
    ("disconnect_unguarded", "guard_clamp=none"),
    (
        "disconnect_unguarded",
        "reg_kind=internal&guard_warning=yes&guard_lead=no",
    ),
    ("disconnect_unguarded", "guard_clamp=clamp&guard_clamp_v=60"),
    ("warning_alone", "guard_warning=yes"),
    (
        "warning_alone",
        "guard_warning=yes&guard_clamp=none&guard_lead=no",
    ),
    ("switch_in_lead", "guard_switch=yes"),
    ("switch_in_lead", "way_kind=converter&guard_switch=yes"),
    ("clamp_too_low", "guard_clamp=clamp&guard_clamp_v=14"),
    ("clamp_too_small", "guard_clamp=avalanche&guard_clamp_j=1"),
];

fn sheet(inputs: &str) -> Worksheet {
    regulated::opened(&format!("v=2&{inputs}&end"))
}

fn keys(inputs: &str) -> Vec<&'static str> {
    let findings = report(&sheet(inputs)).findings;
    findings
        .iter()
        .map(|finding| finding.code().name())
        .collect()
}

#[test]
fn every_finding_comes_out() {
    for (key, inputs) in FOUND {
        assert!(
            keys(inputs).contains(key),
            "{key}: {inputs}: {:?}",
            keys(inputs)
        );
    }
}

/// What answers a question is not asked again, and what guards is not found wanting.
#[test]
fn a_sound_boat_is_left_alone() {
    let sound = "belt_kind=ribs8&belt_pump=no&guard_warning=yes&guard_clamp=clamp&guard_clamp_v=30&guard_lead=no&guard_switch=no";
    let found = keys(sound);
    for (key, _) in FOUND {
        assert!(!found.contains(key), "{key}: {found:?}");
    }
    for inputs in [
        "guard_warning=yes",
        "guard_lead=yes",
        "guard_clamp=clamp&guard_clamp_v=30",
        "guard_bear_v=400&guard_clamp=none",
        "bank_chemistry=agm",
        "way_kind=converter",
    ] {
        let found = keys(inputs);
        for key in ["disconnect_not_said", "disconnect_unguarded"] {
            assert!(!found.contains(&key), "{key}: {inputs}");
        }
    }
}

#[test]
fn a_fresh_worksheet_asks_once_for_each() {
    let ours: Vec<_> = FOUND.iter().map(|(key, _)| *key).collect();
    let mut found = keys("");
    found.retain(|key| ours.contains(key));
    assert_eq!(found, ["disconnect_not_said"]);
    let mut found = keys("way_kind=converter&two_role=house");
    found.retain(|key| key.starts_with("belt") || key.starts_with("disconnect"));
    assert_eq!(found, ["disconnect_not_said"]);
}

/// The belt is asked for as a question, of each alternator, until it is
/// entered; it is a finding only where one usual V-belt would not do.
#[test]
fn a_belt_is_a_question() {
    let asked = |inputs: &str| {
        let report = report(&sheet(inputs));
        let inputs: Vec<_> = report.questions.iter().map(|q| q.input().name()).collect();
        for question in &report.questions {
            assert!(Key::all().any(|key| key == question.input()));
            let asked = ampwright_core::text::question(question, &Reader::METRIC);
            assert!(asked.contains("kW"), "{asked}");
        }
        inputs
    };
    assert_eq!(asked(""), ["belt_kind"]);
    assert_eq!(asked("two_role=start"), ["belt_kind", "belt2_kind"]);
    assert_eq!(asked("two_role=start&belt_kind=v13"), ["belt2_kind"]);
    assert!(asked("belt_kind=v13").is_empty());
    assert!(!keys("").contains(&"belt_not_said"));
    // What the finding asks for is not asked again as a question.
    let large = "alt_rated_a=150&bank_capacity_ah=800";
    assert!(keys(large).contains(&"belt_not_said"));
    assert!(asked(large).is_empty());
}

/// Everything that comes of a worksheet here, as text.
fn everything(sheet: &Worksheet) -> String {
    let report = report(sheet);
    let belts = serde_json::to_string(&report.analyses.belts).expect("JSON");
    let dump = serde_json::to_string(&report.analyses.load_dump).expect("JSON");
    let found = serde_json::to_string(&report.findings).expect("JSON");
    belts + &dump + &found
}

#[test]
fn every_input_moves_something() {
    let base =
        sheet("belt_kind=v13&two_role=house&belt2_kind=v13&guard_clamp=clamp&guard_clamp_v=40");
    let before = everything(&base);
    let ours = |key: &Key| {
        let name = key.name();
        name.starts_with("belt") || name.starts_with("guard")
    };
    for key in Key::all().filter(ours) {
        assert!(key.applies(&base.inputs), "{}", key.name());
        let moved = match (key.spec().kind, key.spec().range()) {
            (Kind::Choice { .. }, _) => Value::Choice(1),
            (_, Some((low, high))) => Value::Number(0.5 * (low + high)),
            _ => continue,
        };
        let mut other = base.clone();
        if base.inputs.get(key) == moved {
            continue;
        }
        other.state(key, moved).expect("in range");
        assert_ne!(everything(&other), before, "{}", key.name());
    }
}
