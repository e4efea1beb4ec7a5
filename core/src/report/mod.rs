//! All results of a worksheet, as one structure that the page, the print and
//! the JSON output share. Names end in their unit; `null` in JSON means "does
//! not happen".

mod cautions;
mod day;
mod engine;
mod findings;
mod lead;
mod machine;
mod outline;
mod questions;
mod run;
mod shore;
mod temps;

use serde::Serialize;

use crate::charge::day::DayNeed;
use crate::charge::plant::Plant;
use crate::charge::run::{Fineness, charge};
use crate::energy::{Energy, energy, house_load_a};
use crate::worksheet::Worksheet;

pub use cautions::{CAUTIONS, Caution, Where, cautions, cautions_at};
pub use day::DayReport;
pub use engine::EngineReport;
pub use findings::{Finding, Severity};
pub use lead::LeadReport;
pub(crate) use lead::flooded;
pub use machine::{MachineReport, SecondReport, SpeedPoint};
pub use outline::{Answer, clock, sentence};
pub use questions::OpenQuestion;
pub(crate) use run::bank_volts;
pub use run::{LimitShare, Moment, RunReport, SoakReport, StretchReport};
pub use shore::ShoreReport;
pub use temps::Temps;

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
    /// the bank is of lead already.
    pub lead: Option<LeadReport>,
    /// What the quay has to put back.
    pub shore: ShoreReport,
    /// What to mind, worst first.
    pub findings: Vec<Finding>,
    /// What is still to be asked, once each.
    pub questions: Vec<OpenQuestion>,
}

/// Works out everything.
pub fn report(sheet: &Worksheet) -> Report {
    let inputs = &sheet.inputs;
    let energy = energy(sheet);
    let plant = Plant::new(inputs, house_load_a(sheet));
    let (from, to) = (inputs.run.from_pct / 100.0, inputs.run.to_pct / 100.0);
    let last_s = inputs.run.longest_h * 3600.0;
    let trace = charge(&plant, from, 1.0, last_s, &Fineness::USUAL);
    let run = run::run_report(&plant, &trace, from, to);
    let day = day::day_report(&plant, &DayNeed::of(inputs, &energy));
    let machine = machine::machine_report(sheet, &plant, 0.5 * (from + to));
    let engine = engine::engine_report(inputs, &plant, &run);
    let lead = lead::lead_report(sheet);
    let mut report = Report {
        shore: shore::shore_report(inputs, &energy),
        energy,
        machine,
        run,
        day,
        engine,
        lead,
        findings: Vec::new(),
        questions: Vec::new(),
    };
    report.questions = questions::open_questions(sheet, &report);
    report.findings = findings::findings(sheet, &plant, &report);
    report
}
