//! The bank at rest, what it resists, and what flows at the voltage that is held:
//! steps on the way to a current.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::step::Step;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::battery::{Bank, Cells, LeadKind, lfp_cold_factor};
use crate::physics::charging::{
    bank_ohm as with_cable_ohm, bank_v, held_a, lead_ohm, lithium_ohm, ohm,
};
use crate::physics::sources::CELLS;
use crate::simulation::moment::Output;

pub(super) static BANK_V: Figure =
    Figure::new("energy.bank_v", "Bank at rest, half full", "V", 2, |s| {
        let blocks = s.boat.plant.bank.blocks;
        let block_v = s.report().analyses.energy.bank_v / blocks;
        let given = [
            described("12 V blocks in series", "", blocks),
            described(
                "One 12 V block at rest, half full, from the table",
                "V",
                block_v,
            ),
        ];
        Explanation::of(Term::of(bank_v::FORMULA, given))
            .note("Watt-hours and ampere-hours are turned into each other with it.")
            .inputs(&[key!(bank.chemistry), key!(bank.nominal_v)])
    })
    .is(|s| Some(s.report().analyses.energy.bank_v));

/// What the held voltage lets flow to bank and house then.
pub(super) const fn volt_a(id: &'static str) -> Figure {
    Figure::new(
        id,
        "What the charge voltage lets flow to bank and house then",
        "A",
        0,
        explain_volt,
    )
}

fn explain_volt(s: &Instant) -> Explanation {
    let given = [
        described(
            "Charge voltage at the bank then, adjusted for temperature",
            "V",
            s.boat.plant.held_at(&s.states),
        ),
        rest_v(s),
        s.step(Step::BankOhm),
        s.drawn(),
    ];
    Explanation::of(Term::of(held_a::FORMULA, given))
        .note("More would lift the bank above the charge voltage.")
        .inputs(&[
            key!(bank.charge_v),
            key!(reg.fixed_v),
            key!(reg.drop_mv_k),
            key!(bank.compensation_mv),
            key!(bank.temperature_c),
        ])
}

/// The bank at rest.
pub(super) fn rest_v(s: &Instant) -> Term {
    let volts = s.boat.plant.bank.rest_v(s.soc);
    described(
        "At rest at that state of charge, from the table",
        "V",
        volts,
    )
}

/// What the bank resists then.
pub(super) const fn bank_ohm(id: &'static str) -> Figure {
    Figure::new(id, "What the bank resists then", "Ω", 5, explain_ohm)
        .source(CELLS)
        .is(|s| s.settled(s.boat.plant.bank.resistance_ohm(s.soc)))
}

fn explain_ohm(s: &Instant) -> Explanation {
    let house = &s.boat.plant.bank;
    let (cells, note) = match &house.cells {
        Cells::Lfp(_) => {
            let cold = lfp_cold_factor(s.inputs().bank.temperature_c);
            let given = [
                s.cell_ohm_ah(),
                described("12 V blocks in series", "", house.blocks),
                s.input(key!(bank.capacity_ah)),
                described(
                    "How much more it resists at this temperature, from the table",
                    "",
                    cold,
                ),
            ];
            let note = "Cells, and the way to where the regulator measures.";
            (Term::of(lithium_ohm::FORMULA, given), note)
        }
        Cells::Lead(kind) => {
            let takes = absorption(s, kind);
            let given = [
                described(
                    "Absorption voltage of its kind at this temperature",
                    "V",
                    takes.volts,
                ),
                rest_v(s),
                described(
                    "What such a bank takes at that voltage, so full",
                    "A",
                    takes.amperes,
                ),
            ];
            let note =
                "A lead bank's is such that it takes what it accepts at its absorption voltage.";
            (Term::of(lead_ohm::FORMULA, given), note)
        }
    };
    let cable = Term::of(ohm::FORMULA, [s.input(key!(bank.harness_mohm))]);
    Explanation::of(Term::of(with_cable_ohm::FORMULA, [cells, cable]))
        .note(note)
        .inputs(&[key!(bank.chemistry), key!(bank.temperature_c)])
}

/// A lead bank's absorption voltage, and what it takes at that.
fn absorption(s: &Instant, kind: &LeadKind) -> Output {
    let house = &s.boat.plant.bank;
    let accepted_a = kind.acceptance_a(house.capacity_ah, s.soc);
    Output {
        amperes: accepted_a.max(1e-4 * house.capacity_ah),
        volts: house.blocks * kind.absorption_v + house.compensation_v,
    }
}

/// What a bank resists at a current and voltage \[Ω\]: giving, it resists less.
pub(super) fn resists_ohm(bank: &Bank, soc: f64, at: Output) -> f64 {
    if at.amperes >= 0.0 {
        bank.resistance_ohm(soc)
    } else {
        (at.volts - bank.rest_v(soc)) / at.amperes
    }
}
