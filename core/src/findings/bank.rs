//! Whether a lithium bank may be charged like this.

use crate::analysis::Analyses;
use crate::boat::TooColdOrHot;
use crate::boat::{Chemistry, Inputs, Worksheet};
use crate::findings::management::less_voltage;
use crate::findings::{Finding, Severity, add};
use crate::physics::battery::{LFP_CHARGE_V, LFP_MOST_V};
use crate::simulation::management::{BLOCK_CELLS, OpeningCause};
use crate::units::{degrees, volts};

/// What there is to say of a lithium bank; nothing of lead.
pub(super) fn bank_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    if inputs.bank.chemistry != Chemistry::Lfp {
        return;
    }
    lithium_temperature(inputs, report, found);
    let compensation_mv = inputs.compensation_mv();
    if compensation_mv != 0.0 {
        add(
            found,
            Severity::Mend,
            "lithium_compensated",
            format!(
                "Temperature compensation of {compensation_mv:.1} mV/K a cell moves the charge voltage with every degree ({:+.2} V now). It is meant for lead; switch it off for lithium.",
                inputs.compensation_v() + 0.0
            )
            .replace('-', "−"),
        );
    }
    lithium_voltage(inputs, report, found);
}

/// Whether the cells are too cold or too hot; one that the management system
/// opens for is told by that.
fn lithium_temperature(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let bank_c = degrees(inputs.bank.temperature_c);
    let limit_a = inputs.charge_limit_a();
    if report
        .run
        .opening
        .is_some_and(|opening| opening.cause != OpeningCause::OverVoltage)
    {
        return;
    }
    let coldest_c = degrees(inputs.bank.coldest_charge_c.unwrap_or(0.0));
    match (inputs.charge_barred(), inputs.ladder_a()) {
        (Some(TooColdOrHot::Cold), _) => add(
            found,
            Severity::Stop,
            "lithium_frozen",
            format!(
                "The bank is at {bank_c} °C and cannot be charged: lithium iron phosphate must get nothing below {coldest_c} °C, as metal plates out and the cells are spoilt. Warm it first."
            ),
        ),
        (Some(_), _) => add(
            found,
            Severity::Stop,
            "lithium_too_hot",
            format!(
                "The bank is at {bank_c} °C and cannot be charged: lithium iron phosphate must get nothing above 60 °C. Let it cool, better below 50 °C."
            ),
        ),
        (None, Some(_)) if inputs.bank.temperature_c < 25.0 => add(
            found,
            Severity::Mind,
            "lithium_cold",
            format!(
                "At {bank_c} °C the bank may take no more than {limit_a:.0} A, until its cells are at 10 °C."
            ),
        ),
        (None, Some(_)) => add(
            found,
            Severity::Mend,
            "lithium_hot",
            format!(
                "The bank is at {bank_c} °C: above 50 °C it may take no more than {limit_a:.0} A, above 60 °C nothing, and it ages fast. Bring it air."
            ),
        ),
        (None, None) => {}
    }
}

/// Whether the charge voltage leaves the cells room, what the regulator holds
/// or what all others are set to; one that the management system opens for in
/// the run is told by that.
fn lithium_voltage(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let told = report
        .run
        .opening
        .is_some_and(|opening| opening.cause == OpeningCause::OverVoltage);
    if told {
        return;
    }
    let cells = BLOCK_CELLS * inputs.bank.nominal_v.blocks();
    let (held_v, set_v) = (inputs.held_v(), inputs.charge_v());
    let highest_v = held_v.max(set_v);
    if highest_v > LFP_MOST_V * cells + 1e-9 {
        add(
            found,
            Severity::Stop,
            "lithium_overvoltage",
            format!(
                "The bank is charged to {}, more than {LFP_MOST_V} V a cell. As it fills, the battery management system disconnects it with the alternator charging. {}",
                volts(highest_v),
                less_voltage(inputs)
            ),
        );
    } else if highest_v > LFP_CHARGE_V * cells + 1e-9 {
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
                "The {what}, {}, is {:.2} V a cell. The battery management system opens at {LFP_MOST_V} V a cell ({}): one cell a little ahead of the others, or a regulator's ripple, and it disconnects the bank under load. Set {} ({LFP_CHARGE_V} V a cell); the bank gets as full.",
                volts(highest_v),
                highest_v / cells,
                volts(LFP_MOST_V * cells),
                volts(LFP_CHARGE_V * cells)
            ),
        );
    }
}
