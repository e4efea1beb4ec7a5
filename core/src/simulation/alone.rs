//! What the alternators hold where nothing but their own heat and regulators keeps
//! them back: neither bank nor cap nor DC-DC charger.

use crate::boat::{Inputs, SecondRole};
use crate::physics::battery::{Bank, Cells, LFP_BLOCK_CELLS, lfp_rest_v};
use crate::physics::charging::charger_output_a;
use crate::simulation::alternators::Alternators;
use crate::simulation::steady_state::{Settled, settled};

/// More than any alternator gives, in amperes and ampere-hours.
const NEVER_BINDS: f64 = 1e5;

/// A boat without current cap, its DC-DC charger as large as can be.
pub(crate) fn unbound(inputs: &Inputs) -> Inputs {
    let mut open = *inputs;
    open.reg.current_cap_a = None;
    open.way.converter_a = Some(NEVER_BINDS);
    open
}

/// Where the alternators of an [`unbound`] boat settle on a bank that takes
/// everything at the charge voltage, the house drawing `load_a` \[A\].
pub(crate) fn settled_alone(alternators: &Alternators, open: &Inputs, load_a: f64) -> Settled {
    let mut plant = alternators.plant(open, load_a);
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
