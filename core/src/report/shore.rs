//! What the quay has to put back.

use serde::Serialize;

use crate::energy::Energy;
use crate::worksheet::Inputs;

/// What the quay has to put back.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct ShoreReport {
    /// What it puts back for a day at anchor \[A·h\]; 0 where the engine does.
    pub day_ah: f64,
    /// What the charger takes for it \[kW·h\].
    pub day_kwh: f64,
    /// From the low end of the usable window to the high one at the quay, the
    /// boat drawing its mean meanwhile \[h\]; none when the charger is too small.
    pub fill_h: Option<f64>,
}

pub(super) fn shore_report(inputs: &Inputs, energy: &Energy) -> ShoreReport {
    let day_ah = if inputs.engine_charges() {
        0.0
    } else {
        energy.rest_ah
    };
    let bank = inputs.house_bank();
    let spare_a = inputs.shore.charger_a.min(inputs.charge_limit_a()) - energy.anchor.use_ah / 24.0;
    let stored = bank.charge_efficiency;
    ShoreReport {
        day_ah,
        day_kwh: day_ah * energy.bank_v / (1000.0 * stored * inputs.shore.efficiency_pct / 100.0),
        fill_h: (spare_a > 0.0).then(|| energy.usable_ah / (spare_a * stored)),
    }
}
