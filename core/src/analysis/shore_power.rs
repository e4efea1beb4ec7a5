//! What shore power has to put back.

use serde::Serialize;

use crate::analysis::energy::Energy;
use crate::boat::Inputs;
use crate::simulation::mains_charger::MainsCharger;

/// What shore power has to put back.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct ShoreReport {
    /// What it puts back for a day at anchor \[A·h\]; 0 where engine or generator do.
    pub day_ah: f64,
    /// What the charger takes for it \[kW·h\].
    pub day_kwh: f64,
    /// From the low end of the usable window to the high one at the dock, the
    /// boat drawing its mean meanwhile and the current falling as the bank fills
    /// \[h\]; none when the charger is too small, or its voltage too low.
    pub fill_h: Option<f64>,
    /// State of charge at which the boat comes to the dock and its bank is frozen,
    /// so that it takes no charge; none where it is not, or is not charged
    /// there \[%\].
    pub frozen_pct: Option<f64>,
}

pub(super) fn shore_report(inputs: &Inputs, energy: &Energy) -> ShoreReport {
    let day_ah = if inputs.dock_charges() {
        energy.rest_ah
    } else {
        0.0
    };
    let charger = MainsCharger::on_shore(inputs);
    let fill = charger.fill(
        inputs.window_low_pct() / 100.0,
        inputs.window_high_pct().max(inputs.window_low_pct()) / 100.0,
        energy.anchor.use_ah / 24.0,
    );
    let into_ah = day_ah / inputs.house_bank().charge_efficiency;
    let volts = fill.map_or(energy.bank_v, |fill| fill.mean_v);
    ShoreReport {
        day_ah,
        day_kwh: charger.mains_w(into_ah, volts) / 1000.0,
        fill_h: fill.map(|fill| fill.hours),
        frozen_pct: Some(inputs.rule_start_pct())
            .filter(|pct| inputs.dock_charges() && inputs.house_bank().is_frozen(pct / 100.0)),
    }
}
