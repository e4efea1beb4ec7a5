//! What follows for safety, and the verdict. They stand above all analyses and
//! change none.
//!
//! Each subject has its own file: an enum with one variant for each finding and
//! the figures it rests on, and what finds them. No prose stands here; the
//! sentences are in `text::findings`, a file for each subject too.

mod bank;
mod belt;
mod cable;
mod charge;
mod code;
mod day;
mod engine;
mod generator;
pub(crate) mod heat;
mod inputs;
pub(crate) mod lead;
pub(crate) mod legs;
mod link;
mod load_dump;
mod management;
mod packs;
mod questions;
mod sensor;
mod severity;
mod sharing;
mod speed;
mod verdict;
mod voltage;

use serde::{Serialize, Serializer};

use crate::analysis::Analyses;
use crate::boat::{Key, Worksheet};

pub use bank::LithiumFinding;
pub use belt::BeltFinding;
pub use cable::CableFinding;
pub use charge::{ChargeFinding, LowerTo};
pub use code::Code;
pub use day::{BelowWindowRemedy, DayFinding, NotCharged, NotCovered};
pub use engine::EngineFinding;
pub use generator::GeneratorFinding;
pub use heat::{HeatFinding, HeatRemedy, PartTooHot, Settled};
pub use inputs::InputFinding;
pub use lead::{FrozenWhen, LeadFinding, LeadHigh, LeadLow, SetBy};
pub use legs::LegFinding;
pub use link::{LinkFinding, LostLink};
pub use load_dump::LoadDumpFinding;
pub use management::{
    LessCurrent, LessVoltage, LoadLost, ManagementFinding, ManagementOpens, NotHeldBy, OpensFor,
};
pub use packs::{PackFinding, PacksOpen};
pub use questions::OpenQuestion;
pub(crate) use questions::open_questions;
pub use sensor::SensorFinding;
pub use severity::Severity;
pub use sharing::SharingFinding;
pub use speed::SpeedFinding;
pub use verdict::Verdict;
pub(crate) use verdict::verdict;
pub use voltage::VoltageFinding;

macro_rules! subjects {
    ($($(#[$doc:meta])* $subject:ident($findings:ident),)+) => {
        /// One finding, by what it is about. JSON has it as
        /// `{"severity": …, "code": …}` with its figures beside them.
        #[derive(Debug, Clone, PartialEq)]
        pub enum Finding {
            $($(#[$doc])* $subject($findings),)+
        }

        impl Finding {
            /// How bad it is.
            pub fn severity(&self) -> Severity {
                match self { $(Finding::$subject(finding) => finding.severity(),)+ }
            }

            /// Its name.
            pub const fn code(&self) -> Code {
                match self { $(Finding::$subject(finding) => finding.code(),)+ }
            }
        }

        impl Serialize for Finding {
            fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                let severity = self.severity();
                match self {
                    $(Finding::$subject(finding) => Weighed { severity, finding }.serialize(to),)+
                }
            }
        }

        $(impl From<$findings> for Finding {
            fn from(finding: $findings) -> Finding {
                Finding::$subject(finding)
            }
        })+
    };
}

subjects! {
    /// The bank's management system disconnects it.
    Management(ManagementFinding),
    /// How the battery talks to the regulator.
    Link(LinkFinding),
    /// Packs in parallel, and drop-in packs.
    Packs(PackFinding),
    /// Alternators of another voltage than their battery.
    Voltage(VoltageFinding),
    /// Inputs that do not go together.
    Inputs(InputFinding),
    /// Something gets too hot.
    Heat(HeatFinding),
    /// A temperature sensor that reads too low or fails.
    Sensor(SensorFinding),
    /// Two regulators that know nothing of each other.
    Sharing(SharingFinding),
    /// A leg of the day.
    Leg(LegFinding),
    /// How fast things turn.
    Speed(SpeedFinding),
    /// Whether the daily engine runs are enough.
    Day(DayFinding),
    /// Whether the bank gets what it needs.
    Charge(ChargeFinding),
    /// A lithium bank.
    Lithium(LithiumFinding),
    /// A bank of lead.
    Lead(LeadFinding),
    /// The engine and its space.
    Engine(EngineFinding),
    /// A generator that charges the bank.
    Generator(GeneratorFinding),
    /// Belts and pulleys.
    Belt(BeltFinding),
    /// The battery disconnects under load.
    LoadDump(LoadDumpFinding),
    /// Cables and fuses.
    Cable(CableFinding),
}

impl Finding {
    /// The input that it asks for, where its answer would tell more.
    pub const fn asks_for(&self) -> Option<Key> {
        match self {
            Finding::Belt(finding) => finding.asks_for(),
            _ => None,
        }
    }
}

/// A finding of a subject with its severity, for JSON.
#[derive(Serialize)]
struct Weighed<'a, T> {
    severity: Severity,
    #[serde(flatten)]
    finding: &'a T,
}

/// Everything found, worst first; in the order of the subjects within each
/// severity.
pub(crate) fn findings(sheet: &Worksheet, report: &Analyses) -> Vec<Finding> {
    let mut found = Vec::new();
    let (plant, dumps) = (&report.plant, &report.load_dump);
    management::management_findings(sheet, report, dumps, &mut found);
    link::link_findings(sheet, report, &mut found);
    packs::pack_findings(sheet, report, &mut found);
    voltage::voltage_findings(sheet, &mut found);
    inputs::input_findings(sheet, plant, &mut found);
    heat::heat_findings(sheet, report, &mut found);
    sensor::sensor_findings(sheet, report, &mut found);
    sharing::sharing_findings(sheet, report, &mut found);
    legs::leg_findings(sheet, report, &mut found);
    speed::speed_findings(sheet, report, &mut found);
    day::day_findings(sheet, plant, report, &mut found);
    charge::charge_findings(sheet, report, &mut found);
    bank::bank_findings(sheet, report, &mut found);
    lead::lead_findings(sheet, report, &mut found);
    engine::engine_findings(sheet, report, &mut found);
    generator::generator_findings(sheet, report, &mut found);
    belt::belt_findings(sheet, report, &mut found);
    load_dump::load_dump_findings(sheet, dumps, &mut found);
    cable::cable_findings(sheet, report, &mut found);
    // A stable sort: within each severity they stay in the order found.
    found.sort_by_key(Finding::severity);
    found
}

/// Adds one finding.
fn add(found: &mut Vec<Finding>, finding: impl Into<Finding>) {
    found.push(finding.into());
}
