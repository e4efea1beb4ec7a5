//! The alternator's output curve: its speed, the two parameters, what the heat
//! leaves of it.

use super::Made;
use super::boat::{At, Boat, View, given, made};
use super::expr::{Expr, From, least, most, num, power, root, square};
use crate::physics::copper::COEFFICIENT_PER_K;
use crate::worksheet::Curve;

/// How copper's resistance stands against that at 20 °C.
pub(super) fn copper(celsius: Expr) -> Expr {
    num(1.0) + num(COEFFICIENT_PER_K) * (celsius - num(20.0))
}

/// Marks the second machine's symbols.
pub(super) fn mark(symbol: &str, machine: usize) -> String {
    let dash = if machine == 0 { "" } else { "′" };
    format!("{symbol}{dash}")
}

/// A figure of the first machine with a working, or of the second without.
pub(super) fn own(boat: &Boat, machine: usize, symbol: &str, tail: &str, value: f64) -> Expr {
    let symbol = mark(symbol, machine);
    let mut worked = boat.worked(&symbol, At::Never, tail, value);
    if machine > 0
        && let Some(leaf) = worked.leaf_mut()
    {
        leaf.name.insert_str(0, "Second alternator: ");
        leaf.from = From::Given;
    }
    worked
}

pub(super) fn shaft(boat: &Boat, machine: usize) -> Expr {
    own(
        boat,
        machine,
        "n",
        "machine.shaft_rpm",
        boat.unit(machine).shaft_rpm,
    )
}

pub(super) fn infinite(boat: &Boat, machine: usize) -> Expr {
    let amperes = boat.unit(machine).curve.infinite_a;
    own(boat, machine, "I∞", "machine.infinite_a", amperes)
}

pub(super) fn zero(boat: &Boat, machine: usize) -> Expr {
    let rpm = boat.unit(machine).curve.zero_rpm;
    own(boat, machine, "n₀", "machine.zero_rpm", rpm)
}

pub(super) fn shaft_rpm(boat: &Boat, _: At) -> Option<Made> {
    Some(made(
        boat.report.machine.shaft_rpm,
        boat.input("alt_pulley_ratio") * boat.input("eng_rpm"),
        "",
    ))
}

/// Whether two points make the curve.
fn by_points(boat: &Boat) -> bool {
    boat.inputs().alt.curve == Curve::Points && boat.plant.main.curve_fits
}

/// I² falls by this much for each 1/n².
fn points_slope(boat: &Boat) -> Expr {
    let per_square = |rpm: &str| num(1.0) / square(boat.input(rpm));
    (square(boat.input("alt_second_a")) - square(boat.input("alt_rated_a")))
        / (per_square("alt_second_rpm") - per_square("alt_rated_rpm"))
}

pub(super) fn infinite_a(boat: &Boat, _: At) -> Option<Made> {
    let (rated, rpm) = (boat.input("alt_rated_a"), boat.input("alt_rated_rpm"));
    let (expr, note) = if by_points(boat) {
        let square_a = square(rated) - points_slope(boat) / square(rpm);
        (root(square_a), "Through both points: I² is linear in 1/n².")
    } else {
        let share = root(num(1.0) - square(zero(boat, 0) / rpm));
        (rated / share, "Through the rating.")
    };
    let mut made = made(boat.report.machine.infinite_a, expr, note);
    made.also = &["alt_curve"];
    Some(made)
}

pub(super) fn zero_rpm(boat: &Boat, _: At) -> Option<Made> {
    let (expr, note) = if by_points(boat) {
        let fall = num(0.0) - points_slope(boat);
        (
            root(fall) / infinite(boat, 0),
            "Where the curve through both points comes to nothing.",
        )
    } else {
        let most = num(0.95) * boat.input("alt_rated_rpm");
        (
            least(vec![boat.input("alt_zero_rpm"), most]),
            "As given, and below the speed of the rating.",
        )
    };
    Some(made(boat.report.machine.zero_rpm, expr, note))
}

