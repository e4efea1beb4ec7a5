//! The temperatures the page shows: settled, the highest of the run, at a minute.

use super::boat::{At, Boat, Part, made};
use super::expr::num;
use super::heat::side;
use super::{Made, air};
use crate::physics::thermal::FAN_HEAT_IN_BODY;
use crate::report::Temps;

pub(super) fn inlet(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let side = side(boat, at, &view, 0);
    let air = || side.degrees("T_air", "Air of the space", "hot.air_c", side.t.air_c);
    let drawn = || air() + boat.input("space_recirculation_pct") * (side.body() - air());
    let expr = if side.machine.hose > 0.0 {
        let colder = boat.input("space_outside_c") - drawn();
        drawn() + boat.input("space_cold_air_pct") * colder
    } else {
        drawn()
    };
    Some(made(
        side.machine.inlet_c(&side.t),
        expr,
        "Some of its own warm air is drawn in again; a hose brings air from outside.",
    ))
}

/// One of a report's temperatures.
fn of(t: Temps, part: Part) -> f64 {
    match part {
        Part::Winding => t.winding_c,
        Part::Case => t.case_c,
        Part::Rectifier => t.rectifier_c,
        Part::Air => t.air_c,
    }
}

/// One of the temperatures once all has settled.
fn hot(boat: &Boat, at: At, part: Part) -> Option<Made> {
    let value = of(boat.report.machine.hot?, part);
    then(boat, at, 0, part, value, "Settled: heat in is heat out.")
}

pub(super) fn hot_winding(boat: &Boat, at: At) -> Option<Made> {
    hot(boat, at, Part::Winding)
}

pub(super) fn hot_rectifier(boat: &Boat, at: At) -> Option<Made> {
    hot(boat, at, Part::Rectifier)
}

pub(super) fn hot_case(boat: &Boat, at: At) -> Option<Made> {
    hot(boat, at, Part::Case)
}

pub(super) fn hot_air(boat: &Boat, at: At) -> Option<Made> {
    hot(boat, at, Part::Air)
}

/// A moment's temperature of a part or the air.
fn then(boat: &Boat, at: At, number: usize, part: Part, value: f64, note: &str) -> Option<Made> {
    let view = boat.view(at);
    if part == Part::Air {
        return air::then(boat, at, value, note);
    }
    Some(made(value, side(boat, at, &view, number).part(part), note))
}

/// A part's highest of the run.
pub(super) fn peak(boat: &Boat, at: At) -> Option<Made> {
    let At::Peak(number, part) = at else {
        return None;
    };
    let run = &boat.report.run;
    let peak = if number == 1 {
        run.second_peak?
    } else {
        run.peak
    };
    let note = format!(
        "The highest of the run's moments, after {}. The run is stepped through time; at any moment of it heat in is heat carried away and heat stored, and where a temperature turns nothing is stored.",
        crate::report::clock(boat.view(at).seconds / 60.0)
    );
    then(boat, at, number, part, of(peak, part), &note)
}

/// A moment's temperatures, in the order of the lines.
fn at_minute(boat: &Boat, at: At, part: Part) -> Option<Made> {
    let value = part.of()(&boat.view(at).machines[0].t);
    let note = "The run is stepped through time; at this moment heat in is heat carried away and heat stored.";
    then(boat, at, 0, part, value, note)
}

pub(super) fn minute_winding(boat: &Boat, at: At) -> Option<Made> {
    at_minute(boat, at, Part::Winding)
}

pub(super) fn minute_rectifier(boat: &Boat, at: At) -> Option<Made> {
    at_minute(boat, at, Part::Rectifier)
}

pub(super) fn minute_case(boat: &Boat, at: At) -> Option<Made> {
    at_minute(boat, at, Part::Case)
}

pub(super) fn minute_air(boat: &Boat, at: At) -> Option<Made> {
    at_minute(boat, at, Part::Air)
}

pub(super) fn carried(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let s = side(boat, at, &view, 0);
    let expr = s.winding_air() * (s.winding() - s.inlet())
        + s.body_air() * (s.body() - s.inlet())
        + s.rectifier_air() * (s.rectifier() - s.inlet())
        + num(1.0 - FAN_HEAT_IN_BODY) * s.fan();
    Some(made(
        air::warmth(boat, &view).0,
        expr,
        "Settled, this is what the alternator loses: heat in is heat carried away. Most of the fan's own loss leaves as warm air.",
    ))
}
