//! A day that closes, by hand: lead banks on a DC-DC charger of steady output,
//! sun through the bank, and a shore charger that tapers.

use ampwright_core::analysis::energy::hours::{DayHours, SolarStorage};
use ampwright_core::boat::Key;
use ampwright_core::schema::Value;
use ampwright_core::simulation::mains_charger::MainsCharger;
use ampwright_core::{Report, Worksheet, report};

use crate::near;

fn boat(said: &[(&str, f64)], chosen: &[(&str, &str)]) -> Worksheet {
    let mut sheet = Worksheet::default();
    let key = |name: &str| Key::named(name).expect("a key");
    for (name, number) in said {
        sheet
            .state(key(name), Value::Number(*number))
            .expect("in range");
    }
    for (name, option) in chosen {
        let value = key(name).spec().read(option).expect("an option");
        sheet.state(key(name), value).expect("in range");
    }
    sheet
}

/// 400 A·h of flooded lead with no cable, 120 A·h a day (5 A all the time), a
/// DC-DC charger that gives 20 A: 15 A into the bank, of which 87 % is kept,
/// 13.05 A. It takes less once 400·(1 − s)/2 h is below 15 A, from 92.5 % on.
fn flooded(to_pct: f64, more: &[(&str, f64)]) -> Report {
    let mut said = vec![
        ("bank_capacity_ah", 400.0),
        ("bank_harness_mohm", 0.0),
        ("daily_use_ah", 120.0),
        ("way_converter_a", 20.0),
        ("run_to_pct", to_pct),
    ];
    said.extend(more);
    let chosen = [("bank_chemistry", "flooded"), ("way_kind", "converter")];
    report(&boat(&said, &chosen))
}

fn hours(report: &Report) -> f64 {
    report.analyses.day.engine_hours.expect("a daily run")
}

/// While the engine runs h hours it carries 5·h of the 120 A·h; the bank gains
/// 13.05·h: h = 120/(13.05 + 5) = 6.6482 h. The bank falls by 120 − 33.241 =
/// 86.759 A·h, 21.690 % of 400, from 80 % to 58.310 %.
#[test]
fn a_lead_bank_short_of_its_taper() {
    let report = flooded(80.0, &[]);
    near("engine", hours(&report), 6.6482, 1e-3);
    near(
        "begins at",
        report.analyses.day.from_pct.expect("a run"),
        58.310,
        1e-2,
    );
}

/// To 95 %. From 92.5 to 95 % the bank keeps 0.87·(1 − s)/2 of its capacity an
/// hour: 2/0.87·ln(0.075/0.05) = 0.93211 h for 10 A·h. Before that 13.05 A fill
/// what the day took less those 10: h = (110 − 5·h)/13.05 + 0.93211, so h =
/// (110/13.05 + 0.93211)/(1 + 5/13.05) = 6.7681 h. It begins at 95 % − (120 −
/// 33.841)/400 = 73.460 %.
#[test]
fn a_lead_bank_into_its_taper() {
    let report = flooded(95.0, &[]);
    near("engine", hours(&report), 6.7681, 2e-3);
    near(
        "begins at",
        report.analyses.day.from_pct.expect("a run"),
        73.460,
        2e-2,
    );
}

/// To 99.9 %, all of it in the taper: the run begins at 1 − m and takes
/// 2/0.87·ln(m/0.001) where 400·(m − 0.001) = 120 − 5·h. At m = 0.075 it would
/// take 9.925 h and the bank have fallen by 70.375 A·h, 0.176 of its capacity:
/// more than the taper alone. So 13.05 A fill up to 92.5 % first: h = (120 −
/// 5·h − 29.6)/13.05 + 9.9255, h = (90.4/13.05 + 9.9255)/(1 + 5/13.05) =
/// 12.1845 h.
#[test]
fn a_lead_bank_all_but_full() {
    let report = flooded(99.9, &[]);
    near("engine", hours(&report), 12.1845, 1e-2);
}

