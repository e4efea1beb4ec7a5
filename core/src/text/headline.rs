//! The answer in a few words: what stands at the top of the first screen.

use crate::analysis::Analyses;
use crate::analysis::engine_day::DayTrouble;
use crate::boat::{BanksJoined, RegulatorKind, SecondRole, WayKind, Worksheet};
use crate::findings::Severity;
use crate::report::Report;
use crate::text::{findings, question, verdict, words};
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, minutes, rpm, volts};

/// The answer in a few words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// What has to run for it: "Engine", or "Generator" where that charges.
    pub runs: &'static str,
    /// How long that runs a day: "1 h 20 min", "none", "more than a day".
    pub time: String,
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
    let time = |hours: Option<f64>, trouble: Option<DayTrouble>| match hours {
        None => trouble.map_or("none", words::day_trouble).to_string(),
        Some(0.0) => "none".to_string(),
        Some(hours) => reader.show(minutes(60.0 * hours)),
    };
    let (runs, time) = match &report.analyses.generator {
        Some(generator) => ("Generator", time(generator.hours, generator.trouble)),
        None => ("Engine", time(day.engine_hours, day.trouble)),
    };
    Answer {
        runs,
        time,
        hot_amps: reader.show(amperes(output.hot_a)),
        limit: words::limited_by(output.hot_limit).to_string(),
        verdict: verdict(&report.verdict, reader),
    }
}

/// "in 3 runs of 40 min"; none where one run a day does, or none is needed.
pub fn in_runs(analyses: &Analyses, reader: &Reader) -> Option<String> {
    let (runs, hours) = runs_a_day(analyses);
    let each = reader.show(minutes(60.0 * hours.filter(|_| runs > 1)?));
    Some(format!("in {runs} runs of {each}"))
}

/// The equal runs of a day, of the engine or of the generator in its place, and how
/// long each is \[h\].
fn runs_a_day(analyses: &Analyses) -> (u32, Option<f64>) {
    match &analyses.generator {
        Some(generator) => {
            let each = |hours: f64| hours / f64::from(generator.runs.max(1));
            (generator.runs, generator.hours.map(each))
        }
        None => (analyses.day.runs, analyses.day.run_hours),
    }
}

/// What engine or generator has to put back in a day \[A·h\].
pub fn put_back_ah(analyses: &Analyses) -> f64 {
    let generator = analyses.generator.as_ref();
    generator.map_or(analyses.day.need_ah, |generator| generator.day_ah)
}

/// The answer in words: three sentences, before any figure.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InShort {
    /// What the answer is about: "400 A·h of lithium, 100 A alternator …".
    pub boat: String,
    /// How long the engine must run.
    pub engine: String,
    /// Whether the alternator survives.
    pub alternator: String,
    /// What to do first.
    pub first: String,
}

/// What to do first while the figures are those of an example.
pub const EXAMPLE_FIRST: &str =
    "Answer the questions below. What you leave out stays as in this example.";

/// The answer in words.
pub fn in_short(sheet: &Worksheet, report: &Report, reader: &Reader) -> InShort {
    InShort {
        boat: boat(sheet, reader),
        engine: engine(report, reader),
        alternator: verdict(&report.verdict, reader),
        first: first(report, reader),
    }
}

/// What decides the answer: bank, alternator, regulator and connection.
pub fn boat(sheet: &Worksheet, reader: &Reader) -> String {
    let inputs = &sheet.inputs;
    let bank = format!(
        "{} of {} at {}",
        reader.show(ampere_hours(inputs.bank.capacity_ah)),
        words::chemistry(inputs.bank.chemistry),
        reader.show(volts(12.0 * inputs.bank.nominal_v.blocks()).to(0)),
    );
    let alternator = format!(
        "{} alternator with {}",
        reader.show(amperes(inputs.alt.rated_a)),
        match inputs.reg.kind {
            RegulatorKind::Internal => "its built-in regulator",
            RegulatorKind::External => "an external regulator",
        }
    );
    let second = match inputs.two.role {
        SecondRole::None => "",
        SecondRole::Start => ", a second alternator for the start battery",
        SecondRole::House => ", a second alternator for the house bank",
    };
    let connection = match inputs.way.kind {
        WayKind::Direct => match inputs.joined() {
            BanksJoined::Nothing => "direct to the house bank".to_string(),
            joined => format!("through {} to the house bank", words::joined(joined)),
        },
        WayKind::Converter => format!(
            "through a {} DC-DC charger",
            reader.show(amperes(inputs.charger_a()))
        ),
    };
    format!("{bank}, {alternator}{second}, {connection}")
}

