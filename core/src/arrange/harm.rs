//! What must not be proposed.

use crate::report::{Finding, Report, Severity};
use crate::worksheet::Worksheet;

/// Findings that only say "Fix" and yet mean that a part is overheated,
/// overloaded or turned too fast, or that the arrangement does not work as
/// calculated. Such a boat is mended, not proposed.
const HARMFUL: [&str; 14] = [
    "alternator_current_over_limit",
    "bank_limit_binds",
    "belt_shared_pump",
    "belt_too_small",
    "below_window",
    "case_too_hot",
    "converter_starves",
    "engine_overloaded",
    "management_opens",
    "near_limit",
    "overspeed",
    "rectifier_too_hot",
    "second_too_slow",
    "winding_too_hot",
];

/// The findings that speak against a boat set up like this: every Danger, and
/// each of the others that means harm. Judged by itself, not against how bad
/// the boat is today.
pub(crate) fn harm(with: &Worksheet, report: &Report) -> Vec<Finding> {
    let harmful =
        |finding: &&Finding| finding.severity == Severity::Stop || HARMFUL.contains(&finding.key);
    let found: Vec<Finding> = report.findings.iter().filter(harmful).cloned().collect();
    let below = below_window(with, report);
    found.into_iter().chain(below).collect()
}

/// A day that begins its engine run below the least the bank is to keep.
fn below_window(with: &Worksheet, report: &Report) -> Option<Finding> {
    const ROUNDING_PCT: f64 = 1e-4;
    let low_pct = with.inputs.window_low_pct();
    let from_pct = report.day.from_pct?;
    (from_pct < low_pct - ROUNDING_PCT).then(|| Finding {
        severity: Severity::Mend,
        key: "below_window",
        text: format!(
            "The day takes the bank down to {from_pct:.0} %, below the {low_pct:.0} % you want to keep. Charge more often, use less, or fit a larger bank."
        ),
    })
}
