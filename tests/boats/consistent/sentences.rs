//! Every sentence is finished: figures in it are figures, nothing of a
//! template is left.

use ampwright_core::exchange::{
    arrangements_json, belts_json, cables_json, commissioning_json, load_dump_json, settings_json,
};
use ampwright_core::guidance::commissioning;
use ampwright_core::text;
use ampwright_core::units::Reader;
use serde_json::Value as Json;

use crate::answers::said;
use crate::says::Says;

/// What no sentence holds.
const NEVER: &[&str] = &[
    "NaN", "None", "Some(", "-0 ", "−0 ", "-0.0 ", "  ", "{", "}", " ,", " .", "..",
];
/// Words of figures that are none.
const NO_FIGURES: &[&str] = &["inf", "-inf", "−inf", "nan"];

pub fn check(says: &Says) {
    let report = &says.report;
    for (part, json) in [
        ("findings", json(&report.findings)),
        ("settings", settings_json(says.settings(), &Reader::METRIC)),
        (
            "disconnect",
            load_dump_json(says.disconnect(), &Reader::METRIC),
        ),
        ("wiring", cables_json(says.wiring(), &Reader::METRIC)),
        ("belts", belts_json(&report.analyses.belts, &Reader::METRIC)),
        ("first run", first_run(says)),
        (
            "arrangements",
            arrangements_json(says.comparison(), &Reader::METRIC),
        ),
        ("plans", json(&says.found())),
        ("verdict", Json::String(says.verdict())),
        ("year", json(&year(says))),
        ("steps", json(&steps(says))),
    ] {
        walk(part, &json, says);
    }
    for finding in &report.findings {
        let said = said(finding);
        let same = (0..=100).any(|pct| said.contains(&format!("at {pct} %, not at {pct} %")));
        says.holds(!same, || format!("a figure that is not itself: {}", said));
        let ends = said.ends_with(['.', '!', '?', '”']);
        says.holds(ends, || {
            format!("{} does not end: {}", finding.code(), said)
        });
        let begins = said.starts_with(|c: char| c.is_uppercase() || c == '“' || c.is_numeric());
        says.holds(begins, || {
            format!("{} begins small: {}", finding.code(), said)
        });
    }
}

/// The commissioning list in words.
fn first_run(says: &Says) -> Json {
    let stages = commissioning(&says.sheet, &says.report);
    commissioning_json(&stages, &Reader::METRIC)
}

fn json(value: &impl serde::Serialize) -> Json {
    serde_json::to_value(value).expect("it is JSON")
}

/// The year in words.
fn year(says: &Says) -> Vec<String> {
    let year = says.year();
    let mut all = text::year::sentences(year, &Reader::METRIC);
    all.extend(
        year.months
            .iter()
            .map(|month| text::year::settled_day(month, &Reader::METRIC)),
    );
    all
}

/// What the plans say of their steps.
fn steps(says: &Says) -> Vec<String> {
    let found = says.found().iter();
    found
        .flat_map(|found| &found.plans)
        .flat_map(|plan| &plan.steps)
        .map(|step| text::plan_step(step, &Reader::METRIC))
        .collect()
}

fn walk(part: &str, json: &Json, says: &Says) {
    match json {
        Json::String(text) => {
            let words = || text.split(|c: char| !(c.is_alphanumeric() || c == '-' || c == '−'));
            says.holds(!words().any(|word| NO_FIGURES.contains(&word)), || {
                format!("no figure in {part}: {text}")
            });
            let digit = |after: &str| after.starts_with(|c: char| c.is_ascii_digit());
            let hyphen = text.split(" -").skip(1).any(digit);
            says.holds(!hyphen, || {
                format!("a hyphen for a minus in {part}: {text}")
            });
            for never in NEVER {
                says.holds(!text.contains(never), || {
                    format!("“{never}” in {part}: {text}")
                });
            }
        }
        Json::Array(rows) => rows.iter().for_each(|row| walk(part, row, says)),
        Json::Object(parts) => parts.values().for_each(|inner| walk(part, inner, says)),
        Json::Null | Json::Bool(_) | Json::Number(_) => {}
    }
}
