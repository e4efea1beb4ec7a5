//! What the alternators ask of the engine.

use serde::Serialize;

use crate::analysis::run_report::RunReport;
use crate::boat::Inputs;
use crate::physics::drive::{belts_kw, mean_belts_kw, percent};
use crate::simulation::plant::Plant;

/// What the alternators ask of the engine.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct EngineReport {
    /// Power it has at the charging speed \[kW\].
    pub available_kw: f64,
    /// Most that the belts take of it in the run \[kW\].
    pub peak_kw: f64,
    /// Most that the belts take in the run, of the power the engine has at the charging
    /// speed \[%\]; more than 100 where it cannot turn them.
    pub peak_share_pct: f64,
    /// Mean over the run of what it has \[%\].
    pub mean_share_pct: f64,
    /// Fuel to turn itself at that speed \[L/h\].
    pub idle_l_h: f64,
    /// Fuel for each kilowatt-hour more at the alternators' shafts \[L\].
    pub marginal_l_kwh: f64,
}

pub(super) fn engine_report(inputs: &Inputs, plant: &Plant, run: &RunReport) -> EngineReport {
    let available_kw = inputs.available_kw();
    let peak_kw = belts_kw(run.peak_shaft_w, plant.belt_efficiency);
    let hours = run.minutes / 60.0;
    let mean_kw = if hours > 0.0 {
        mean_belts_kw(run.shaft_kwh, hours, plant.belt_efficiency)
    } else {
        peak_kw
    };
    EngineReport {
        available_kw,
        peak_kw,
        peak_share_pct: percent(peak_kw, available_kw),
        mean_share_pct: percent(mean_kw, available_kw),
        idle_l_h: plant.fuel.idle_l_h,
        marginal_l_kwh: plant.marginal_l_kwh(),
    }
}
