//! What follows for safety: sentences with a number, a reason and what to do, and
//! the verdict. They stand above all analyses and change none.

mod bank;
mod belt;
mod cable;
mod charge;
mod day;
mod disconnect;
mod engine;
mod heat;
mod inputs;
mod lead;
mod management;
mod questions;
mod speed;
mod verdict;
mod voltage;

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::Worksheet;

pub use questions::OpenQuestion;
pub(crate) use questions::open_questions;
pub use verdict::Verdict;
pub(crate) use verdict::verdict;

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// Do not run it like this.
    Stop,
    /// Put it right.
    Mend,
    /// Know about it.
    Mind,
}

impl Severity {
    /// Worst first.
    pub const ALL: [Severity; 3] = [Severity::Stop, Severity::Mend, Severity::Mind];

    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Severity::Stop => "stop",
            Severity::Mend => "mend",
            Severity::Mind => "mind",
        }
    }
}

/// One finding.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// How bad it is.
    pub severity: Severity,
    /// Its name, the same for ever.
    pub key: &'static str,
    /// The sentence.
    pub text: String,
}

/// Everything found, worst first.
pub(crate) fn findings(sheet: &Worksheet, report: &Analyses) -> Vec<Finding> {
    let mut found = Vec::new();
    let (plant, dumps) = (&report.plant, &report.load_dump);
    management::management_findings(sheet, report, dumps, &mut found);
    voltage::voltage_findings(sheet, &mut found);
    inputs::input_findings(sheet, plant, &mut found);
    heat::heat_findings(sheet, report, &mut found);
    speed::speed_findings(sheet, report, &mut found);
    day::day_findings(sheet, plant, report, &mut found);
    charge::charge_findings(sheet, report, &mut found);
    bank::bank_findings(sheet, report, &mut found);
    lead::lead_findings(sheet, report, &mut found);
    engine::engine_findings(sheet, report, &mut found);
    belt::belt_findings(sheet, report, &mut found);
    disconnect::disconnect_findings(sheet, dumps, &mut found);
    cable::cable_findings(sheet, report, &mut found);
    // A stable sort: within each severity they stay in the order found.
    found.sort_by_key(|finding| finding.severity);
    found
}

fn add(found: &mut Vec<Finding>, severity: Severity, key: &'static str, text: String) {
    // Minus nought is nought.
    let text = text.replace(" -0 ", " 0 ");
    found.push(Finding {
        severity,
        key,
        text,
    });
}
