//! How the results of two worksheets differ.

use crate::exchange::Difference;
use crate::report::Report;
use crate::text::{answer, in_runs};
use crate::units::Reader;

/// The main results that differ as they are written, one report's before the
/// other's.
pub fn outcomes(from: &Report, to: &Report) -> Vec<Difference> {
    let before = told(from);
    let pairs = before.into_iter().zip(told(to));
    pairs
        .filter(|((_, was), (_, is))| was != is)
        .map(|((label, was), (_, is))| Difference {
            section: "Result",
            label: label.to_string(),
            was,
            is,
        })
        .collect()
}

fn told(report: &Report) -> [(&'static str, String); 8] {
    let reader = &Reader::METRIC;
    let answer = answer(report, reader);
    let peak = &report.analyses.run.alternators[0].peak;
    let whole = |number: f64, unit: &str| format!("{number:.0} {unit}");
    [
        ("Does the alternator survive", answer.verdict),
        (
            "Engine time a day",
            match in_runs(&report.analyses.day, reader) {
                Some(runs) => format!("{}, {runs}", answer.engine_time),
                None => answer.engine_time,
            },
        ),
        (
            "To put back a day",
            whole(report.analyses.day.need_ah, "A·h"),
        ),
        ("Alternator, hot", answer.hot_amps),
        (
            "Alternator, cold",
            whole(report.analyses.output.full_cold_a, "A"),
        ),
        ("Limited by", answer.limit.to_string()),
        ("Winding up to", whole(peak.winding_c, "°C")),
        ("Case up to", whole(peak.case_c, "°C")),
    ]
}
