//! The air of the engine space: what it gets, what carries it off.

use super::Made;
use super::boat::{At, Boat, View, given, made, told};
use super::expr::{Expr, num, power};
use super::heat::balanced;
use crate::physics::air::SPECIFIC_HEAT;
use crate::physics::losses::Losses;
use crate::worksheet::Breathing;

/// Heat the machines give the air of the space \[W\].
pub(super) fn warmth(boat: &Boat, view: &View) -> (f64, f64) {
    let of = |number: usize, losses: &Losses| {
        let t = view.machines.get(number).map(|state| state.t);
        t.map_or(0.0, |t| boat.unit(number).machine.heat_to_air_w(&t, losses))
    };
    let second = boat
        .plant
        .second
        .map_or(0.0, |_| of(1, &view.moment.second_losses));
    (of(0, &view.moment.losses), second)
}

/// The air's temperature at a moment.
pub(super) fn then(boat: &Boat, at: At, value: f64, note: &str) -> Option<Made> {
    let space = &boat.plant.space;
    let view = boat.view(at);
    if space.measured_hot_c.is_some() {
        let hot = boat.input("space_hot_c");
        if at == At::Hot {
            return Some(made(value, hot, "As you measured it."));
        }
        let rise = given("T_start", "At the start", space.start_c, "°C") - hot.clone();
        let time = given("t", "Time since the start", view.seconds / 60.0, "min");
        let e = given(
            "e",
            "Base of the natural logarithm",
            std::f64::consts::E,
            "",
        );
        let gone = power(e, num(0.0) - time / boat.input("eng_warm_up_min"));
        return Some(made(
            value,
            hot + rise * gone,
            "You measured it hot; it comes up as the engine warms.",
        ));
    }
    let (main_w, second_w) = warmth(boat, &view);
    let engine_c = if at == At::Hot {
        boat.input("eng_running_c")
    } else {
        given("T_E", "Engine then", space.engine_c(view.seconds), "°C")
    };
    let mut heat = boat.worked("P_alt", at, ".carried_w", main_w);
    if boat.plant.second.is_some() {
        heat = heat
            + given(
                "P_alt′",
                "Heat the second alternator gives the air then",
                second_w,
                "W",
            );
    }
    let air_c = view.machines[0].t.air_c;
    let rate = space.rate(view.seconds, air_c, main_w + second_w);
    let stored_w = rate * space.heat_j_k;
    let flow = boat.worked("G_air", At::Never, "inner.air_w_k", space.flow_w_k);
    let heat = (heat, stored_w);
    Some(balance(boat, value, heat, engine_c, flow, note))
}

/// The air's own balance.
pub(super) fn balance(
    boat: &Boat,
    value: f64,
    (heat, stored_w): (Expr, f64),
    engine_c: Expr,
    flow: Expr,
    note: &str,
) -> Made {
    let (engine, wall) = (
        || boat.input("eng_surface_w_k"),
        || boat.input("space_wall_w_k"),
    );
    let conductance = engine() + flow.clone() + wall();
    let sum_w_k = conductance.exact();
    if sum_w_k <= 0.0 {
        return told(
            Some(value),
            "Nothing carries heat to this air or away from it.",
        );
    }
    let sum = heat
        + engine() * engine_c
        + flow * boat.input("space_outside_c")
        + wall() * boat.input("space_cabin_c");
    made(value, balanced(sum, stored_w, sum_w_k) / conductance, note)
}

pub(super) fn air_w_k(boat: &Boat, _: At) -> Option<Made> {
    let m3h = boat.report.machine.space_air_m3h;
    let flow = boat.worked("q", At::Never, "machine.space_air_m3h", m3h);
    let heat = given("c", "Specific heat of air", SPECIFIC_HEAT, "J/(kg·K)");
    Some(made(
        boat.plant.space.flow_w_k,
        flow / num(3600.0) * boat.input("space_air_kg_m3") * heat,
        "Heat the air carries off for each kelvin.",
    ))
}

pub(super) fn space_air(boat: &Boat, _: At) -> Option<Made> {
    let inputs = boat.inputs();
    let drawn = boat.input("eng_displacement_l") / num(1000.0) * boat.input("eng_rpm") / num(2.0)
        * num(60.0)
        * boat.input("eng_filling_pct");
    let blown = boat.input("space_blower_m3h") * boat.input("space_blower_installed_pct");
    let through = match inputs.eng.breathing {
        Breathing::Space => drawn + blown,
        Breathing::Outside => blown,
    };
    let mut made = made(
        boat.report.machine.space_air_m3h,
        through + boat.input("space_leak_m3h"),
        "What the engine breathes every second turn, the blower as installed, and the gaps.",
    );
    made.also = &["eng_breathing"];
    Some(made)
}
