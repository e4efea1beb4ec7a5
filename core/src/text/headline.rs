//! The answer in a few words: what stands at the top of the first screen.

use crate::analysis::DayReport;
use crate::boat::Worksheet;
use crate::findings::Verdict;
use crate::report::Report;
use crate::text::{verdict, words};
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, minutes, rpm};

/// The answer in a few words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// "1 h 20 min", "none", "more than a day".
    pub engine_time: String,
    /// "57 A".
    pub hot_amps: String,
    /// What holds it there.
    pub limit: String,
    /// Whether the alternator survives, as a sentence.
    pub verdict: String,
}

/// The answer in a few words.
pub fn answer(report: &Report, reader: &Reader) -> Answer {
    let (day, output) = (&report.analyses.day, &report.analyses.output);
    Answer {
        engine_time: match day.engine_hours {
            None => day.trouble.map_or("none", words::day_trouble).to_string(),
            Some(0.0) => "none".to_string(),
            Some(hours) => reader.show(minutes(60.0 * hours)),
        },
        hot_amps: reader.show(amperes(output.hot_a)),
        limit: words::limited_by(output.hot_limit).to_string(),
        verdict: verdict(&report.verdict, reader),
    }
}

/// "in 3 runs of 40 min"; none where one run a day does, or none is needed.
pub fn in_runs(day: &DayReport, reader: &Reader) -> Option<String> {
    let hours = day.run_hours.filter(|_| day.runs > 1)?;
    let each = reader.show(minutes(60.0 * hours));
    Some(format!("in {} runs of {each}", day.runs))
}

/// The answer as one sentence for a reader who sees nothing else.
pub fn sentence(sheet: &Worksheet, report: &Report, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let answer = answer(report, reader);
    let analyses = &report.analyses;
    let holds = format!(
        "Hot, the alternator holds {} with the engine at {}, of {} when cold; what limits it is {}.",
        answer.hot_amps,
        show(rpm(sheet.inputs.eng.rpm)),
        show(amperes(analyses.output.full_cold_a)),
        answer.limit
    );
    let rest_ah = analyses.energy.rest_ah;
    let day = match analyses.day.engine_hours {
        None => analyses
            .day
            .trouble
            .map_or("", words::why_not_charged)
            .to_string(),
        Some(0.0) if rest_ah > 0.0 => format!(
            "The engine is not run for charging; {} a day are left to shore power.",
            show(ampere_hours(rest_ah))
        ),
        Some(0.0) => "Solar covers the day's use; the engine need not run.".to_string(),
        Some(_) => format!(
            "The engine must run {} a day{} to put back {}.",
            answer.engine_time,
            in_runs(&analyses.day, reader).map_or(String::new(), |runs| format!(", {runs},")),
            show(ampere_hours(analyses.day.need_ah))
        ),
    };
    if report.verdict == Verdict::NotRun {
        return format!("{day} {holds}");
    }
    format!("{} {day} {holds}", answer.verdict)
}
