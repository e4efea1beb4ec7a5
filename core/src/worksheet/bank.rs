//! The house bank.

use super::Inputs;
use crate::fields::units::{AMPERE, AMPERE_HOUR, MILLIOHM, OHM_AMPERE_HOUR, PERCENT, VOLT};
use crate::fields::{choice, choose, maybe, number, section};

choice! {
    /// Battery chemistry.
    Chemistry {
        Lfp = "lfp", "Lithium iron phosphate (LFP)";
    }
}

choice! {
    /// System voltage.
    NominalVolts {
        V12 = "12", "12 V";
        V24 = "24", "24 V";
        V48 = "48", "48 V";
    }
}

impl NominalVolts {
    /// How many 12 V blocks that is.
    pub fn blocks(self) -> f64 {
        match self {
            NominalVolts::V12 => 1.0,
            NominalVolts::V24 => 2.0,
            NominalVolts::V48 => 4.0,
        }
    }
}

section! {
    /// The house bank.
    Bank {
        chemistry: Chemistry = choose("Chemistry", Chemistry::OPTIONS, 0).nameplate()
            .help("Printed on the case.");
        nominal_v: NominalVolts = choose("System voltage", NominalVolts::OPTIONS, 0).nameplate()
            .help("Of the house bank. 12 V on most boats under 15 m.");
        capacity_ah: f64 = number("Capacity", AMPERE_HOUR, 10.0, 5000.0, 400.0).nameplate()
            .help("On the label. Add up batteries joined in parallel; joined in series the ampere-hours stay those of one.");
        window_low_pct: f64 = number("Never below", PERCENT, 0.0, 90.0, 10.0)
            .help("The state of charge you want kept in hand. 10 % is usual for LFP.");
        window_high_pct: f64 = number("Full for daily use", PERCENT, 10.0, 100.0, 90.0)
            .help("Where a usual charge ends. LFP lasts longer when it is not held at 100 %.");
        charge_v: Option<f64> = maybe("Charge voltage", VOLT, 10.0, 70.0, "3.55 V a cell", |w| Some(usual_charge_v(&w.inputs))).nameplate()
            .help("The battery maker's figure, measured at the battery: 13.8 to 14.2 V for a 12 V LFP bank.");
        charge_limit_a: Option<f64> = maybe("Charge current limit", AMPERE, 1.0, 10_000.0, "half the ampere-hours", |w| Some(usual_charge_limit_a(&w.inputs))).nameplate()
            .help("The lowest of the cell maker's figure and the battery management system's label; 0.2 to 0.5 A for each A·h is usual. Batteries in parallel add up.");
        resistance_ohm_ah: f64 = number("Cell resistance", OHM_AMPERE_HOUR, 0.05, 10.0, 0.8).deep()
            .help("Of a 12 V block, times its ampere-hours: 0.3 to 1.2 for LFP. To measure: step the current by 50 A, divide the change in volts at the posts by 50, multiply by the capacity.");
        harness_mohm: f64 = number("Switch, fuse and cable", MILLIOHM, 0.0, 100.0, 1.5).deep()
            .help("Resistance between the cells and where the regulator measures: 1 to 3 mΩ with the management system's own switch.");
        charge_efficiency_pct: f64 = number("Charge returned", PERCENT, 50.0, 100.0, 99.5).deep()
            .help("Ampere-hours that come out for those that went in. At least 99.5 % for LFP.");
    }
}

/// 3.55 V for each of the cells in series.
fn usual_charge_v(inputs: &Inputs) -> f64 {
    14.2 * inputs.bank.nominal_v.blocks()
}

/// 0.5 C, common practice.
fn usual_charge_limit_a(inputs: &Inputs) -> f64 {
    0.5 * inputs.bank.capacity_ah
}

impl Inputs {
    /// Voltage the bank is charged to \[V\].
    pub fn charge_v(&self) -> f64 {
        self.bank.charge_v.unwrap_or_else(|| usual_charge_v(self))
    }

    /// Most current the bank may take \[A\].
    pub fn charge_limit_a(&self) -> f64 {
        self.bank
            .charge_limit_a
            .unwrap_or_else(|| usual_charge_limit_a(self))
    }
}
