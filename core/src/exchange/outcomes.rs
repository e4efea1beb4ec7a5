//! How the results of two worksheets differ.

use crate::exchange::Difference;
use crate::report::Report;
use crate::text::{answer, in_runs};
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, celsius};

/// The main results that differ as they are written in a reader's units, one
/// report's before the other's.
pub fn outcomes(from: &Report, to: &Report, reader: &Reader) -> Vec<Difference> {
    let before = main_results(from, reader);
    let pairs = before.into_iter().zip(main_results(to, reader));
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

/// The main results as they are written, each with what it is called.
fn main_results(report: &Report, reader: &Reader) -> [(&'static str, String); 8] {
    let answer = answer(report, reader);
    let peak = &report.analyses.run.alternators[0].peak;
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
            reader.show(ampere_hours(report.analyses.day.need_ah)),
        ),
        ("Alternator, hot", answer.hot_amps),
        (
            "Alternator, cold",
            reader.show(amperes(report.analyses.output.full_cold_a)),
        ),
        ("Limited by", answer.limit.to_string()),
        (
            "Winding up to",
            reader.show(celsius(peak.winding_at_most_c())),
        ),
        ("Case up to", reader.show(celsius(peak.case_c))),
    ]
}
