//! What follows from a worksheet, one function for each analysis.

use ampwright_core::boat::Worksheet;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::decision::goal_search::Search;
use ampwright_core::decision::uncertainty::{Certainty, Choice, Uncertainty};
use ampwright_core::exchange::{
    arrangements_json, belts_json, cables_json, commissioning_json, decisions_json, form_json,
    forum_text, goal_search_json, legs_json, load_dump_json, report_json, settings_json, to_link,
    uncertainty_json, year_json,
};
use ampwright_core::explain;
use ampwright_core::findings::Severity;
use ampwright_core::guidance::commissioning::form;
use ampwright_core::units::Reader;
use serde::Serialize;
use serde_json::json;

use crate::Outcome;
use crate::arguments::{ReportOptions, WorkingsOptions};
use crate::document::{print_bare_json, print_json, print_text};
use crate::error::Error;

pub fn report(options: &ReportOptions) -> Result<Outcome, Error> {
    let sheet = options.boat.read()?;
    let report = ampwright_core::report(&sheet);
    let danger = report
        .findings
        .iter()
        .any(|finding| finding.severity() == Severity::Danger);
    match options.text {
        Some(style) => {
            let link = format!("#{}", to_link(&sheet));
            let certainty = certainty(&sheet);
            print_text(&forum_text(
                &sheet,
                &report,
                Some(&certainty),
                &link,
                style.into(),
            ))?;
        }
        None => {
            let mut json = report_json(&sheet, &report, &options.reader());
            json["workings"] = json!(explain::workings(&sheet, &report));
            print_bare_json(&json)?;
        }
    }
    Ok(match danger && options.fail_on_danger {
        true => Outcome::Danger,
        false => Outcome::Fine,
    })
}

pub fn year(sheet: &Worksheet) -> Result<(), Error> {
    let year = ampwright_core::analysis::year(sheet);
    print_json(&year_json(&year, &Reader::METRIC))
}

pub fn legs(sheet: &Worksheet) -> Result<(), Error> {
    let report = ampwright_core::report(sheet);
    let legs = report.analyses.legs.as_ref();
    let legs = legs.map(|legs| legs_json(legs, &Reader::METRIC));
    print_json(&json!({ "legs": legs }))
}

pub fn arrangements(sheet: &Worksheet) -> Result<(), Error> {
    print_json(&arrangements_json(&compare(sheet), &Reader::METRIC))
}

pub fn goal(sheet: &Worksheet) -> Result<(), Error> {
    /// Combinations tried between two questions whether it is done.
    const AT_ONCE: usize = 1000;
    let mut search = Search::new(sheet);
    while !search.done() {
        search.step(AT_ONCE);
    }
    print_json(&goal_search_json(&search.found(), &Reader::METRIC))
}

/// How what an arrangement costs came about.
#[derive(Serialize)]
struct Costs {
    name: String,
    workings: Vec<explain::Working>,
}

/// The arrangements that are compared, each with its workings.
#[derive(Serialize)]
struct AllCosts {
    arrangements: Vec<Costs>,
}

pub fn costs(sheet: &Worksheet) -> Result<(), Error> {
    let outcomes = compare(sheet).outcomes;
    let workings = |with: &Worksheet, outcome| {
        let report = ampwright_core::report(with);
        let today = outcomes.first().unwrap_or(outcome);
        explain::arrangement_workings(with, &report, outcome, today)
    };
    print_json(&AllCosts {
        arrangements: outcomes
            .iter()
            .map(|outcome| Costs {
                name: ampwright_core::text::arrangements::name(outcome).to_string(),
                workings: workings(&outcome.arrangement.on(sheet), outcome),
            })
            .collect(),
    })
}

pub fn uncertainty(sheet: &Worksheet) -> Result<(), Error> {
    let mut json = uncertainty_json(&certainty(sheet));
    let decisions = Choice::of(sheet).decisions();
    json["decisions"] = decisions_json(&decisions, &Reader::METRIC);
    print_json(&json)
}

fn certainty(sheet: &Worksheet) -> Certainty {
    let mut sure = Uncertainty::new(sheet);
    sure.step(Uncertainty::RUNS);
    sure.certainty()
}

pub fn cables(sheet: &Worksheet) -> Result<(), Error> {
    let cables = ampwright_core::report(sheet).analyses.cables;
    print_json(&cables_json(&cables, &Reader::METRIC))
}

pub fn belts(sheet: &Worksheet) -> Result<(), Error> {
    let belts = ampwright_core::report(sheet).analyses.belts;
    print_json(&json!({ "belts": belts_json(&belts, &Reader::METRIC) }))
}

pub fn load_dump(sheet: &Worksheet) -> Result<(), Error> {
    let load_dump = ampwright_core::report(sheet).analyses.load_dump;
    print_json(&load_dump_json(&load_dump, &Reader::METRIC))
}

pub fn settings(sheet: &Worksheet) -> Result<(), Error> {
    let report = ampwright_core::report(sheet);
    let settings = ampwright_core::guidance::settings(sheet, &report);
    print_json(&settings_json(&settings, &Reader::METRIC))
}

/// The commissioning list and the sheet for the readings.
#[derive(Serialize)]
struct Commissioning {
    stages: serde_json::Value,
    form: serde_json::Value,
}

pub fn commissioning(sheet: &Worksheet) -> Result<(), Error> {
    let report = ampwright_core::report(sheet);
    let stages = ampwright_core::guidance::commissioning(sheet, &report);
    print_json(&Commissioning {
        stages: commissioning_json(&stages, &Reader::METRIC),
        form: form_json(&form(sheet, &report)),
    })
}

/// How figures came about.
#[derive(Serialize)]
struct Workings {
    workings: Vec<explain::Working>,
}

pub fn workings(options: &WorkingsOptions) -> Result<(), Error> {
    let sheet = options.boat.read()?;
    let report = ampwright_core::report(&sheet);
    let workings = match &options.id {
        None => explain::workings(&sheet, &report),
        Some(id) => vec![
            explain::working(&sheet, &report, id).ok_or_else(|| Error::NoSuchFigure(id.clone()))?,
        ],
    };
    print_json(&Workings { workings })
}
