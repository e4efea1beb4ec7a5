//! What the alternators hold where nothing but their own heat and regulators keeps
//! them back: neither bank nor cap nor DC-DC charger.

use crate::boat::{Inputs, SecondRole};
use crate::physics::battery::{Bank, Cells, LFP_BLOCK_CELLS, lfp_rest_v};
use crate::physics::charging::charger_output_a;
use crate::simulation::alternators::Alternators;
use crate::simulation::moment::Output;
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;
use crate::simulation::steady_state::{Settled, settled};

/// More than any alternator gives, in amperes and ampere-hours.
const NEVER_BINDS: f64 = 1e5;

/// A boat without current caps, its DC-DC charger as large as can be.
pub(crate) fn unbound(inputs: &Inputs) -> Inputs {
    let mut open = *inputs;
    open.reg.current_cap_a = None;
    open.reg.hot_cap_pct = None;
    open.way.converter_a = Some(NEVER_BINDS);
    open
}

/// Where the alternators of an [`unbound`] boat's plant settle on a bank that takes
/// everything at the charge voltage.
pub(crate) fn settled_alone(mut plant: Plant, open: &Inputs) -> Settled {
    plant.bank = Bank {
        blocks: open.charge_v() / (LFP_BLOCK_CELLS * lfp_rest_v(0.5)),
        capacity_ah: NEVER_BINDS,
        cells: Cells::Lfp(1e-6),
        harness_ohm: 0.0,
        compensation_v: 0.0,
        charge_efficiency: 1.0,
        temperature_c: open.bank.temperature_c,
    };
    plant.bank_limit_a = NEVER_BINDS;
    plant.held_v = 2.0 * open.charge_v();
    settled(&plant, 0.5)
}

/// What each alternator, the first one first, holds on and on at the charging speed
/// where nothing but its own heat and regulator keeps it back, the house drawing
/// `load_a` \[A\]: \[A\]; 0 where it never settles.
pub(crate) fn holds_hot_a(inputs: &Inputs, load_a: f64) -> PerAlternator<f64> {
    let open = unbound(inputs);
    let alternators = Alternators::calibrate(&open.alternators().collect());
    let hot = settled_alone(alternators.plant(&open, load_a), &open);
    let held_a = |output: &Output| {
        if hot.stable && output.amperes.is_finite() {
            output.amperes
        } else {
            0.0
        }
    };
    hot.flow.outputs.iter().map(held_a).collect()
}

/// What a DC-DC charger may give to a bank of `house_v` \[V\] where the alternator on
/// the start battery holds `hot_a` \[A\] and the engine's services draw from it too
/// \[A\]; none where next to nothing is left.
pub(crate) fn fed_charger_a(inputs: &Inputs, hot_a: f64, house_v: f64) -> Option<f64> {
    let way = &inputs.way;
    let services_a = match inputs.two.role {
        SecondRole::Start => 0.0,
        SecondRole::None | SecondRole::House => way.services_a,
    };
    let spare_a = hot_a - services_a;
    let efficiency = way.converter_efficiency_pct / 100.0;
    (spare_a >= 1.0).then(|| charger_output_a(spare_a, efficiency, way.start_v, house_v))
}
