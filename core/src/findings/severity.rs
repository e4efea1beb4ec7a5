//! How bad a finding is.

use serde::Serialize;

/// How bad a finding is, worst first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// Do not run it like this.
    Danger,
    /// Put it right.
    Fix,
    /// Know about it.
    Note,
}

impl Severity {
    /// Worst first.
    pub const ALL: [Severity; 3] = [Severity::Danger, Severity::Fix, Severity::Note];
}
