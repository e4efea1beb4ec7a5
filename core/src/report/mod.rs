//! All results of a worksheet, as one structure that the page, the print and
//! the JSON output share. Names end in their unit; `null` in JSON means "does
//! not happen".

mod cautions;
mod day;
mod engine;
mod findings;
mod lead;
mod limits;
mod machine;
mod outline;
mod questions;
mod run;
mod shore;
mod temps;
mod verdict;

use serde::Serialize;

use crate::charge::alternators::Alternators;
use crate::charge::day::DayNeed;
use crate::charge::run::{Fineness, charge};
use crate::energy::{Energy, energy, house_load_a};
use crate::worksheet::Worksheet;

pub use cautions::{CAUTIONS, Caution, Where, cautions, cautions_at};
pub use day::DayReport;
pub use engine::EngineReport;
pub use findings::{Finding, Severity};
pub use lead::LeadReport;
pub(crate) use lead::flooded;
pub use limits::{NEAR_K, Part, PartLimit, nearest, part_limits};
pub use machine::{MachineReport, SecondReport, SpeedPoint};
pub use outline::{Answer, clock, sentence};
pub use questions::OpenQuestion;
pub(crate) use run::bank_volts;
pub use run::{LimitShare, Moment, RunReport, SoakReport, StretchReport};
pub use shore::ShoreReport;
pub use temps::Temps;
pub use verdict::Verdict;

/// Everything that follows from a worksheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    /// The day's energy.
    pub energy: Energy,
    /// The alternator, cold and hot.
    pub machine: MachineReport,
    /// The charging run.
    pub run: RunReport,
    /// The daily engine time.
    pub day: DayReport,
    /// What the alternators ask of the engine.
    pub engine: EngineReport,
    /// What a flooded lead bank of the same capacity would have done; none when
    /// the bank is of lead already, or where this was not asked for.
    pub lead: Option<LeadReport>,
    /// What the quay has to put back.
    pub shore: ShoreReport,
    /// Whether the alternator survives.
    pub verdict: Verdict,
    /// What to mind, worst first.
    pub findings: Vec<Finding>,
    /// The alternators it was worked out with, for what else is asked of them.
    #[serde(skip)]
    pub alternators: Alternators,
    /// What is still to be asked, once each.
    pub questions: Vec<OpenQuestion>,
}

/// Works out everything.
pub fn report(sheet: &Worksheet) -> Report {
    report_with(sheet, Alternators::of(&sheet.inputs))
}

/// Everything but the flooded lead bank beside this one, which takes a third
/// of the time: for who puts many worksheets beside each other.
pub(crate) fn report_without_lead(sheet: &Worksheet) -> Report {
    without_lead(sheet, Alternators::of(&sheet.inputs))
}

/// Everything, with alternators that were calibrated before.
fn report_with(sheet: &Worksheet, alternators: Alternators) -> Report {
    Report {
        lead: lead::lead_report(sheet, &alternators),
        ..without_lead(sheet, alternators)
    }
}

fn without_lead(sheet: &Worksheet, alternators: Alternators) -> Report {
    let inputs = &sheet.inputs;
    let energy = energy(sheet);
    let plant = alternators.plant(inputs, house_load_a(sheet));
    let (from, to) = (inputs.run.from_pct / 100.0, inputs.run.to_pct / 100.0);
    let last_s = inputs.run.longest_h * 3600.0;
    let trace = charge(&plant, from, 1.0, last_s, &Fineness::USUAL);
    let run = run::run_report(&plant, &trace, from, to);
    let day = day::day_report(&plant, &DayNeed::of(inputs, &energy));
    let machine = machine::machine_report(sheet, &alternators, &plant, 0.5 * (from + to));
    let engine = engine::engine_report(inputs, &plant, &run);
    let mut report = Report {
        shore: shore::shore_report(inputs, &energy),
        energy,
        machine,
        run,
        day,
        engine,
        lead: None,
        verdict: Verdict::NotRun,
        findings: Vec::new(),
        alternators,
        questions: Vec::new(),
    };
    report.questions = questions::open_questions(sheet, &report);
    report.verdict = verdict::verdict(inputs, &report, &trace);
    report.findings = findings::findings(sheet, &plant, &report);
    report
}

#[cfg(test)]
mod tests {
    use super::{Report, report, report_with};
    use crate::charge::alternators::Alternators;
    use crate::fields::Value;
    use crate::worksheet::{Key, SecondRole, Worksheet};
    use crate::{belts, disconnect, wiring};

    /// A boat of two alternators that asks for a blower too.
    fn boat(anchor_c: f64) -> Worksheet {
        let mut sheet = Worksheet::default();
        for (name, number) in [
            ("alt_anchor_winding_c", anchor_c),
            ("alt2_anchor_winding_c", anchor_c),
            ("space_wanted_a", 90.0),
        ] {
            let key = Key::named(name).expect("a key");
            sheet.state(key, Value::Number(number)).expect("in range");
        }
        sheet.inputs.two.role = SecondRole::House;
        sheet
    }

    /// All that hangs on the alternators, as text.
    fn told(sheet: &Worksheet, report: &Report) -> [String; 8] {
        [
            format!("{:?}", report.machine),
            format!("{:?}", report.run),
            format!("{:?}", report.day),
            format!("{:?}", report.engine),
            format!("{:?}", report.lead),
            format!("{:?}", belts(sheet, report)),
            format!("{:?}", disconnect(sheet, report)),
            format!("{:?}", wiring(sheet, report)),
        ]
    }

    /// Whoever calibrated an alternator anew would find the cooler one of the
    /// worksheet instead of the hot one handed over.
    #[test]
    fn alternators_are_calibrated_once_for_everything() {
        let (cool, hot) = (boat(120.0), boat(190.0));
        let handed = report_with(&cool, Alternators::of(&hot.inputs));
        let expected = told(&hot, &report(&hot));
        assert_eq!(told(&cool, &handed), expected);
        let own = told(&cool, &report(&cool));
        for at in 0..5 {
            assert_ne!(own[at], expected[at], "the anchor moves it");
        }
    }

    #[test]
    fn an_alternator_is_the_same_at_another_speed_and_with_another_bank() {
        let sheet = boat(150.0);
        let alternators = Alternators::of(&sheet.inputs);
        let mut faster = sheet.inputs;
        faster.eng.rpm = 2200.0;
        faster.space.blower_m3h = 120.0;
        let flooded = super::flooded(&sheet.inputs);
        for other in [faster, flooded] {
            assert_eq!(Alternators::of(&other), alternators);
            let (reused, anew) = (
                alternators.plant(&other, 5.0),
                crate::charge::plant::Plant::new(&other, 5.0),
            );
            assert_eq!(format!("{reused:?}"), format!("{anew:?}"));
        }
    }
}