/// How long the engine must run, and for what.
fn engine(report: &Report, reader: &Reader) -> String {
    let (day, energy) = (&report.analyses.day, &report.analyses.energy);
    let generator = &report.analyses.generator;
    match day.engine_hours {
        None => day.trouble.map_or("", words::why_not_charged).to_string(),
        Some(0.0) if energy.rest_ah > 0.0 && generator.is_some() => by_generator(report, reader),
        Some(0.0) if energy.rest_ah > 0.0 => format!(
            "{} a day are left to shore power.",
            reader.show(ampere_hours(energy.rest_ah))
        ),
        Some(0.0) => format!("{} the day's use; the engine need not run.", covers(report)),
        Some(hours) => format!(
            "The engine must run {} a day{} to put back {}.",
            reader.show(minutes(60.0 * hours)),
            told_runs(report, reader),
            reader.show(ampere_hours(day.need_ah))
        ),
    }
}

/// What covers a day's use without the engine.
fn covers(report: &Report) -> &'static str {
    let energy = &report.analyses.energy;
    match (energy.sun_ah > 0.0, energy.other_ah > 0.0) {
        (true, true) => "Solar and other sources cover",
        (false, true) => "The other sources cover",
        (_, false) => "Solar covers",
    }
}

/// How long the generator runs in place of the engine; that the engine does not, the
/// verdict says.
fn by_generator(report: &Report, reader: &Reader) -> String {
    let rest = reader.show(ampere_hours(report.analyses.energy.rest_ah));
    let generator = &report.analyses.generator;
    match generator.and_then(|generator| generator.hours) {
        Some(hours) => format!(
            "The generator must run {} a day{} to put back {rest}.",
            reader.show(minutes(60.0 * hours)),
            told_runs(report, reader)
        ),
        None => format!("No run of the generator puts back {rest} a day."),
    }
}

/// ", in 2 runs of 1 h 10 min,"; nothing of a single run.
fn told_runs(report: &Report, reader: &Reader) -> String {
    in_runs(&report.analyses, reader).map_or(String::new(), |runs| format!(", {runs},"))
}

/// What to do first: the gravest danger or fault, else what is not known yet.
fn first(report: &Report, reader: &Reader) -> String {
    let all = report.findings.iter();
    let worst = all
        .clone()
        .find(|finding| finding.severity() != Severity::Note);
    let asks = || all.clone().find(|finding| finding.asks_for().is_some());
    match (worst.or_else(asks), report.questions.first()) {
        (Some(finding), _) => findings::sentence(finding, reader),
        (None, Some(open)) => question(open, reader),
        (None, None) => "Nothing stands out; check the figures that are still guesses.".to_string(),
    }
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
    let day = engine(report, reader);
    format!("{} {day} {holds}", answer.verdict)
}

/// What the alternator gives at the engine speed of the worksheet, hot and cold.
pub fn output_at_speed(sheet: &Worksheet, report: &Report, reader: &Reader) -> String {
    let analyses = &report.analyses;
    format!(
        "With the engine at {} the alternator turns at {} and holds {} hot, of {} cold.",
        reader.show(rpm(sheet.inputs.eng.rpm)),
        reader.show(rpm(analyses.alternators[0].shaft_rpm)),
        reader.show(amperes(analyses.output.hot_a)),
        reader.show(amperes(analyses.output.full_cold_a))
    )
}
