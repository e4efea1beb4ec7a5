//! The answer in a few words: what stands at the top of the first screen.

use crate::analysis::DayReport;
use crate::analysis::engine_day::DayTrouble;
use crate::boat::Worksheet;
use crate::findings::Verdict;
use crate::report::Report;
use crate::units::clock;

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

impl Report {
    /// The answer in a few words.
    pub fn answer(&self) -> Answer {
        Answer {
            engine_time: match self.analyses.day.engine_hours {
                None => self
                    .analyses
                    .day
                    .trouble
                    .map_or("none", DayTrouble::words)
                    .to_string(),
                Some(0.0) => "none".to_string(),
                Some(hours) => clock(hours * 60.0),
            },
            hot_amps: format!("{:.0} A", self.analyses.machine.hot_a),
            limit: self.analyses.machine.hot_limit.words().to_string(),
            verdict: self.verdict.sentence(),
        }
    }
}

impl DayReport {
    /// "in 3 runs of 40 min"; none where one run a day does, or none is needed.
    pub fn in_runs(&self) -> Option<String> {
        let hours = self.run_hours.filter(|_| self.runs > 1)?;
        Some(format!("in {} runs of {}", self.runs, clock(hours * 60.0)))
    }
}

/// The answer as one sentence for a reader who sees nothing else.
pub fn sentence(sheet: &Worksheet, report: &Report) -> String {
    let answer = report.answer();
    let machine = format!(
        "Hot, the alternator holds {} at {:.0} engine rpm, of {:.0} A when cold; what limits it is {}.",
        answer.hot_amps, sheet.inputs.eng.rpm, report.analyses.machine.full_cold_a, answer.limit
    );
    let day = match report.analyses.day.engine_hours {
        None => report
            .analyses
            .day
            .trouble
            .map_or("", DayTrouble::sentence)
            .to_string(),
        Some(0.0) if report.analyses.energy.rest_ah > 0.0 => format!(
            "The engine is not run for charging; {:.0} A·h a day are left to shore power.",
            report.analyses.energy.rest_ah
        ),
        Some(0.0) => "The sun covers the day's use; the engine need not run.".to_string(),
        Some(_) => format!(
            "The engine must run {} a day{} to put back {:.0} A·h.",
            answer.engine_time,
            report
                .analyses
                .day
                .in_runs()
                .map_or(String::new(), |runs| format!(", {runs},")),
            report.analyses.day.need_ah
        ),
    };
    if report.verdict == Verdict::NotRun {
        return format!("{day} {machine}");
    }
    format!("{} {day} {machine}", answer.verdict)
}
