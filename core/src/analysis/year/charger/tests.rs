use crate::analysis::year::charger::Charger;
use crate::boat::mean_draw_a;
use crate::boat::{Key, RegulatorKind, WayKind, Worksheet, demo};
use crate::schema::Value;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, charge};

/// Hours from one state of charge to another and what the shafts take
/// meanwhile \[kWh\], by the table, in small steps.
fn by_table(plant: &Plant, from: f64, to: f64) -> (f64, f64) {
    const STEP_H: f64 = 0.01;
    let charger = Charger::of(plant, 0.5 * (from + to));
    let (mut soc, mut hours, mut age_h, mut shaft_kwh) = (from, 0.0, 0.0, 0.0);
    while soc < to && hours < 100.0 {
        let given_a = charger.mean_a(age_h, STEP_H, soc);
        let bank_a = given_a - plant.load_a;
        shaft_kwh += given_a * STEP_H * charger.shaft_kwh_ah(soc);
        age_h += charger.ages_h(age_h, STEP_H, soc);
        soc += plant.bank.charge_rate(bank_a) * 3600.0 * STEP_H;
        hours += STEP_H;
    }
    (hours, shaft_kwh)
}

#[track_caller]
fn close(sheet: &Worksheet, to: f64) {
    let plant = Plant::new(&sheet.inputs, mean_draw_a(sheet));
    let run = charge(&plant, 0.3, to, 360_000.0, &Fineness::USUAL);
    let seconds = run.reaches(to).expect("reached");
    let (hours, shaft_kwh) = (seconds / 3600.0, run.shaft_kwh(seconds));
    let (by_table, by_table_kwh) = by_table(&plant, 0.3, to);
    assert!(
        (by_table - hours).abs() < 0.01 * hours,
        "{by_table} h by the table, {hours} h in full"
    );
    assert!(
        (by_table_kwh - shaft_kwh).abs() < 0.02 * shaft_kwh,
        "{by_table_kwh} kWh by the table, {shaft_kwh} kWh in full"
    );
}

/// Under an external regulator, direct to the house bank.
fn regulated() -> Worksheet {
    let mut sheet = Worksheet::default();
    sheet.inputs.reg.kind = RegulatorKind::External;
    sheet.inputs.way.kind = WayKind::Direct;
    sheet
}

fn boat(said: &[(&str, Value)]) -> Worksheet {
    let mut sheet = regulated();
    for (name, value) in said {
        let key = Key::named(name).expect("a key");
        sheet.state(key, *value).expect("in range");
    }
    sheet
}

#[test]
fn the_table_takes_as_long_as_the_run() {
    close(&Worksheet::default(), 0.8);
    close(&regulated(), 0.8);
    close(&regulated(), 0.99);
    close(&demo(), 0.8);
    // A bank that is full before anything is hot.
    let linked = ("reg_link", Value::Choice(1));
    close(
        &boat(&[("bank_capacity_ah", Value::Number(60.0)), linked]),
        0.8,
    );
    // Through a converter; lead, which takes less and less.
    close(&boat(&[("way_kind", Value::Choice(1))]), 0.8);
    close(&boat(&[("bank_chemistry", Value::Choice(1))]), 0.85);
    close(
        &boat(&[
            ("bank_chemistry", Value::Choice(3)),
            ("bank_nominal_v", Value::Choice(1)),
        ]),
        0.9,
    );
    close(
        &boat(&[
            ("reg_kind", Value::Choice(1)),
            ("alt_rated_a", Value::Number(180.0)),
        ]),
        0.8,
    );
}
