//! The charging run: times, means, fuel.

use super::Made;
use super::boat::{At, Boat, given, made, told};
use super::day::STEPPED;
use super::engine;
use super::expr::{Expr, num};

/// Time to gain some charge at a mean current.
pub(super) fn time(gained_ah: Expr, kept: Expr, mean_a: f64) -> Expr {
    let mean = given(
        "I_mean",
        "Mean current into the bank, of this run to there",
        mean_a,
        "A",
    );
    num(60.0) * gained_ah / (kept * mean)
}

/// Time to a state of charge, 0 to 1.
fn reaches(boat: &Boat, minutes: Option<f64>, to: Expr, share: f64) -> Option<Made> {
    let Some(minutes) = minutes else {
        let note = "Not reached: the run is stepped through time until it gives up.";
        return Some(told(None, note));
    };
    if minutes <= 0.0 {
        return Some(told(Some(minutes), "The run begins there or above."));
    }
    let bank = &boat.plant.bank;
    let gained = share - boat.inputs().run.from_pct / 100.0;
    let mean_a = 60.0 * bank.capacity_ah * gained / bank.charge_efficiency / minutes;
    let ah = boat.input("bank_capacity_ah") * (to - boat.input("run_from_pct"));
    let kept = boat.input("bank_charge_efficiency_pct");
    Some(made(minutes, time(ah, kept, mean_a), STEPPED))
}

pub(super) fn to_target(boat: &Boat, _: At) -> Option<Made> {
    let share = boat.inputs().run.to_pct / 100.0;
    let minutes = boat.report.run.minutes_to_target;
    reaches(boat, minutes, boat.input("run_to_pct"), share)
}

pub(super) fn to_80(boat: &Boat, _: At) -> Option<Made> {
    reaches(boat, boat.report.run.minutes_to_80, num(0.8), 0.8)
}

pub(super) fn to_90(boat: &Boat, _: At) -> Option<Made> {
    reaches(boat, boat.report.run.minutes_to_90, num(0.9), 0.9)
}

pub(super) fn to_100(boat: &Boat, _: At) -> Option<Made> {
    reaches(boat, boat.report.run.minutes_to_100, num(1.0), 1.0)
}

pub(super) fn mean_bank_a(boat: &Boat, _: At) -> Option<Made> {
    let run = &boat.report.run;
    if run.minutes <= 0.0 {
        return Some(told(
            Some(run.mean_bank_a),
            "There is no run: what flows at the start.",
        ));
    }
    let share = boat.trace.charge_at(boat.end_s());
    let end = given("s_end", "State of charge at its end", 100.0 * share, "%");
    let time = given("t", "Time of the run", run.minutes, "min");
    let gained = boat.input("bank_capacity_ah") * (end - boat.input("run_from_pct"));
    Some(made(
        run.mean_bank_a,
        num(60.0) * gained / (boat.input("bank_charge_efficiency_pct") * time),
        "The charge that was gained, by the time it took; the run is stepped through time.",
    ))
}

fn marginal(boat: &Boat) -> Expr {
    engine::marginal(boat, Some(boat.report.run.shaft_kwh))
}

pub(super) fn marginal_fuel(boat: &Boat, _: At) -> Option<Made> {
    Some(made(
        boat.report.run.marginal_fuel_l,
        marginal(boat),
        "Energy at the shaft is added up along the run.",
    ))
}

pub(super) fn fuel(boat: &Boat, _: At) -> Option<Made> {
    let run = &boat.report.run;
    let time = given("t", "Time of the run", run.minutes, "min");
    Some(made(
        run.fuel_l,
        engine::idle(boat) * time / num(60.0) + marginal(boat),
        "What turns the engine, and what the alternator asks on top.",
    ))
}

pub(super) fn charge(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let value = 100.0 * view.charge;
    let start = boat.input("run_from_pct");
    let bank = &boat.plant.bank;
    let gained_ah = (view.charge - boat.inputs().run.from_pct / 100.0) * bank.capacity_ah;
    let gained = given(
        "Q_gained",
        "Charge gained until then, added up along the run",
        gained_ah,
        "A·h",
    );
    let share = start + gained / boat.input("bank_capacity_ah");
    Some(made(
        value,
        num(100.0) * share,
        "The run is stepped through time.",
    ))
}
