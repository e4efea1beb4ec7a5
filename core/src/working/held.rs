//! What holds the current: the least of what machine, regulator, converter
//! and bank allow.

use super::Made;
use super::boat::{At, Boat, View, given, made, named, told};
use super::curve::full_value;
use super::expr::{Expr, From, Leaf, least, most, num};
use crate::charge::Limit;
use crate::worksheet::{Chemistry, SensorPlace, WayKind};

/// What the house draws.
pub(super) fn house(boat: &Boat) -> Expr {
    boat.worked("I_house", At::Never, "run.house_load_a", boat.plant.load_a)
}

pub(super) fn house_load(boat: &Boat, _: At) -> Option<Made> {
    let value = boat.plant.load_a;
    Some(match boat.inputs().run.house_load_a {
        Some(_) => made(value, boat.input("run_house_load_a"), "As you gave it."),
        None => {
            let ah = boat.report.energy.anchor.use_ah;
            let day = boat.worked("Q_day", At::Never, "anchor.use_ah", ah);
            made(value, day / num(24.0), "The day's mean draw.")
        }
    })
}

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
    Expr::Named(Leaf {
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
fn can_value(boat: &Boat, view: &View) -> f64 {
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
fn volt_value(boat: &Boat, charge: f64) -> f64 {
    let bank = &boat.plant.bank;
    let a = (boat.plant.held_v - bank.rest_v(charge)) / bank.resistance_ohm(charge);
    (a + boat.plant.load_a).max(0.0)
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
    let rest = super::bank::rest(bank, charge);
    let ohm = boat.worked("R", at, ".bank_ohm", bank.resistance_ohm(charge));
    let amperes = (held - rest) / ohm + house(boat);
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
            crate::physics::battery::lfp_cold_rate(celsius),
            "A/(A·h)",
        );
        parts.push(rate * boat.input("bank_capacity_ah"));
    }
    let mut made = made(
        boat.plant.bank_limit_a + boat.plant.load_a,
        least(parts) + house(boat),
        "What the bank may take, and what the house draws meanwhile.",
    );
    made.also = &["bank_temperature_c"];
    Some(made)
}

/// Part of the current into house and bank that comes from the alternator, and
/// from the second one \[A\].
fn shares(boat: &Boat, view: &View) -> (f64, f64) {
    let flow = &view.moment.flow;
    let second = boat.plant.second.filter(|second| second.feeds_house);
    let second_a = second.map_or(0.0, |_| flow.second.amperes);
    (flow.bank_a + boat.plant.load_a - second_a, second_a)
}

/// From the second alternator into the house bank.
fn from_second(second_a: f64) -> Expr {
    given("I′", "From the second alternator then", second_a, "A")
}

/// Services at the start battery, where the alternator feeds them.
fn services(boat: &Boat) -> Option<Expr> {
    (boat.plant.main_services_a() > 0.0).then(|| boat.input("way_services_a"))
}

/// What the alternators that charge the house give at a moment: the least of
/// what they can and what is taken.
fn held(boat: &Boat, at: At, view: &View) -> Expr {
    let can = boat.worked("I_can", at, ".can_a", can_value(boat, view));
    let bank_limit = boat.plant.bank_limit_a + boat.plant.load_a;
    let taken = || {
        [
            boat.worked("I_bank", At::Never, "inner.bank_limit_a", bank_limit),
            boat.worked("I_volt", at, ".volt_a", volt_value(boat, view.charge)),
        ]
    };
    let (main_a, second_a) = shares(boat, view);
    let two = boat.plant.second.is_some_and(|second| second.feeds_house);
    if boat.inputs().way.kind == WayKind::Direct {
        let mut parts = vec![can];
        if two {
            let second_can = second_can(boat, view);
            let name = "What the second alternator may give then";
            parts = vec![sum_of(parts, given("I_can′", name, second_can, "A"))];
        }
        parts.extend(taken());
        return least(parts);
    }
    let out = if two {
        let name = "The converter's part then, of what flows to house and bank";
        given("I_part", name, main_a, "A")
    } else {
        let mut parts = vec![boat.input("way_converter_a")];
        parts.extend(taken());
        least(parts)
    };
    let bank_v = given("V_bank", "At the bank then", view.moment.flow.bank_v, "V");
    let start = boat.input("way_converter_efficiency_pct") * boat.input("way_start_v");
    let mut drawn = out * bank_v / start;
    if let Some(services) = services(boat) {
        drawn = drawn + services;
    }
    let given_a = least(vec![can, drawn]);
    if two {
        given_a + from_second(second_a)
    } else {
        given_a
    }
}

fn sum_of(parts: Vec<Expr>, last: Expr) -> Expr {
    super::expr::sum(parts.into_iter().chain([last]).collect())
}

/// What the second alternator may give at the bank's voltage \[A\].
fn second_can(boat: &Boat, view: &View) -> f64 {
    let (unit, state) = (boat.unit(1), &view.machines[1]);
    let (allowed, _) = unit.allowed(view.seconds, state.sensed_c);
    let per_v = unit
        .curve_here
        .field_per_v(unit.machine.rotor_c(state.t.body_c));
    let (full_a, _) = unit.curve_here.full_field(view.moment.flow.bank_v, per_v);
    (allowed * full_a).min(unit.cap_a)
}

/// The alternators' current at a moment.
fn alternator(boat: &Boat, at: At, value: f64) -> Made {
    let view = boat.view(at);
    let binds = view.moment.flow.limit.words();
    let note = format!("The least of what may flow. Held by {binds}.");
    made(value, held(boat, at, &view), &note)
}

pub(super) fn hot_a(boat: &Boat, at: At) -> Option<Made> {
    let value = boat.report.machine.hot_a;
    if !boat.hot.stable {
        return Some(told(
            Some(value),
            "Nothing settles: more heat always means more loss, so that nothing is held on and on.",
        ));
    }
    let mut made = alternator(boat, at, value);
    made.note.push_str(
        " Its losses at this current, and the heat its air carries away, are the two sides of the balance that finds it.",
    );
    made.also = &["inner.hot.losses_w", "inner.hot.carried_w"];
    Some(made)
}

pub(super) fn start_a(boat: &Boat, at: At) -> Option<Made> {
    Some(alternator(boat, at, boat.report.run.start_a))
}

pub(super) fn mid_a(boat: &Boat, at: At) -> Option<Made> {
    Some(alternator(boat, at, boat.report.run.mid_a))
}

pub(super) fn moment_a(boat: &Boat, at: At) -> Option<Made> {
    let value = boat.plant.charging_a(&boat.view(at).moment.flow);
    Some(alternator(boat, at, value))
}

/// Current into the bank: what the alternators give less what the house draws.
fn bank_current(boat: &Boat, at: At, value: f64) -> Made {
    let view = boat.view(at);
    let flow = &view.moment.flow;
    let (_, second_a) = shares(boat, &view);
    let main_a = flow.main.amperes;
    let expr = if boat.inputs().way.kind == WayKind::Direct {
        let given_a = boat.plant.charging_a(flow);
        let tail = if at == At::Minute {
            ".alternator_a"
        } else {
            "run.mid_a"
        };
        named(
            boat.worked("I", at, tail, given_a),
            "From the alternators then",
        )
    } else {
        let mut spare = given("I", "From the alternator then", main_a, "A");
        if let Some(services) = services(boat) {
            spare = most(num(0.0), spare - services);
        }
        let bank_v = given("V_bank", "At the bank then", flow.bank_v, "V");
        let start = boat.input("way_converter_efficiency_pct") * boat.input("way_start_v");
        let through = spare * start / bank_v;
        if second_a > 0.0 {
            through + from_second(second_a)
        } else {
            through
        }
    };
    made(
        value,
        expr - house(boat),
        "Less what the house draws meanwhile.",
    )
}

pub(super) fn mid_bank_a(boat: &Boat, at: At) -> Option<Made> {
    Some(bank_current(boat, at, boat.report.run.mid_bank_a))
}

pub(super) fn moment_bank_a(boat: &Boat, at: At) -> Option<Made> {
    let value = boat.view(at).moment.flow.bank_a;
    Some(bank_current(boat, at, value))
}
