//! What the boat does in a day, a run and a year, and what that asks of belt,
//! cable and electronics. Each analysis is worked out once by [`analyse`], in
//! order, and handed on.
//!
//! It uses the simulation and all above it, and judges nothing: what follows for
//! safety stands in [`findings`](crate::findings).

pub mod belt;
pub mod cable;
mod charging_run;
mod daily_run;
pub mod energy;
pub mod engine_day;
mod engine_load;
pub mod generator;
mod lead_comparison;
pub mod legs;
mod limits;
pub mod link_loss;
pub mod load_dump;
mod output;
pub mod packs;
pub(crate) mod peak_loads;
mod run_report;
pub mod sensor_loss;
pub mod sharing;
mod shore_power;
pub mod solar_day;
mod temperatures;
#[cfg(test)]
mod tests;
mod when_asked;
pub mod year;

use serde::Serialize;

use crate::boat::{When, Worksheet, engine_loads};
use crate::simulation::alternators::Alternators;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Trace, charge};
use crate::simulation::steady_state::{Settled, settled};

use belt::BeltReport;
use cable::Cables;
use energy::{Energy, energy};
use engine_day::DayNeed;
use generator::GeneratorReport;
use legs::LegsReport;
use link_loss::LinkLossReport;
use load_dump::LoadDump;
use packs::PacksReport;
use sensor_loss::SensorLossReport;
use sharing::SharingReport;

pub(crate) use charging_run::bank_volts;
pub use daily_run::DayReport;
pub use engine_load::EngineReport;
pub(crate) use lead_comparison::flooded;
pub use lead_comparison::{LeadComparison, LeadReport};
pub(crate) use limits::first_passed;
pub use limits::{LegLimit, NEAR_K, Part, PartLimit, leg_limits, nearest, part_limits};
pub use output::{AlternatorReport, OutputReport, SpeedPoint};
pub use run_report::{
    AlternatorMoment, AlternatorRun, LimitShare, Moment, RunReport, SoakReport, StretchReport,
};
pub use shore_power::ShoreReport;
pub use temperatures::PartTemperatures;
pub use when_asked::WhenAsked;
pub use year::year;

/// Every analysis of a worksheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Analyses {
    /// The day's energy.
    pub energy: Energy,
    /// What the alternators give together, cold and hot.
    pub output: OutputReport,
    /// Each alternator, the first one first; there is always one.
    pub alternators: Vec<AlternatorReport>,
    /// The charging run.
    pub run: RunReport,
    /// The day as legs; none where no legs are listed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub legs: Option<LegsReport>,
    /// The daily engine time.
    pub day: DayReport,
    /// What the alternators ask of the engine.
    pub engine: EngineReport,
    /// A flooded lead bank of the same capacity.
    pub lead: LeadComparison,
    /// What the quay has to put back.
    pub shore: ShoreReport,
    /// What a generator has to put back; none where none charges the bank.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub generator: Option<GeneratorReport>,
    /// Every alternator's belt, the first one's first.
    pub belts: Vec<BeltReport>,
    /// Cable and fuse for each run of the chosen arrangement.
    pub cables: Cables,
    /// What happens when the alternators' batteries go.
    pub load_dump: LoadDump,
    /// The run if the data link were lost; none for a boat without one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub link_loss: Option<LinkLossReport>,
    /// The run if the temperature sensor of a regulator failed; none for a boat
    /// without one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sensor_loss: Option<WhenAsked<SensorLossReport>>,
    /// How two alternators on the house bank share the run; none for any other boat.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sharing: Option<SharingReport>,
    /// The packs of a bank that has several in parallel; none for a single one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub packs: Option<PacksReport>,
    /// The alternators it was worked out with.
    #[serde(skip)]
    pub calibrated: Alternators,
    /// The boat as prepared numbers.
    #[serde(skip)]
    pub plant: Plant,
    /// Where everything settles, the bank half-way through the run.
    #[serde(skip)]
    pub hot: Settled,
    /// The charging run, step by step. It goes on beyond its target.
    #[serde(skip)]
    pub trace: Trace,
}

/// Works out every analysis.
pub fn analyse(sheet: &Worksheet) -> Analyses {
    analyse_with(sheet, Alternators::of(&sheet.inputs))
}

/// Every analysis, with alternators that were calibrated before.
fn analyse_with(sheet: &Worksheet, alternators: Alternators) -> Analyses {
    let inputs = &sheet.inputs;
    let energy = energy(sheet);
    let plant = alternators.plant_of(sheet);
    let (from, to) = (inputs.run.from_pct / 100.0, inputs.run.to_pct / 100.0);
    let last_s = inputs.run.longest_h * 3600.0;
    let trace = charge(&plant, from, 1.0, last_s, &Fineness::USUAL);
    let mut run = charging_run::run_report(&plant, &trace, from, to);
    run.engine_loads = engine_loads(sheet)
        .into_iter()
        .filter(|load| load.when != When::UnderWay)
        .collect();
    let half_way = 0.5 * (from + to);
    let hot = settled(&plant, half_way);
    let peaks = peak_loads::peak_loads(sheet, &alternators, &run);
    let cables = cable::cables(sheet, &alternators, &run);
    Analyses {
        day: daily_run::day_report(&plant, &DayNeed::of(inputs, &energy)),
        output: output::output_report(inputs, &alternators, &plant, half_way, &hot),
        alternators: output::alternator_reports(inputs, &plant, &hot),
        engine: engine_load::engine_report(inputs, &plant, &run),
        lead: LeadComparison::new(sheet, &alternators),
        legs: legs::legs_report(sheet, &alternators, &energy),
        shore: shore_power::shore_report(inputs, &energy),
        generator: generator::generator_report(sheet, &energy),
        belts: belt::belts(&peaks),
        load_dump: load_dump::load_dump(&peaks),
        link_loss: link_loss::link_loss_report(inputs, &alternators, plant.load_a),
        sensor_loss: sensor_loss::sensor_loss(inputs, &plant),
        sharing: sharing::sharing_report(inputs, &plant, &trace, 60.0 * run.minutes),
        packs: packs::packs_report(sheet, &run, &cables),
        cables,
        energy,
        run,
        calibrated: alternators,
        plant,
        hot,
        trace,
    }
}
