//! Whether the bank may be charged like this.

use super::{Finding, Severity, add};
use crate::worksheet::{Chemistry, Worksheet};

pub(super) fn bank_findings(sheet: &Worksheet, found: &mut Vec<Finding>) {
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
    if inputs.held_v() > inputs.bank.nominal_v.blocks() * 14.6 {
        add(
            found,
            Severity::Stop,
            "lithium_overvoltage",
            format!(
                "The bank is held at {:.1} V, more than 3.65 V a cell. The battery management system will disconnect it with the alternator working.",
                inputs.held_v()
            ),
        );
    }
}
