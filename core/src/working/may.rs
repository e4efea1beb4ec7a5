//! What machine, regulator and bank allow at a moment, each for itself.

use super::Made;
use super::bank::rest;
use super::boat::{At, Boat, View, given, made};
use super::curve::full_value;
use super::expr::{Expr, From, Leaf, leaf, least, most, num};
use super::held::drawn;
use crate::charge::Limit;
use crate::physics::battery::lfp_cold_rate;
use crate::worksheet::{Chemistry, SensorPlace};

/// How far the field is up, and why.
pub(super) fn allowed(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let sensed_c = view.machines[0].sensed_c;
    let (value, limit) = boat.plant.main.allowed(view.seconds, sensed_c);
    let (expr, note) = match limit {
        Limit::Temperature => {
            let band = || boat.input("reg_fold_band_k");
            let above =
                boat.input("reg_set_point_c") + band() / num(2.0) - sensed(boat, at, sensed_c);
            let share = above / band();
            let share = if value > 0.0 {
                share
            } else {
                most(num(0.0), share)
            };
            (
                share,
                "The regulator folds back across its band around the set-point (common practice).",
            )
        }
        Limit::Ramp => {
            let name = "Time since the start";
            let minutes = given("t", name, view.seconds / 60.0, "min");
            let share = minutes / boat.input("reg_ramp_min");
            (share, "The regulator lets the field up slowly.")
        }
        Limit::LowSpeed => (
            boat.input("reg_low_speed_pct"),
            "The shaft turns slower than the low-speed cap begins at.",
        ),
        _ => (num(1.0), "Nothing holds the field back."),
    };
    let mut made = made(value, expr, note);
    made.also = &["reg_kind", "reg_sensor"];
    Some(made)
}

/// What the sensor feels; settled, it is as warm as its place.
fn sensed(boat: &Boat, at: At, sensed_c: f64) -> Expr {
    let place = match boat.inputs().reg.sensor {
        SensorPlace::Case => "machine.hot.case_c",
        SensorPlace::Winding => "machine.hot.winding_c",
        SensorPlace::Rectifier => "machine.hot.rectifier_c",
    };
    leaf(Leaf {
        symbol: "T_sensor".to_string(),
        name: "What the sensor feels then".to_string(),
        value: sensed_c,
        unit: "°C",
        from: if at == At::Hot {
            From::Working(place)
        } else {
            From::Given
        },
    })
}

/// What the alternator may give at a moment \[A\].
pub(super) fn can_value(boat: &Boat, view: &View) -> f64 {
    let main = &boat.plant.main;
    let (allowed, _) = main.allowed(view.seconds, view.machines[0].sensed_c);
    (allowed * full_value(boat, view)).min(main.cap_a)
}

pub(super) fn can_a(boat: &Boat, at: At) -> Option<Made> {
    let view = boat.view(at);
    let main = &boat.plant.main;
    let (allowed, _) = main.allowed(view.seconds, view.machines[0].sensed_c);
    let full = boat.worked("I_full", at, ".full_a", full_value(boat, &view));
    let mut parts = vec![boat.worked("u", at, ".allowed", allowed) * full];
    if main.cap_a.is_finite() {
        parts.push(boat.input("reg_current_cap_a"));
    }
    let note = "What full field gives, as far as the regulator lets it.";
    Some(made(can_value(boat, &view), least(parts), note))
}

/// What would bring the bank up to the charge voltage \[A\].
pub(super) fn volt_value(boat: &Boat, charge: f64) -> f64 {
    let bank = &boat.plant.bank;
    let a = (boat.plant.held_v - bank.rest_v(charge)) / bank.resistance_ohm(charge);
    (a + boat.plant.taken_a()).max(0.0)
}

pub(super) fn volt_a(boat: &Boat, at: At) -> Option<Made> {
    let charge = boat.view(at).charge;
    let bank = &boat.plant.bank;
    let value = volt_value(boat, charge);
    let held = given(
        "V_held",
        "Voltage that is held at the bank, its temperature considered",
        boat.plant.held_v,
        "V",
    );
    let rest = rest(bank, charge);
    let ohm = boat.worked("R", at, ".bank_ohm", bank.resistance_ohm(charge));
    let amperes = (held - rest) / ohm + drawn(boat);
    let amperes = if value > 0.0 {
        amperes
    } else {
        most(num(0.0), amperes)
    };
    let mut made = made(
        value,
        amperes,
        "More would lift the bank above the voltage that is held.",
    );
    made.also = &[
        "bank_charge_v",
        "reg_fixed_v",
        "bank_compensation_mv",
        "bank_temperature_c",
    ];
    Some(made)
}

pub(super) fn limit_a(boat: &Boat, _: At) -> Option<Made> {
    let mut parts = vec![boat.input("bank_charge_limit_a")];
    if boat.inputs().bank.chemistry == Chemistry::Lfp {
        let celsius = boat.inputs().bank.temperature_c;
        let rate = given(
            "c_cold",
            "Most for each ampere-hour at this battery temperature, from the table (common practice)",
            lfp_cold_rate(celsius),
            "A/(A·h)",
        );
        parts.push(rate * boat.input("bank_capacity_ah"));
    }
    let mut made = made(
        boat.plant.bank_limit_a + boat.plant.taken_a(),
        least(parts) + drawn(boat),
        "What the bank may take, and what the house draws meanwhile.",
    );
    made.also = &["bank_temperature_c"];
    Some(made)
}

/// What the second alternator may give at the bank's voltage \[A\].
pub(super) fn second_can(boat: &Boat, view: &View) -> f64 {
    let (unit, state) = (boat.unit(1), &view.machines[1]);
    let (allowed, _) = unit.allowed(view.seconds, state.sensed_c);
    let per_v = unit
        .curve_here
        .field_per_v(unit.machine.rotor_c(state.t.body_c));
    let (full_a, _) = unit.curve_here.full_field(view.moment.flow.bank_v, per_v);
    (allowed * full_a).min(unit.cap_a)
}
