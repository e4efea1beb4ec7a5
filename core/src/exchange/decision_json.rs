//! Arrangements and plans as JSON: codes and quantities, and what is said of
//! them.

use serde_json::{Value, json};

use crate::decision::arrangements::Comparison;
use crate::decision::goal_search::Found;
use crate::decision::uncertainty::{Certainty, Decisions};
use crate::text;
use crate::units::Reader;

/// The arrangements beside each other as one JSON object. Each has its `kind` and
/// as `name` what it is called, and under `changes` in words what differs from the
/// worksheet. Each part to buy has
/// its `item` and `amount`, and as `what` both in words; `disconnect`
/// and each finding have their sentence as `text`.
pub fn arrangements_json(comparison: &Comparison, reader: &Reader) -> Value {
    let mut json = json!(comparison);
    for (at, outcome) in comparison.outcomes.iter().enumerate() {
        let one = &mut json["outcomes"][at];
        one["name"] = text::arrangements::name(outcome).into();
        one["changes"] = text::arrangements::changes(outcome, reader).into();
        one["disconnect"]["text"] =
            text::arrangements::disconnect(&outcome.disconnect, reader).into();
        for (at, finding) in outcome.harm.iter().enumerate() {
            one["harm"][at]["text"] = text::findings::sentence(finding, reader).into();
        }
        for (at, part) in outcome.parts.iter().enumerate() {
            one["parts"][at]["what"] = text::purchase(part, reader).into();
        }
    }
    for (at, left_out) in comparison.left_out.iter().enumerate() {
        json["left_out"][at]["name"] = text::arrangements::kind(left_out.kind).into();
        for (place, finding) in left_out.harm.iter().enumerate() {
            json["left_out"][at]["harm"][place]["text"] =
                text::findings::sentence(finding, reader).into();
        }
    }
    json
}

/// How certain the answers are as one JSON object. Each range has as `words` from
/// low to high, as `sentence` the likeliest figure too, and as `width_words` how
/// wide it is; each reading how wide it would be.
pub fn uncertainty_json(certainty: &Certainty) -> Value {
    let mut json = json!(certainty);
    for (name, range) in [
        ("engine_h", &certainty.engine_h),
        ("hot_a", &certainty.hot_a),
    ] {
        let width = |width| text::uncertainty::width(range.answer, width);
        let one = &mut json[name];
        one["words"] = text::uncertainty::range(range).into();
        one["sentence"] = text::uncertainty::sentence(range).into();
        one["width_words"] = width(range.width).into();
        for (at, reading) in range.readings.iter().enumerate() {
            one["readings"][at]["width_words"] = width(reading.width).into();
        }
    }
    json
}

/// What readings would decide as one JSON object; the choice of an arrangement and
/// each setting have their sentence as `text`.
pub fn decisions_json(decisions: &Decisions, reader: &Reader) -> Value {
    let mut json = json!(decisions);
    if let Some(choice) = &decisions.arrangement {
        json["arrangement"]["text"] = text::decisions::arrangement(choice).into();
    }
    for (at, choice) in decisions.settings.iter().enumerate() {
        json["settings"][at]["text"] = text::decisions::setting(choice, reader).into();
    }
    json
}

/// What a goal search found as one JSON object. Each step of a plan has its
/// `change`, `amount` and `cap`, and as `what` all of it in words.
pub fn goal_search_json(found: &Found, reader: &Reader) -> Value {
    let mut json = json!(found);
    for (at, plan) in found.plans.iter().enumerate() {
        for (place, step) in plan.steps.iter().enumerate() {
            let step_json = &mut json["plans"][at]["steps"][place];
            step_json["what"] = text::step_change(step, reader).into();
        }
    }
    json
}

#[cfg(test)]
mod tests {
    use super::{arrangements_json, goal_search_json};
    use crate::boat::demo;
    use crate::decision::arrangements::compare;
    use crate::decision::goal_search::Search;
    use crate::units::Reader;

    #[test]
    fn parts_and_steps_have_code_quantity_and_words() {
        let sheet = demo();
        let json = arrangements_json(&compare(&sheet), &Reader::METRIC).to_string();
        let part = r#"{"amount":{"unit":"A","value":180.0},"item":"alternator","price":900.0,"what":"Alternator, 180 A"}"#;
        assert!(json.contains(part), "{json}");
        let mut search = Search::new(&sheet);
        search.step(200);
        let json = goal_search_json(&search.found(), &Reader::US);
        let steps = json["plans"]
            .as_array()
            .unwrap()
            .iter()
            .flat_map(|plan| plan["steps"].as_array().unwrap().clone());
        let steps: Vec<_> = steps.collect();
        assert!(!steps.is_empty());
        for step in steps {
            assert!(
                step["change"].is_string() && step["what"].is_string(),
                "{step}"
            );
        }
    }
}
