//! Where the shaft's power goes: the five losses, and what they are scaled by.

use super::Made;
use super::boat::{At, Boat, View, given, made, told};
use super::curve::{behind, copper, infinite, rotor, shaft, zero};
use super::expr::{Expr, least, most, num, power, square, sum};
use crate::charge::plant::Output;
use crate::physics::losses::{COPPER_FACTOR, IRON_EXPONENT, Losses, RATED_RPM, RATED_WINDING_C};

fn rated_loss_value(boat: &Boat) -> f64 {
    let (alt, inputs) = (&boat.inputs().alt, boat.inputs());
    inputs.alternator_test_v() * alt.rated_a * (100.0 / alt.efficiency_pct - 1.0)
}

pub(super) fn rated_loss(boat: &Boat, _: At) -> Option<Made> {
    let share = num(1.0) / boat.input("alt_efficiency_pct") - num(1.0);
    Some(made(
        rated_loss_value(boat),
        boat.input("alt_test_v") * boat.input("alt_rated_a") * share,
        "What goes in at the rating and does not come out.",
    ))
}

fn rated(boat: &Boat) -> Expr {
    boat.worked(
        "P_N",
        At::Never,
        "inner.rated_loss_w",
        rated_loss_value(boat),
    )
}

fn copper_factor() -> Expr {
    given(
        "k_Cu",
        "π²/6: three phases behind a bridge",
        COPPER_FACTOR,
        "",
    )
}

pub(super) fn phase_ohm(boat: &Boat, _: At) -> Option<Made> {
    let amperes = || boat.input("alt_rated_a");
    let rest = rated(boat)
        - rated(boat) * boat.input("alt_iron_share_pct")
        - rated(boat) * boat.input("alt_fan_share_pct")
        - num(2.0) * boat.input("alt_diode_v") * amperes()
        - boat.input("alt_field_w");
    let left = if boat.plant.main.losses.plausible {
        rest
    } else {
        most(num(0.05) * rated(boat), rest)
    };
    let warm = copper(num(RATED_WINDING_C));
    Some(made(
        boat.report.machine.phase_20c_ohm,
        left / (copper_factor() * square(amperes()) * warm),
        "What iron, fan, diodes and field leave of the rated loss is the winding's, at 110 °C.",
    ))
}

/// Speed over that of the rating.
fn speed(boat: &Boat) -> Expr {
    shaft(boat, 0) / num(RATED_RPM)
}

/// What a moment is in losses.
fn main(view: &View) -> (&Losses, &Output) {
    (&view.moment.losses, &view.moment.flow.main)
}

fn amperes(output: &Output) -> Expr {
    given(
        "I",
        "The alternator's own current then",
        output.amperes,
        "A",
    )
}

pub(super) fn copper_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (losses, output) = main(&view);
    let ohm = boat.report.machine.phase_20c_ohm;
    let phase = boat.worked("R_phase", At::Never, "machine.phase_20c_ohm", ohm);
    let winding_c = view.machines[0].t.winding_c;
    let winding = given("T_w", "Winding then", winding_c, "°C");
    Some(made(
        losses.copper_w,
        copper_factor() * phase * square(amperes(output)) * copper(winding),
        "",
    ))
}

pub(super) fn diode_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (losses, output) = main(&view);
    Some(made(
        losses.diode_w,
        num(2.0) * boat.input("alt_diode_v") * amperes(output),
        "Two diodes are always in the way.",
    ))
}

fn flux_value(boat: &Boat, output: &Output) -> f64 {
    boat.plant
        .main
        .curve_here
        .flux_square(output.amperes, output.volts)
}

fn flux(boat: &Boat, at: At, output: &Output) -> Expr {
    boat.worked("Φ", at, ".flux_square", flux_value(boat, output))
}