/// I∞·√(1 − r²), or nothing below the speed at which it begins.
fn from_ratio(output: Expr, ratio: Expr, gives: bool) -> Expr {
    let left = num(1.0) - square(ratio);
    output * root(if gives { left } else { most(num(0.0), left) })
}

pub(super) fn full_cold(boat: &Boat, _: At) -> Option<Made> {
    let one = |machine: usize| {
        let ratio = zero(boat, machine) / shaft(boat, machine);
        let gives = boat.unit(machine).as_rated_a() > 0.0;
        from_ratio(infinite(boat, machine), ratio, gives)
    };
    let both = boat.plant.second.is_some_and(|second| second.feeds_house);
    let mut made = made(
        boat.report.machine.full_cold_a,
        if both { one(0) + one(1) } else { one(0) },
        "At the voltage and rotor temperature of the rating.",
    );
    if both {
        made.also = &[
            "alt2_rated_a",
            "alt2_rated_rpm",
            "alt2_curve",
            "alt2_zero_rpm",
            "alt2_pulley_ratio",
        ];
    }
    Some(made)
}

/// Field over that of the rating, of the alternator at a moment.
fn relative_field(boat: &Boat, view: &View) -> f64 {
    let main = &boat.plant.main;
    let rotor_c = main.machine.rotor_c(view.machines[0].t.body_c);
    view.moment.flow.main.volts * main.curve_here.field_per_v(rotor_c)
}

/// Voltage the alternator works at.
pub(super) fn volts(boat: &Boat, view: &View) -> Expr {
    if view.moment.flow.main.volts == boat.inputs().way.start_v {
        return boat.input("way_start_v");
    }
    let name = "Voltage at the alternator then";
    given("V", name, view.moment.flow.main.volts, "V")
}

/// Temperature of the rotor.
pub(super) fn rotor(boat: &Boat, view: &View, machine: usize) -> Expr {
    let body_c = view
        .machines
        .get(machine)
        .map_or(0.0, |state| state.t.body_c);
    let body = given(&mark("T_b", machine), "Body then", body_c, "°C");
    body + boat.alt(machine, "rotor_rise_k")
}

pub(super) fn field_x(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let plate = copper(boat.input("alt_plate_rotor_c"));
    let expr =
        volts(boat, &view) / boat.input("alt_test_v") * plate / copper(rotor(boat, &view, 0));
    Some(made(
        relative_field(boat, &view),
        expr,
        "A warm rotor resists more and takes less field; 0.00393 for each kelvin is copper's.",
    ))
}

/// The same voltage with both diodes' drops, over that of the rating.
pub(super) fn behind(boat: &Boat, view: &View) -> Expr {
    let drops = || num(2.0) * boat.input("alt_diode_v");
    (volts(boat, view) + drops()) / (boat.input("alt_test_v") + drops())
}

pub(super) fn full_a(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let x = relative_field(boat, &view);
    let value = full_value(boat, &view);
    let field = || boat.worked("x", at, ".field_x", x);
    let ratio = zero(boat, 0) / shaft(boat, 0) * behind(boat, &view)
        / power(field(), boat.input("alt_speed_exponent"));
    let output = infinite(boat, 0) * power(field(), boat.input("alt_field_exponent"));
    Some(made(
        value,
        from_ratio(output, ratio, value > 0.0),
        "Full field at that voltage, the rotor as warm as it is then.",
    ))
}

/// What the alternator could give at full field at a moment \[A\].
pub(super) fn full_value(boat: &Boat, view: &View) -> f64 {
    let main = &boat.plant.main;
    let rotor_c = main.machine.rotor_c(view.machines[0].t.body_c);
    let per_v = main.curve_here.field_per_v(rotor_c);
    main.curve_here
        .full_field(view.moment.flow.main.volts, per_v)
        .0
}
