//! What holds the current: the least of what machine, regulator, converter
//! and bank allow.

use super::Made;
use super::boat::{At, Boat, View, given, made, named, told};
use super::expr::{Expr, least, most, num, sum};
use super::may::{can_value, second_can, volt_value};
use crate::worksheet::WayKind;

/// What the house draws.
pub(super) fn house(boat: &Boat) -> Expr {
    boat.worked("I_house", At::Never, "run.house_load_a", boat.plant.load_a)
}

/// What house and, through a converter turned round, start battery draw.
pub(super) fn drawn(boat: &Boat) -> Expr {
    if boat.plant.back_a <= 0.0 {
        return house(boat);
    }
    let services = boat.input("way_services_a") * boat.input("way_start_v");
    let through = boat.input("way_converter_efficiency_pct") * super::day::bank_v(boat);
    house(boat) + services / through
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

/// Part of the current into house and bank that comes from the alternator, and
/// from the second one \[A\].
fn shares(boat: &Boat, view: &View) -> (f64, f64) {
    let flow = &view.moment.flow;
    let second = boat.plant.second.filter(|second| second.feeds_house);
    let second_a = second.map_or(0.0, |_| flow.second.amperes);
    (flow.bank_a + boat.plant.taken_a() - second_a, second_a)
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
    let bank_limit = boat.plant.bank_limit_a + boat.plant.taken_a();
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
            parts.push(given("I_can′", name, second_can, "A"));
            parts = vec![sum(parts)];
        }
        parts.extend(taken());
        return least(parts);
    }
    let out = if two {
        let name = "The converter's part then, of what flows to house and bank";
        given("I_part", name, main_a, "A")
    } else {
        let mut parts = vec![if boat.plant.converter_works() {
            boat.input("way_converter_a")
        } else {
            given("I_conv", "From the converter, locked out", 0.0, "A")
        }];
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

/// The alternators' current at a moment.
fn alternator(boat: &Boat, at: At, value: f64) -> Made {
    let view = boat.view(at);
    let binds = view.moment.flow.limit.words();
    let note = format!("The least of what may flow. Held by {binds}.");
    made(value, held(boat, at, &view), &note)
}

/// What there is to say where nothing settles.
pub(super) fn never_settles(boat: &Boat, id: &str) -> Option<Made> {
    let value = (id == "machine.hot_a").then_some(boat.report.machine.hot_a);
    Some(told(
        value,
        "Nothing settles: more heat always means more loss, so that nothing is held on and on.",
    ))
}

pub(super) fn hot_a(boat: &Boat, at: At) -> Option<Made> {
    let value = boat.report.machine.hot_a;
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
        expr - drawn(boat),
        "Less what the house draws meanwhile, and the start battery where the house bank keeps it.",
    )
}

pub(super) fn mid_bank_a(boat: &Boat, at: At) -> Option<Made> {
    Some(bank_current(boat, at, boat.report.run.mid_bank_a))
}

pub(super) fn moment_bank_a(boat: &Boat, at: At) -> Option<Made> {
    let value = boat.view(at).moment.flow.bank_a;
    Some(bank_current(boat, at, value))
}
