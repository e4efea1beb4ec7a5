//! The bank: voltage at rest, resistance, voltage while charging.

use super::Made;
use super::boat::{At, Boat, given, made};
use super::expr::{Expr, most, num};
use crate::physics::battery::{Bank, Cells, lfp_cold_factor};

/// Voltage at rest, from the table of its chemistry.
pub(super) fn rest(bank: &Bank, charge: f64) -> Expr {
    let name = "At rest at that state of charge, from the table";
    given("V_rest", name, bank.rest_v(charge), "V")
}

pub(super) fn bank_ohm(boat: &Boat, at: At) -> Option<Made> {
    let charge = boat.view(at).charge;
    let bank = &boat.plant.bank;
    let (cells, note) = match &bank.cells {
        Cells::Lfp(_) => {
            let celsius = boat.inputs().bank.temperature_c;
            let blocks = given("N", "12 V blocks in series", bank.blocks, "");
            let name = "How much more it resists at this temperature, from the table";
            let cold = given("k_cold", name, lfp_cold_factor(celsius), "");
            let ohm = boat.input("bank_resistance_ohm_ah") * blocks
                / boat.input("bank_capacity_ah")
                * cold;
            (ohm, "Cells, and the way to where the regulator measures.")
        }
        Cells::Lead(kind) => {
            let absorption_v = bank.blocks * kind.absorption_v + bank.compensation_v;
            let name = "Absorption voltage of its kind at this temperature";
            let above = given("V_abs", name, absorption_v, "V") - rest(bank, charge);
            let accepted_a = kind.acceptance_a(bank.capacity_ah, charge);
            let accepted = given(
                "I_takes",
                "What such a bank takes at that voltage, so full",
                accepted_a.max(1e-4 * bank.capacity_ah),
                "A",
            );
            (
                most(num(0.01), above) / accepted,
                "A lead bank's is such that it takes what it accepts at its absorption voltage.",
            )
        }
    };
    let mut made = made(
        bank.resistance_ohm(charge),
        cells + boat.input("bank_harness_mohm") / num(1000.0),
        note,
    );
    made.also = &["bank_chemistry", "bank_temperature_c"];
    Some(made)
}

/// What a bank resists at a current \[Ω\]: giving, it resists less.
pub(super) fn ohm_for(bank: &Bank, charge: f64, rest_v: f64, volts: f64, amperes: f64) -> f64 {
    if amperes >= 0.0 {
        bank.resistance_ohm(charge)
    } else {
        (volts - rest_v) / amperes
    }
}

pub(super) fn moment_v(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (flow, bank) = (&view.moment.flow, &boat.plant.bank);
    let ohm = ohm_for(
        bank,
        view.charge,
        bank.rest_v(view.charge),
        flow.bank_v,
        flow.bank_a,
    );
    let resists = given("R", "What the bank resists then", ohm, "Ω");
    let amperes = boat.worked("I_bank", at, ".bank_a", flow.bank_a);
    Some(made(
        flow.bank_v,
        rest(bank, view.charge) + amperes * resists,
        "",
    ))
}

pub(super) fn energy_kept(boat: &Boat, _: At) -> Option<Made> {
    let run = &boat.report.run;
    let Some((rest_v, charging_v)) = crate::report::bank_volts(&boat.plant, &run.series) else {
        return Some(super::boat::told(
            Some(run.bank_energy_pct),
            "Nothing went into the bank.",
        ));
    };
    let rest = given(
        "V_rest",
        "At rest, the mean of the run's moments",
        rest_v,
        "V",
    );
    let charging = given(
        "V",
        "At the bank, the mean of the run's moments",
        charging_v,
        "V",
    );
    Some(made(
        run.bank_energy_pct,
        num(100.0) * boat.input("bank_charge_efficiency_pct") * rest / charging,
        "Both means count each moment by the charge that went in.",
    ))
}
