//! What alternators hold hot where nothing but their own heat and regulator keeps
//! them back.

use crate::boat::Inputs;
use crate::physics::battery::{Bank, Cells, LFP_BLOCK_CELLS, lfp_rest_v};
use crate::simulation::moment::Output;
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;
use crate::simulation::steady_state::settled;

/// More than any alternator gives, in amperes and ampere-hours.
const NEVER_BINDS: f64 = 1e5;

/// What each alternator, the first one first, holds on and on at the charging
/// speed where nothing but its own heat and regulator keeps it back: neither
/// bank nor cap nor DC-DC charger \[A\]; 0 where it never settles.
pub(crate) fn holds_hot_a(inputs: &Inputs, load_a: f64) -> PerAlternator<f64> {
    let mut open = *inputs;
    open.reg.current_cap_a = None;
    open.reg.hot_cap_pct = None;
    open.way.converter_a = Some(NEVER_BINDS);
    let mut plant = Plant::new(&open, load_a);
    // A bank that takes everything at the charge voltage.
    plant.bank = Bank {
        blocks: inputs.charge_v() / (LFP_BLOCK_CELLS * lfp_rest_v(0.5)),
        capacity_ah: NEVER_BINDS,
        cells: Cells::Lfp(1e-6),
        harness_ohm: 0.0,
        compensation_v: 0.0,
        charge_efficiency: 1.0,
        temperature_c: inputs.bank.temperature_c,
    };
    plant.bank_limit_a = NEVER_BINDS;
    plant.held_v = 2.0 * inputs.charge_v();
    let hot = settled(&plant, 0.5);
    let held_a = |output: &Output| {
        if hot.stable && output.amperes.is_finite() {
            output.amperes
        } else {
            0.0
        }
    };
    hot.flow.outputs.iter().map(held_a).collect()
}
