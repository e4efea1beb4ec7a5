//! What must not be proposed.

use crate::findings::{Finding, Severity};
use crate::report::Report;

/// Findings that only say "Fix" and yet mean that a part is overheated,
/// overloaded or turned too fast, or that the arrangement does not work as
/// calculated. Such a boat is mended, not proposed.
const HARMFUL: [&str; 15] = [
    "belt_shared_pump",
    "belt_too_small",
    "case_too_hot",
    "converter_starves",
    "day_below_window",
    "engine_overloaded",
    "lead_over_current",
    "limit_held_by_loads",
    "management_opens",
    "near_limit",
    "overspeed",
    "rectifier_too_hot",
    "second_too_slow",
    "soak_rectifier",
    "winding_too_hot",
];

/// The findings that speak against a boat set up like this: every Danger, and
/// each of the others that means harm. Judged by itself, not against how bad
/// the boat is today.
pub(crate) fn harm(report: &Report) -> Vec<Finding> {
    let harmful =
        |finding: &&Finding| finding.severity == Severity::Stop || HARMFUL.contains(&finding.key);
    report.findings.iter().filter(harmful).cloned().collect()
}
