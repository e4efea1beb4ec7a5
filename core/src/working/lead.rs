//! Beside a lead bank: the same boat with flooded lead of the same ampere-hours.

use super::Made;
use super::boat::{At, Boat, given, made, told};
use super::day::{STEPPED, no_run};
use super::expr::Expr;
use super::{bank, held, run};
use crate::physics::battery::Bank;
use crate::report::flooded;

fn old(boat: &Boat) -> Bank {
    flooded(boat.inputs()).house_bank()
}

fn kept(bank: &Bank) -> Expr {
    let name = "Charge returned, the usual for flooded lead";
    given("η_lead", name, 100.0 * bank.charge_efficiency, "%")
}

pub(super) fn engine_hours(boat: &Boat, _: At) -> Option<Made> {
    let lead = boat.report.lead?;
    if let Some(none) = no_run(lead.engine_hours) {
        return Some(none);
    }
    let need = boat.worked("Q", At::Never, "day.need_ah", boat.report.day.need_ah);
    let mean_a = lead.day_mean_bank_a.unwrap_or(0.0);
    let mean = given(
        "I_mean",
        "Mean current into the lead bank, of this run",
        mean_a,
        "A",
    );
    Some(made(
        lead.engine_hours.unwrap_or(0.0),
        need / (kept(&old(boat)) * mean + held::house(boat)),
        STEPPED,
    ))
}

pub(super) fn to_target(boat: &Boat, _: At) -> Option<Made> {
    let minutes = boat.report.lead?.minutes_to_target;
    let Some(minutes) = minutes.filter(|minutes| *minutes > 0.0) else {
        return Some(told(minutes, "Not reached, or there from the start."));
    };
    let (bank, span) = (old(boat), &boat.inputs().run);
    let gained = (span.to_pct - span.from_pct) / 100.0;
    let mean_a = 60.0 * bank.capacity_ah * gained / bank.charge_efficiency / minutes;
    let share = boat.input("run_to_pct") - boat.input("run_from_pct");
    let ah = boat.input("bank_capacity_ah") * share;
    Some(made(minutes, run::time(ah, kept(&bank), mean_a), STEPPED))
}

pub(super) fn mid_a(boat: &Boat, _: At) -> Option<Made> {
    let lead = boat.report.lead?;
    let (old, charge) = (old(boat), lead.mid_charge_pct / 100.0);
    let rest_v = old.rest_v(charge);
    let ohm = bank::ohm_for(&old, charge, rest_v, lead.mid_bank_v, lead.mid_bank_a);
    let volts = given("V", "At the lead bank then", lead.mid_bank_v, "V");
    let resists = given("R", "What such a bank resists, so full", ohm, "Ω");
    Some(made(
        lead.mid_bank_a,
        (volts - bank::rest(&old, charge)) / resists,
        "A lead bank resists the more, the fuller it is: that is its falling appetite.",
    ))
}
