//! Everything that follows from a worksheet, as one structure that the page, the
//! print and the JSON output share. Names end in their unit; `null` in JSON means
//! "does not happen".
//!
//! It puts analyses, findings and verdict together and works out none of them.

use serde::Serialize;

use crate::analysis::{Analyses, analyse, analyse_without_sensor_loss};
use crate::boat::Worksheet;
use crate::findings::{Finding, OpenQuestion, Verdict, findings, open_questions, verdict};

/// Everything that follows from a worksheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    /// What the boat does.
    #[serde(flatten)]
    pub analyses: Analyses,
    /// Whether the alternator survives.
    pub verdict: Verdict,
    /// What follows for safety, worst first.
    pub findings: Vec<Finding>,
    /// What is still to be asked, once each.
    pub questions: Vec<OpenQuestion>,
}

/// Works out everything.
pub fn report(sheet: &Worksheet) -> Report {
    concluded(sheet, analyse(sheet))
}

/// Everything but the sensor that fails where no finding rests on it: for who puts
/// many worksheets beside each other.
pub(crate) fn report_without_sensor_loss(sheet: &Worksheet) -> Report {
    concluded(sheet, analyse_without_sensor_loss(sheet))
}

fn concluded(sheet: &Worksheet, analyses: Analyses) -> Report {
    let findings = findings(sheet, &analyses);
    Report {
        verdict: verdict(&sheet.inputs, &analyses),
        questions: open_questions(&analyses, &findings),
        findings,
        analyses,
    }
}
