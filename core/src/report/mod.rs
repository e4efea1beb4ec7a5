//! Everything that follows from a worksheet, as one structure that the page, the
//! print and the JSON output share. Names end in their unit; `null` in JSON means
//! "does not happen".
//!
//! It puts analyses, findings and verdict together and works out none of them.

use serde::Serialize;

use crate::analysis::{Analyses, analyse};
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
    let analyses = analyse(sheet);
    let findings = findings(sheet, &analyses);
    Report {
        verdict: verdict(&sheet.inputs, &analyses),
        questions: open_questions(&analyses, &findings),
        findings,
        analyses,
    }
}
