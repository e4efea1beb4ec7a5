//! Frost and tropics.
//!
//! What lithium takes by its cells' temperature (a published table of fast
//! continuous charge): none below 0 °C, 0.1 C to 5, 0.2 C to 10, the bank's own
//! limit to 50, 0.1 C to 60, none above.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::answers::Weight;
use crate::boat::Boat;

#[test]
fn frozen_lithium() {
    Boat::new("cells at −5 °C")
        .set("bank_temperature_c", -5.0)
        .set("space_outside_c", -10.0)
        .check(|says| {
            let any = ["lithium_frozen", "management_opens"];
            says.must_find_one_of(&any);
            says.holds(!says.codes(Weight::Danger).is_empty(), || {
                "no danger".to_string()
            });
            says.cannot_charge();
            says.verdict_contains(&["cannot", "can not", "must not"]);
            says.verdict_lacks("more than a day");
            // The sheet is for a season: no permanent current of nothing.
            says.setting_between(
                GroupCode::Management,
                SettingCode::ChargeCurrent,
                1.0,
                201.0,
            );
        });
}

#[test]
fn lithium_at_3_degrees_uncapped() {
    // 0.1 C of 400 A·h is 40 A; some 90 flow.
    Boat::new("cells at 3 °C, no cap, no link")
        .set("bank_temperature_c", 3.0)
        .set("space_outside_c", -10.0)
        .check(|says| {
            says.danger("management_opens");
        });
}

#[test]
fn lithium_at_3_degrees_capped() {
    // 40 A into the bank at most: 120 / 40 = 3.0 h, heat permitting.
    Boat::new("cells at 3 °C, capped at 40 A")
        .set("bank_temperature_c", 3.0)
        .set("space_outside_c", -10.0)
        .set("reg_current_cap_a", 40.0)
        .check(|says| {
            says.must_not_find("management_opens");
            says.no_danger();
            says.hours_between(2.9, 3.15);
        });
}

#[test]
fn lithium_at_8_degrees_with_a_large_bank() {
    // 0.2 C of 600 A·h is 120 A, more than the alternator's 93.
    Boat::new("600 A·h at 8 °C")
        .set("bank_temperature_c", 8.0)
        .set("space_outside_c", -10.0)
        .set("bank_capacity_ah", 600.0)
        .check(|says| {
            says.must_not_find("management_opens");
            says.no_danger();
        });
}

#[test]
fn lithium_at_8_degrees_with_a_small_bank() {
    // 0.2 C of 200 A·h is 40 A; some 90 flow.
    Boat::new("200 A·h at 8 °C")
        .set("bank_temperature_c", 8.0)
        .set("space_outside_c", -10.0)
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 80.0)
        .check(|says| says.danger("management_opens"));
}

#[test]
fn a_cold_space_lets_it_hold_more() {
    // Winter outside, the bank in a heated cabin: the colder the air it breathes,
    // the more it holds.
    let at = |name, celsius: f64| Boat::new(name).set("space_outside_c", celsius);
    let warm = at("28 °C", 28.0).answers();
    at("−10 °C outside", -10.0)
        .set("bank_temperature_c", 18.0)
        .check(|says| {
            let (cold_a, warm_a) = (
                says.report.analyses.output.hot_a,
                warm.report.analyses.output.hot_a,
            );
            says.holds(cold_a > 1.1 * warm_a, || {
                format!("{cold_a:.1} A at −10 °C, {warm_a:.1} A at 28 °C")
            });
            says.no_danger();
            says.survives();
        });
}

#[test]
fn tropics() {
    // 40 °C outside: engine space 55 to 85 °C with a running diesel in it.
    Boat::new("40 °C outside")
        .set("space_outside_c", 40.0)
        .set("bank_temperature_c", 38.0)
        .check(|says| {
            says.space_between(52.0, 88.0);
            says.hot_share_between(33.0, 62.0);
            says.no_danger();
            says.survives();
        });
}

#[test]
fn measured_75_degrees() {
    Boat::new("75 °C near the alternator")
        .choose("space_basis", "measured")
        .set("space_hot_c", 75.0)
        .set("space_outside_c", 40.0)
        .set("bank_temperature_c", 38.0)
        .check(|says| {
            says.hot_share_between(25.0, 55.0);
            says.limited_by(&["temperature"]);
            says.space_between(74.0, 76.0);
            says.no_danger();
            says.survives();
        });
}

#[test]
fn measured_75_degrees_and_nothing_watches() {
    // Class F bears 155 °C; at full field in 75 °C air a usual machine passes it.
    Boat::new("75 °C near the alternator, built-in regulator")
        .choose("space_basis", "measured")
        .set("space_hot_c", 75.0)
        .set("space_outside_c", 40.0)
        .set("bank_temperature_c", 38.0)
        .choose("reg_kind", "internal")
        .check(|says| {
            says.fix_or_danger("nothing_watches_heat");
            says.danger("winding_too_hot");
            says.overheats();
        });
}

#[test]
fn hot_lithium() {
    // 0.1 C between 50 and 60 °C: 40 A of 400 A·h; some 90 flow.
    Boat::new("cells at 55 °C")
        .set("bank_temperature_c", 55.0)
        .set("space_outside_c", 42.0)
        .check(|says| {
            says.danger("management_opens");
            says.finding_says("management_opens", &["40 A", "55 °C"]);
        });
}

#[test]
fn lithium_too_hot_to_charge() {
    Boat::new("cells at 63 °C")
        .set("bank_temperature_c", 63.0)
        .set("space_outside_c", 45.0)
        .check(|says| {
            let danger = |code| says.weights(code).contains(&Weight::Danger);
            says.holds(danger("lithium_hot") || danger("management_opens"), || {
                "no danger of heat".to_string()
            });
            says.cannot_charge();
        });
}

#[test]
fn gel_and_a_stock_alternator_in_the_tropics() {
    // 14.2 V on gel at 45 °C is 0.48 V too much, some 90 A are 0.45 C where gel
    // takes 0.2 to 0.25, and 63 °C of air cook what nothing watches.
    Boat::new("gel at 45 °C, stock alternator")
        .choose("bank_chemistry", "gel")
        .choose("reg_kind", "internal")
        .set("bank_temperature_c", 45.0)
        .set("space_outside_c", 40.0)
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .set("run_from_pct", 60.0)
        .check(|says| {
            says.must_find_one_of(&["lead_overvoltage", "lead_over_current"]);
            says.must_not_find("lead_frozen");
        });
}

#[test]
fn a_blower_that_runs_on_for_a_while() {
    // The block goes on heating its space: cut off early, the air comes up again;
    // longer is cooler, and without it the air is hottest.
    let air_c = |after: &str, minutes: f64| {
        let answers = Boat::new("blower after stopping")
            .set("space_blower_m3h", 200.0)
            .choose("space_blower_after", after)
            .set("space_blower_run_on_min", minutes)
            .answers();
        answers.report.analyses.run.soak.air_peak_c
    };
    let (off_c, on_c) = (air_c("off", 20.0), air_c("on", 20.0));
    let (short_c, long_c) = (air_c("timed", 5.0), air_c("timed", 30.0));
    assert!(on_c <= long_c && long_c < short_c && short_c <= off_c + 0.1);
    // An hour and more is as good as leaving it on.
    assert!((air_c("timed", 120.0) - on_c).abs() < 1e-9);
}
