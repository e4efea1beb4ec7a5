//! Whether a lithium bank may be charged like this.

use super::{Finding, Severity, add};
use crate::settings::{LITHIUM_CHARGE_V, LITHIUM_MOST_V, volts};
use crate::worksheet::{Chemistry, Inputs, Worksheet};

/// Lithium cells in a 12 V block.
const CELLS: f64 = 4.0;

/// What there is to say of a lithium bank; nothing of lead.
pub(super) fn bank_findings(sheet: &Worksheet, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let bank_c = inputs.bank.temperature_c;
    if inputs.bank.chemistry != Chemistry::Lfp {
        return;
    }
    if bank_c < 0.0 {
        add(
            found,
            Severity::Stop,
            "lithium_frozen",
            format!(
                "The bank is at {bank_c:.0} °C. Lithium iron phosphate must not be charged below 0 °C: metal plates out and the cells are spoilt. Warm it first."
            ),
        );
    } else if bank_c < 10.0 {
        add(
            found,
            Severity::Mind,
            "lithium_cold",
            format!(
                "At {bank_c:.0} °C the bank takes no more than {:.0} A.",
                inputs.charge_limit_a()
            ),
        );
    } else if bank_c > 45.0 {
        add(
            found,
            Severity::Mend,
            "lithium_hot",
            format!(
                "The bank is at {bank_c:.0} °C; 45 to 55 °C is the most that cell makers allow for charging. Bring it air or charge slower."
            ),
        );
    }
    if inputs.compensation_v() != 0.0 {
        add(
            found,
            Severity::Mend,
            "lithium_compensated",
            format!(
                "Temperature compensation moves the charge voltage by {:.2} V. It is meant for lead; switch it off for lithium.",
                inputs.compensation_v()
            ),
        );
    }
    room(inputs, found);
}

/// Whether the charge voltage leaves room below what the cells withstand.
fn room(inputs: &Inputs, found: &mut Vec<Finding>) {
    let blocks = inputs.bank.nominal_v.blocks();
    let cells = CELLS * blocks;
    let (held_v, set_v) = (inputs.held_v(), inputs.charge_v());
    let highest_v = held_v.max(set_v);
    if highest_v > LITHIUM_MOST_V * cells + 1e-9 {
        add(
            found,
            Severity::Stop,
            "lithium_overvoltage",
            format!(
                "The bank is charged to {}, more than {LITHIUM_MOST_V} V a cell. The battery management system will disconnect it with the alternator charging. Set {}.",
                volts(highest_v),
                volts(LITHIUM_CHARGE_V * cells)
            ),
        );
    } else if highest_v > LITHIUM_CHARGE_V * cells + 1e-9 {
        let what = if held_v > set_v {
            "voltage the regulator holds"
        } else {
            "charge voltage"
        };
        add(
            found,
            Severity::Mend,
            "charge_voltage_no_room",
            format!(
                "The {what}, {}, is {:.2} V a cell. The battery management system opens at {LITHIUM_MOST_V} V a cell ({}): one cell a little ahead of the others, or a regulator's ripple, and it disconnects the bank under load. Set {} ({LITHIUM_CHARGE_V} V a cell); the bank gets as full.",
                volts(highest_v),
                highest_v / cells,
                volts(LITHIUM_MOST_V * cells),
                volts(LITHIUM_CHARGE_V * cells)
            ),
        );
    }
}
