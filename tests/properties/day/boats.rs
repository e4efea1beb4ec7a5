//! Boats for the tests of the day, and what a day asks of the engine.

use ampwright_core::Worksheet;
use ampwright_core::analysis::energy::energy;
use ampwright_core::analysis::engine_day::{DailyRun, DailyRuns, DayNeed, daily_run};
use ampwright_core::boat::{Aboard, Basis, Key, house_load_a};
use ampwright_core::report::Report;
use ampwright_core::schema::Value;
use ampwright_core::simulation::plant::Plant;
use proptest::prelude::*;

use crate::draw::{Drawn, normal_boat};
use crate::regulated::regulated;

/// A worksheet with some inputs set: numbers, or options by name.
pub fn boat(said: &[(&str, &str)]) -> Worksheet {
    let mut sheet = regulated();
    for (name, text) in said {
        set(&mut sheet, name, text);
    }
    sheet
}

pub fn set(sheet: &mut Worksheet, name: &str, text: &str) {
    let key = Key::named(name).expect("a key");
    let value = key.spec().read(text).expect("can be read");
    sheet.state(key, value).expect("within its range");
}

pub fn put(sheet: &mut Worksheet, name: &str, number: f64) {
    let key = Key::named(name).expect("a key");
    sheet
        .state(key, Value::Number(number))
        .expect("within its range");
}

pub fn plant_and_need(sheet: &Worksheet) -> (Plant, DayNeed) {
    let plant = Plant::new(&sheet.inputs, house_load_a(sheet));
    (plant, DayNeed::of(&sheet.inputs, &energy(sheet)))
}

pub fn runs(sheet: &Worksheet) -> Option<DailyRuns> {
    let (plant, need) = plant_and_need(sheet);
    match daily_run(&plant, &need) {
        DailyRun::Runs(runs) => Some(runs),
        _ => None,
    }
}

pub fn finding(report: &Report, key: &str) -> Option<String> {
    let found = report
        .findings
        .iter()
        .find(|finding| finding.code() == crate::code(key));
    found.map(crate::said)
}

/// A boat of one steady regulator, its bank and use drawn wide.
pub fn drawn_day() -> impl Strategy<Value = Drawn> {
    let bank = (40.0..900.0f64, 0..4usize, 60.0..98.0f64);
    let day = (30.0..350.0f64, 0.0..500.0f64, any::<bool>());
    (normal_boat(), bank, day).prop_map(
        |(drawn, (capacity_ah, chemistry, to_pct), (use_ah, panel_w, linked))| {
            let mut sheet = drawn.0;
            sheet.inputs.daily.basis = Basis::Figure;
            sheet.inputs.reg.sensor_lag_s = 0.0;
            // Every month is like the day.
            sheet.inputs.rule.aboard = Aboard::Stretch;
            put(&mut sheet, "bank_capacity_ah", capacity_ah);
            put(&mut sheet, "run_to_pct", to_pct);
            put(&mut sheet, "daily_use_ah", use_ah);
            put(&mut sheet, "sun_panel_w", panel_w);
            let chemistry = ["lfp", "agm", "gel", "flooded"][chemistry];
            set(&mut sheet, "bank_chemistry", chemistry);
            if linked {
                set(&mut sheet, "reg_kind", "external");
                set(&mut sheet, "reg_link", "limits");
            }
            Drawn(sheet)
        },
    )
}
