//! Whether the bank may be charged like this.

use super::management::{less_voltage, most_cells_v};
use super::{Finding, Severity, add};
use crate::charge::management::{BLOCK_CELLS, MOST_CELL_V, OpeningCause};
use crate::report::Report;
use crate::worksheet::{Chemistry, Inputs, Worksheet};

/// Room a charge voltage should leave each cell below its limit \[V\]: cells
/// run apart by some hundredths of a volt at the end of a charge. Own reasoning.
const LEAST_ROOM_V: f64 = 0.05;

/// Whether the bank may be charged like this.
pub(super) fn bank_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let bank_c = inputs.bank.temperature_c;
    if inputs.bank.chemistry != Chemistry::Lfp {
        if bank_c > 50.0 {
            add(
                found,
                Severity::Stop,
                "lead_hot",
                format!(
                    "A lead battery at {bank_c:.0} °C must not be charged: it can run away and boil. Let it cool below 50 °C."
                ),
            );
        }
        return;
    }
    lithium_temperature(inputs, report, found);
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
    lithium_voltage(inputs, report, found);
}

/// Whether the cells are too cold or too hot; one that the management system
/// opens for is told by that.
fn lithium_temperature(inputs: &Inputs, report: &Report, found: &mut Vec<Finding>) {
    let bank_c = inputs.bank.temperature_c;
    let limit_a = inputs.charge_limit_a();
    if report
        .run
        .opening
        .is_some_and(|opening| opening.cause != OpeningCause::OverVoltage)
    {
        return;
    }
    let coldest_c = inputs.bank.coldest_charge_c.unwrap_or(0.0);
    match (inputs.charge_barred(), inputs.ladder_a()) {
        (Some(OpeningCause::Cold), _) => add(
            found,
            Severity::Stop,
            "lithium_frozen",
            format!(
                "The bank is at {bank_c:.0} °C and cannot be charged: lithium iron phosphate must get nothing below {coldest_c:.0} °C, as metal plates out and the cells are spoilt. Warm it first."
            ),
        ),
        (Some(_), _) => add(
            found,
            Severity::Stop,
            "lithium_too_hot",
            format!(
                "The bank is at {bank_c:.0} °C and cannot be charged: lithium iron phosphate must get nothing above 60 °C. Let it cool, better below 50 °C."
            ),
        ),
        (None, Some(_)) if bank_c < 25.0 => add(
            found,
            Severity::Mind,
            "lithium_cold",
            format!(
                "At {bank_c:.0} °C the bank may take no more than {limit_a:.0} A, until its cells are at 10 °C."
            ),
        ),
        (None, Some(_)) => add(
            found,
            Severity::Mend,
            "lithium_hot",
            format!(
                "The bank is at {bank_c:.0} °C: above 50 °C it may take no more than {limit_a:.0} A, above 60 °C nothing, and it ages fast. Bring it air."
            ),
        ),
        (None, None) => {}
    }
}

/// Whether the charge voltage leaves the cells room; one that the management
/// system opens for in the run is told by that.
fn lithium_voltage(inputs: &Inputs, report: &Report, found: &mut Vec<Finding>) {
    let (held_v, most_v) = (inputs.held_v(), most_cells_v(inputs));
    let blocks = inputs.bank.nominal_v.blocks();
    let remedy = less_voltage(inputs);
    let told = report
        .run
        .opening
        .is_some_and(|opening| opening.cause == OpeningCause::OverVoltage);
    if held_v > most_v {
        if !told {
            add(
                found,
                Severity::Stop,
                "lithium_overvoltage",
                format!(
                    "The bank is held at {held_v:.1} V, more than {MOST_CELL_V} V a cell. As it fills, the battery management system disconnects it with the alternator working. {remedy}"
                ),
            );
        }
    } else if held_v > most_v - LEAST_ROOM_V * BLOCK_CELLS * blocks {
        add(
            found,
            Severity::Mend,
            "lithium_no_room",
            format!(
                "A charge voltage of {held_v:.1} V leaves {:.2} V a cell below the {MOST_CELL_V} V at which the battery management system disconnects. Cells never fill quite alike, and the first one gets there before the others. {remedy}",
                (most_v - held_v) / (BLOCK_CELLS * blocks)
            ),
        );
    }
}
