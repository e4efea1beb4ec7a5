//! What the alternators ask of the engine, and its fuel.

use super::Made;
use super::boat::{At, Boat, given, made};
use super::expr::{Expr, least, num, square};
use crate::charge::plant::chamber_kpa;
use crate::physics::fuel::{friction_kpa, friction_kw};

/// Fuel to turn itself.
pub(super) fn idle(boat: &Boat) -> Expr {
    boat.worked("B₀", At::Never, "engine.idle_l_h", boat.plant.fuel.idle_l_h)
}

/// Fuel for energy at the shafts.
pub(super) fn marginal(boat: &Boat, shaft_kwh: Option<f64>) -> Expr {
    let litres = boat.report.engine.marginal_l_kwh;
    let each = boat.worked("b_E", At::Never, "engine.marginal_l_kwh", litres);
    let shaft = given(
        "W_shaft",
        "Energy the alternators' shafts took, added up along the run",
        shaft_kwh.unwrap_or(0.0),
        "kW·h",
    );
    each * shaft
}

fn available(boat: &Boat) -> Expr {
    let kw = boat.report.engine.available_kw;
    boat.worked("P_has", At::Never, "engine.available_kw", kw)
}

fn belt(boat: &Boat) -> Expr {
    boat.input("eng_belt_efficiency_pct")
}

pub(super) fn available_kw(boat: &Boat, _: At) -> Option<Made> {
    let speed = boat.input("eng_rpm") / boat.input("eng_top_rpm");
    Some(made(
        boat.report.engine.available_kw,
        boat.input("eng_rated_kw") * least(vec![num(1.0), speed]),
        "Its torque is taken as level, so that power follows the speed.",
    ))
}

pub(super) fn peak_kw(boat: &Boat, _: At) -> Option<Made> {
    let shaft_w = boat.report.run.peak_shaft_w;
    let shaft = boat.worked("P_shaft", At::Never, "run.peak_shaft_w", shaft_w);
    Some(made(
        boat.report.engine.peak_kw,
        shaft / num(1000.0) / belt(boat),
        "",
    ))
}

pub(super) fn peak_share(boat: &Boat, _: At) -> Option<Made> {
    let engine = &boat.report.engine;
    let peak = boat.worked("P_belt", At::Never, "engine.peak_kw", engine.peak_kw);
    Some(made(
        engine.peak_share_pct,
        num(100.0) * peak / available(boat),
        "",
    ))
}

pub(super) fn mean_share(boat: &Boat, _: At) -> Option<Made> {
    let (engine, run) = (&boat.report.engine, &boat.report.run);
    let mean_kw = if run.minutes > 0.0 {
        let name = "Energy the alternators' shafts took, added up along the run";
        let shaft = given("W_shaft", name, run.shaft_kwh, "kW·h");
        let time = given("t_run", "Time of the run", run.minutes, "min");
        num(60.0) * shaft / time / belt(boat)
    } else {
        boat.worked("P_belt", At::Never, "engine.peak_kw", engine.peak_kw)
    };
    Some(made(
        engine.mean_share_pct,
        num(100.0) * mean_kw / available(boat),
        "",
    ))
}

fn slope(boat: &Boat) -> Expr {
    num(3.6)
        / (boat.input("eng_indicated_efficiency_pct")
            * boat.input("eng_fuel_mj_kg")
            * boat.input("eng_fuel_kg_l"))
}

pub(super) fn marginal_l_kwh(boat: &Boat, _: At) -> Option<Made> {
    Some(made(
        boat.report.engine.marginal_l_kwh,
        slope(boat) / belt(boat),
        "The slope of the Willans line, through the belt; 3.6 MJ is one kilowatt-hour.",
    ))
}

fn kpa(boat: &Boat) -> f64 {
    let eng = &boat.inputs().eng;
    friction_kpa(chamber_kpa(eng.injection), eng.rpm, eng.stroke_mm)
}

pub(super) fn friction_pressure(boat: &Boat, _: At) -> Option<Made> {
    let eng = &boat.inputs().eng;
    let first = given(
        "C₁",
        "Friction at a standstill, by the way of injection",
        chamber_kpa(eng.injection),
        "kPa",
    );
    let speed = || boat.input("eng_rpm");
    let piston = num(2.0) * boat.input("eng_stroke_mm") / num(1000.0) * speed() / num(60.0);
    let mut made = made(
        kpa(boat),
        first + num(48.0) * speed() / num(1000.0) + num(0.4) * square(piston),
        "The bracket is the mean speed of the piston in m/s.",
    );
    made.also = &["eng_injection"];
    Some(made)
}

pub(super) fn friction_power(boat: &Boat, _: At) -> Option<Made> {
    let eng = &boat.inputs().eng;
    let pressure = boat.worked("p", At::Never, "inner.friction_kpa", kpa(boat));
    Some(made(
        friction_kw(kpa(boat), eng.displacement_l, eng.rpm),
        pressure * boat.input("eng_displacement_l") * boat.input("eng_rpm") / num(120_000.0),
        "Every cylinder works every second turn.",
    ))
}

pub(super) fn idle_l_h(boat: &Boat, _: At) -> Option<Made> {
    let eng = &boat.inputs().eng;
    let kw = friction_kw(kpa(boat), eng.displacement_l, eng.rpm);
    let friction = boat.worked("P_friction", At::Never, "inner.friction_kw", kw);
    Some(made(
        boat.report.engine.idle_l_h,
        friction * slope(boat),
        "The foot of the Willans line: fuel that goes into friction alone.",
    ))
}