/// A bank of 100 A·h to 80 %, 15 A into it as long as 50·(1 − s) is more, up to
/// 70 %; then 2/0.87·ln(0.3/0.2) = 0.93211 h for 10 A·h. One run a day would
/// begin at 80 % − (120 − 5·h)/100 with h = (110/13.05 + 0.93211)/(1 + 5/13.05)
/// = 6.7681 h: −6.2 %, less than nothing. Two runs of 60 A·h each: h = (50/13.05 +
/// 0.93211)/1.38314 = 3.4440 h each from 80 − (60 − 17.22) = 37.2 %, below the
/// 50 % wanted; three of 40 A·h: h = (30/13.05 + 0.93211)/1.38314 = 2.3360 h
/// each from 80 − (40 − 11.68) = 51.68 %.
#[test]
fn a_small_lead_bank_gets_three_runs() {
    let report = flooded(80.0, &[("bank_capacity_ah", 100.0)]);
    assert_eq!(report.analyses.day.runs, 3);
    near(
        "each",
        report.analyses.day.run_hours.expect("a run"),
        2.3360,
        2e-3,
    );
    near("in all", hours(&report), 7.0080, 6e-3);
    near(
        "begins at",
        report.analyses.day.from_pct.expect("a run"),
        51.68,
        2e-2,
    );
}

/// 5 A·h each hour, 10 A·h of sun in each of six: 30 A·h serve the loads at
/// once, 30 go into lead that keeps 87 % of them, 26.1. Of 120 A·h, 63.9 are
/// left. A bank with a window of 20 A·h keeps 20, one that takes 2 A keeps
/// 0.87·12 = 10.44.
#[test]
fn sun_through_lead() {
    let day = DayHours {
        use_ah: [5.0; 24],
        sun_ah: std::array::from_fn(|hour| if (9..15).contains(&hour) { 10.0 } else { 0.0 }),
        other_ah: [0.0; 24],
    };
    let mut bank = SolarStorage {
        charge_efficiency: 0.87,
        limit_a: 100.0,
        room_ah: 200.0,
    };
    near("direct", day.split(&bank).direct_ah(), 30.0, 1e-9);
    near("stored", day.split(&bank).stored_ah(), 26.1, 1e-9);
    near("left", day.rest_ah(&bank), 63.9, 1e-9);
    bank.room_ah = 20.0;
    near("a small window", day.rest_ah(&bank), 70.0, 1e-9);
    bank.limit_a = 2.0;
    near("a low limit", day.rest_ah(&bank), 79.56, 1e-9);
}

/// 30 A on the dock, 5 A of them for the boat: 25 A into 400 A·h of flooded
/// lead, 21.75 kept, until 200·(1 − s) falls to 25 A at 87.5 %; then
/// 2/0.87·ln(0.125/(1 − s)). From 50 to 90 %: 150/21.75 + 0.51297 = 7.4095 h;
/// to 98 %: 150/21.75 + 4.2128 = 11.1093 h.
#[test]
fn a_shore_charger_tapers() {
    let said = [
        ("bank_capacity_ah", 400.0),
        ("bank_harness_mohm", 0.0),
        ("shore_charger_a", 30.0),
        ("bank_charge_limit_a", 200.0),
    ];
    let sheet = boat(&said, &[("bank_chemistry", "flooded")]);
    let charger = MainsCharger::on_shore(&sheet.inputs);
    let fill_h = |to: f64| charger.fill(0.5, to, 5.0).expect("it fills").hours;
    near("to 90 %", fill_h(0.9), 7.4095, 1e-3);
    near("to 98 %", fill_h(0.98), 11.1093, 2e-3);
    // In the report: 120 A·h a day are 5 A, the window 50 to 90 %.
    let fill_h = report(&sheet).analyses.shore.fill_h.expect("it fills");
    near("the report", fill_h, 7.4095, 1e-3);
}