pub(super) fn flux_square(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (_, output) = main(&view);
    let open = zero(boat, 0) / shaft(boat, 0) * behind(boat, &view);
    Some(made(
        flux_value(boat, output),
        square(amperes(output) / infinite(boat, 0)) + least(vec![num(1.0), square(open)]),
        "What current and voltage ask of the iron, against the rating.",
    ))
}

pub(super) fn field_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (losses, output) = main(&view);
    let exponent = num(1.0) / boat.input("alt_field_exponent");
    Some(made(
        losses.field_w,
        boat.input("alt_field_w")
            * power(flux(boat, at, output), exponent)
            * copper(rotor(boat, &view, 0))
            / copper(boat.input("alt_plate_rotor_c")),
        "The field follows the flux backwards through saturation.",
    ))
}

pub(super) fn iron_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (losses, output) = main(&view);
    Some(made(
        losses.iron_w,
        boat.input("alt_iron_share_pct")
            * rated(boat)
            * power(speed(boat), num(IRON_EXPONENT))
            * flux(boat, at, output),
        "",
    ))
}

pub(super) fn fan_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (losses, _) = main(&view);
    Some(made(
        losses.fan_w,
        boat.input("alt_fan_share_pct")
            * rated(boat)
            * power(speed(boat), boat.input("alt_fan_exponent")),
        "",
    ))
}

/// The five losses of the alternator.
fn five(boat: &Boat, at: At, losses: &Losses) -> Vec<Expr> {
    [
        ("P_Cu", ".copper_w", losses.copper_w),
        ("P_d", ".diode_w", losses.diode_w),
        ("P_field", ".field_w", losses.field_w),
        ("P_Fe", ".iron_w", losses.iron_w),
        ("P_fan", ".fan_w", losses.fan_w),
    ]
    .into_iter()
    .map(|(symbol, tail, watts)| boat.worked(symbol, at, tail, watts))
    .collect()
}

pub(super) fn losses_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let (losses, _) = main(&view);
    let note = "Heat that comes about in the alternator.";
    Some(made(losses.total_w(), sum(five(boat, at, losses)), note))
}

/// What the machines give, and what their shafts take.
fn given_and_lost(boat: &Boat, at: At, view: &View) -> (Expr, Expr) {
    let (losses, output) = main(view);
    let volts = given("V", "At the alternator then", output.volts, "V");
    let mut out = amperes(output) * volts;
    let lost = boat.worked("P_loss", at, ".losses_w", losses.total_w());
    let mut taken = out.clone() + lost;
    if boat.plant.second.is_some() {
        let (second, flow) = (&view.moment.second_losses, &view.moment.flow.second);
        let amperes = given(
            "I′",
            "The second alternator's current then",
            flow.amperes,
            "A",
        );
        let theirs = amperes * given("V′", "At the second alternator then", flow.volts, "V");
        let lost = given(
            "P_loss′",
            "Lost in the second alternator then",
            second.total_w(),
            "W",
        );
        out = out + theirs.clone();
        taken = taken + theirs + lost;
    }
    (out, taken)
}

pub(super) fn shaft_w(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let value = view.moment.shaft_w();
    let (_, taken) = given_and_lost(boat, at, &view);
    Some(made(value, taken, "What comes out and what is lost."))
}

pub(super) fn peak_shaft_w(boat: &Boat, at: At) -> Option<Made> {
    let mut made = shaft_w(boat, at)?;
    made.value = Some(boat.report.run.peak_shaft_w);
    made.note = format!(
        "The highest of the run's moments, after {}.",
        crate::report::clock(boat.view(at).seconds / 60.0)
    );
    Some(made)
}

pub(super) fn efficiency(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let value = boat.report.run.mid_efficiency_pct;
    if view.moment.given_w() <= 0.0 {
        return Some(told(Some(value), "The alternator gives nothing then."));
    }
    let (out, taken) = given_and_lost(boat, at, &view);
    Some(made(
        value,
        num(100.0) * out / taken,
        "What comes out, of what goes in.",
    ))
}
