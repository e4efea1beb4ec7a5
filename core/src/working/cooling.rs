//! What the alternator sheds its heat through.

use super::Made;
use super::boat::{At, Boat, given, made, told};
use super::curve::shaft;
use super::expr::{num, power};
use crate::physics::thermal::{
    BODY_AIR, RECTIFIER_AIR, RECTIFIER_BODY, SHARES_OF_KG, STILL_AIR, WINDING_AIR, WINDING_BODY,
    fan_factor,
};

/// A conductance of the machine: its share of a 6 kg machine, by mass, and
/// where it goes to the air, by cooling and fan.
fn conductance(boat: &Boat, value: f64, share: f64, to_air: bool) -> Option<Made> {
    let size = boat.input("alt_mass_kg") / num(SHARES_OF_KG);
    let mut expr = given("G₀", "Of a 6 kg machine", share, "W/K") * size;
    if to_air {
        let factor = boat.report.machine.cooling_factor;
        let main = &boat.plant.main;
        expr = expr
            * boat.worked("g", At::Never, "machine.cooling_factor", factor)
            * boat.worked("k_fan", At::Never, "inner.fan_factor", main.fan);
    }
    Some(made(value, expr, "Shares are own reasoning."))
}

pub(super) fn winding_air(boat: &Boat, _: At) -> Option<Made> {
    conductance(boat, boat.plant.main.machine.winding_air, WINDING_AIR, true)
}

pub(super) fn body_air(boat: &Boat, _: At) -> Option<Made> {
    conductance(boat, boat.plant.main.machine.body_air, BODY_AIR, true)
}

pub(super) fn rectifier_air(boat: &Boat, _: At) -> Option<Made> {
    conductance(
        boat,
        boat.plant.main.machine.rectifier_air,
        RECTIFIER_AIR,
        true,
    )
}

pub(super) fn winding_body(boat: &Boat, _: At) -> Option<Made> {
    conductance(
        boat,
        boat.plant.main.machine.winding_body,
        WINDING_BODY,
        false,
    )
}

pub(super) fn rectifier_body(boat: &Boat, _: At) -> Option<Made> {
    conductance(
        boat,
        boat.plant.main.machine.rectifier_body,
        RECTIFIER_BODY,
        false,
    )
}

pub(super) fn fan(boat: &Boat, _: At) -> Option<Made> {
    let alt = &boat.inputs().alt;
    let speed = shaft(boat, 0) / boat.input("alt_anchor_rpm");
    Some(made(
        fan_factor(
            boat.plant.main.shaft_rpm,
            alt.anchor_rpm,
            alt.cooling_exponent,
        ),
        num(STILL_AIR) + num(1.0 - STILL_AIR) * power(speed, boat.input("alt_cooling_exponent")),
        "Part of the cooling does not come from the fan.",
    ))
}

pub(super) fn cooling(boat: &Boat, _: At) -> Option<Made> {
    let mut made = told(
        Some(boat.report.machine.cooling_factor),
        "There is no closed formula: it is searched for until the winding settles at the temperature of the anchor, at full field, at the anchor's speed and in its air.",
    );
    made.also = &[
        "alt_anchor_winding_c",
        "alt_anchor_rpm",
        "alt_anchor_air_c",
        "alt_efficiency_pct",
        "alt_mass_kg",
        "inner.winding_body_w_k",
        "machine.phase_20c_ohm",
    ];
    Some(made)
}
