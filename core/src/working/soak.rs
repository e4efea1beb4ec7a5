//! The heat after the engine stopped, and when the air has settled.

use super::Made;
use super::air::balance;
use super::boat::{At, Boat, Part, given, made, told};
use super::heat::Side;
use crate::physics::losses::Losses;

/// The highest after the engine stopped: the rectifier's (0) or the air's (1).
fn standing(boat: &Boat, of_air: bool) -> Option<Made> {
    let soak = boat.soak();
    let peak = boat.report.run.soak.peak;
    let [at_rectifier, at_air] = soak.at_peak;
    let then = if of_air { at_air } else { at_rectifier };
    let machine_w = |number: usize| {
        let unit = boat.unit(number);
        let machine = unit.machine.standing(unit.fan);
        let t = then.machines.get(number).copied();
        t.map_or(0.0, |t| machine.heat_to_air_w(&t, &Losses::default()))
    };
    let note = "The hour after the engine stops is stepped through time: no fan turns, nothing is lost in the alternator, and the block goes on heating the space. This is the balance when it is hottest.";
    if of_air {
        let space = &boat.plant.space;
        let second_w = boat.plant.second.map_or(0.0, |_| machine_w(1));
        let heat_w = machine_w(0) + second_w;
        let [rate, _] = space.rates_standing(then.machines[0].air_c, then.engine_c, heat_w);
        let name = "Heat the alternators give the air then";
        let heat = (given("P_alt", name, heat_w, "W"), rate * space.heat_j_k);
        let flow = given(
            "G_air",
            "Carried off by air for each kelvin, the engine stopped",
            space.after_w_k,
            "W/K",
        );
        let engine = given("T_E", "Engine then", then.engine_c, "°C");
        let mut made = balance(boat, peak.air_c, heat, engine, flow, note);
        made.also = &["space_blower_after"];
        return Some(made);
    }
    let side = Side {
        boat,
        at: At::Never,
        number: 0,
        machine: boat.plant.main.machine.standing(boat.plant.main.fan),
        t: then.machines[0],
        losses: Losses::default(),
        turning: false,
    };
    Some(made(peak.rectifier_c, side.part(Part::Rectifier), note))
}

pub(super) fn soak_rectifier(boat: &Boat, _: At) -> Option<Made> {
    standing(boat, false)
}

pub(super) fn soak_air(boat: &Boat, _: At) -> Option<Made> {
    standing(boat, true)
}

pub(super) fn soak_minutes(boat: &Boat, _: At) -> Option<Made> {
    Some(told(
        Some(boat.report.run.soak.air_peak_min),
        "There is no closed formula: the hour after the engine stops is stepped through time, and this is when its air is hottest.",
    ))
}

pub(super) fn air_settles(boat: &Boat, _: At) -> Option<Made> {
    let mut made = told(
        boat.report.run.air_settles_min,
        "There is no closed formula: of the run's moments, the first at which the air has covered 95 % of its rise; none when it is still rising at the end.",
    );
    made.also = &["run.peak.air_c"];
    Some(made)
}
