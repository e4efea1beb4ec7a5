//! What the charging run comes to.

use serde::Serialize;

use crate::analysis::temperatures::PartTemperatures;
use crate::boat::EngineLoad;
use crate::simulation::Limit;
use crate::simulation::opening::Opening;
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::run::PeakLoad;

/// The charging run, from `run_from_pct` to `run_to_pct`.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RunReport {
    /// What the boat drew meanwhile, without its engine loads \[A\].
    pub house_load_a: f64,
    /// What ran only with the engine, on top of that.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub engine_loads: Vec<EngineLoad>,
    /// Current of the alternators that charge the house bank, at the start \[A\].
    pub start_a: f64,
    /// Current of the alternators that charge the house bank, half-way through the
    /// time \[A\].
    pub mid_a: f64,
    /// Current into the bank half-way through the time \[A\].
    pub mid_bank_a: f64,
    /// Mean current into the bank \[A\].
    pub mean_bank_a: f64,
    /// Whether the electrolyte of a lead bank is frozen where the run begins: it
    /// takes no charge.
    pub bank_frozen: bool,
    /// When the bank's management system opens; none when it does not. All else
    /// here goes on as if the bank had stayed connected.
    pub opening: Option<Opening>,
    /// Time to the target \[min\]; none where the management system opens first.
    pub minutes_to_target: Option<f64>,
    /// Time to 80 % \[min\]; none where the management system opens first.
    pub minutes_to_80: Option<f64>,
    /// Time to 90 % \[min\]; none where the management system opens first.
    pub minutes_to_90: Option<f64>,
    /// Time to 100 % \[min\]; none where the management system opens first.
    pub minutes_to_100: Option<f64>,
    /// How long the run below is: to the target, or to giving up \[min\].
    pub minutes: f64,
    /// State of charge at its end \[%\].
    pub end_charge_pct: f64,
    /// Each alternator in the run, the first one first; there is always one.
    pub alternators: Vec<AlternatorRun>,
    /// Hottest air of the engine space \[°C\].
    pub peak_air_c: f64,
    /// The hour after the engine stops.
    pub soak: SoakReport,
    /// When the air of the space has covered 95 % of its rise \[min\]; none when
    /// the run is too short for that.
    pub air_settles_min: Option<f64>,
    /// Most power at the alternators' shafts \[W\].
    pub peak_shaft_w: f64,
    /// When that is \[min\].
    pub peak_shaft_min: f64,
    /// Alternator efficiency half-way \[%\].
    pub mid_efficiency_pct: f64,
    /// Energy their shafts took \[kWh\].
    pub shaft_kwh: f64,
    /// Ampere-hours the alternators gave \[A·h\].
    pub alternator_ah: f64,
    /// Energy the bank keeps of what went in: its rest voltage times the charge
    /// returned, over the voltage it was charged at \[%\].
    pub bank_energy_pct: f64,
    /// All fuel of the run, engine run for charging alone \[L\].
    pub fuel_l: f64,
    /// The alternator's part of the fuel \[L\], all there is to count while motoring anyway.
    pub marginal_fuel_l: f64,
    /// What limits when, in order.
    pub stretches: Vec<StretchReport>,
    /// Part of the time each limit holds \[%\], largest first.
    pub limit_shares: Vec<LimitShare>,
    /// The run, moment by moment.
    pub series: Vec<Moment>,
}

/// One alternator in the run and in the hour after it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct AlternatorRun {
    /// Hottest of each of its parts.
    pub peak: PartTemperatures,
    /// Hottest of each of its parts in the hour after the engine stops.
    pub soak_peak: PartTemperatures,
    /// Most that it gives and takes.
    pub peak_load: PeakLoad,
}

/// A stretch of the run with one limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct StretchReport {
    /// \[min\]
    pub from_min: f64,
    /// \[min\]
    pub to_min: f64,
    /// What holds the current down.
    pub limit: Limit,
}

impl RunReport {
    /// Most that the alternators which charge the house bank give in the run
    /// \[A\]: with a soft start well above what flows at its beginning.
    pub fn most_a(&self) -> f64 {
        let given = self.series.iter().map(|moment| moment.alternator_a);
        given.fold(self.start_a.max(0.0), f64::max)
    }
}

/// How much of the run one limit holds.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LimitShare {
    /// The limit.
    pub limit: Limit,
    /// Part of the time \[%\].
    pub share_pct: f64,
}

/// One moment of the run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Moment {
    /// \[min\]
    pub minute: f64,
    /// \[%\]
    pub charge_pct: f64,
    /// Alternators that charge the house bank \[A\]
    pub alternator_a: f64,
    /// Into the bank \[A\]
    pub bank_a: f64,
    /// At the bank \[V\]
    pub bank_v: f64,
    /// Air of the engine space \[°C\]
    pub air_c: f64,
    /// Each alternator, the first one first; there is always one.
    pub alternators: PerAlternator<AlternatorMoment>,
    /// At the alternators' shafts \[W\]
    pub shaft_w: f64,
    /// What holds the current down.
    pub limit: Limit,
}

/// One alternator at a moment of the run.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct AlternatorMoment {
    /// What it gives \[A\]
    pub amperes: f64,
    /// At its terminals \[V\]
    pub volts: f64,
    /// \[°C\]
    pub winding_c: f64,
    /// \[°C\]
    pub case_c: f64,
    /// \[°C\]
    pub rectifier_c: f64,
}

/// The air in the hour after the engine stops.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SoakReport {
    /// Hottest it gets \[°C\].
    pub air_peak_c: f64,
    /// When the air is hottest \[min\] after stopping.
    pub air_peak_min: f64,
}
