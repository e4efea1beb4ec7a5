//! A temperature sensor that reads too low, and one that fails.
//!
//! Common practice, no source: a sensor under a loose screw or on paint reads 10 to
//! 30 K too low, and the regulator holds the alternator that much hotter. Without a
//! sensor a regulator at full field is as good as none: a small-case alternator on
//! lithium then cooks.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

/// 100 A on a large lithium bank on a hot day: it holds the temperature for hours.
fn hot(name: &'static str) -> Boat {
    Boat::new(name)
        .set("bank_capacity_ah", 800.0)
        .set("space_outside_c", 38.0)
}

#[test]
fn thirty_kelvin_too_low() {
    // Set to 105 °C; its place comes to 135 before the regulator holds it.
    hot("sensor on paint, 30 K too low")
        .set("reg_sensor_low_k", 30.0)
        .check(|says| {
            says.fix("sensor_reads_low");
            says.finding_says(
                "sensor_reads_low",
                &["30 K", "135 °C", "105 °C", "bare metal"],
            );
        });
}

#[test]
fn a_low_reading_lets_more_through() {
    let hot_a = |low_k: f64| {
        let answers = hot("what the sensor hides")
            .set("reg_sensor_low_k", low_k)
            .answers();
        answers.report.analyses.output.hot_a
    };
    let (right_a, low_a) = (hot_a(0.0), hot_a(20.0));
    // 20 K of some 65 to 75 above the air: a tenth to a third more.
    assert!(
        low_a > 1.05 * right_a && low_a < 1.4 * right_a,
        "{right_a} {low_a}"
    );
}

#[test]
fn two_kelvin_are_what_a_good_sensor_does() {
    hot("sensor 2 K too low")
        .set("reg_sensor_low_k", 2.0)
        .check(|says| says.must_not_find("sensor_reads_low"));
}

#[test]
fn full_field_without_a_sensor() {
    hot("sensor off, full field")
        .choose("reg_sensor_failure", "full")
        .check(|says| {
            says.fix("sensor_fails_hot");
            says.finding_says("sensor_fails_hot", &["full field", "stop charging"]);
            says.setting_says(
                GroupCode::Regulator,
                SettingCode::SensorLoss,
                &["stop charging"],
            );
            // It is what may happen, not what this run does.
            says.survives();
        });
}

#[test]
fn a_regulator_that_stops_is_safe() {
    hot("sensor off, stops")
        .choose("reg_sensor_failure", "stops")
        .check(|says| {
            says.must_not_find("sensor_fails_hot");
            let lost = says.report.analyses.sensor_loss.as_ref();
            says.holds(lost.is_some_and(|lost| lost.alternators.is_empty()), || {
                "it stops and still something runs".to_string()
            });
        });
}

#[test]
fn half_field_in_a_cool_space() {
    // Half the field gives well under half the heat: a large case in cool air holds
    // that for ever.
    Boat::new("large case, cool air, half field")
        .set("alt_mass_kg", 9.5)
        .set("bank_capacity_ah", 400.0)
        .set("space_outside_c", 18.0)
        .set("space_blower_m3h", 200.0)
        .choose("reg_sensor_failure", "half")
        .check(|says| says.must_not_find("sensor_fails_hot"));
}

#[test]
fn half_is_cooler_than_full() {
    let peak_c = |does: &str| {
        let answers = hot("without its sensor")
            .choose("reg_sensor_failure", does)
            .answers();
        let lost = answers
            .report
            .analyses
            .sensor_loss
            .expect("a regulator with a sensor");
        lost.alternators[0].peak.winding_c
    };
    assert!(peak_c("half") + 30.0 < peak_c("full"));
    // What nobody knows is taken at its worst.
    assert_eq!(peak_c("full"), peak_c("unsaid"));
}

#[test]
fn a_small_charger_protects_without_a_sensor() {
    // 20 A out at some 90 % are 22 A in, and 5 for the engine: a quarter of its
    // rating.
    hot("20 A DC-DC charger, sensor off")
        .choose("way_kind", "converter")
        .set("way_converter_a", 20.0)
        .choose("reg_sensor_failure", "full")
        .check(|says| says.must_not_find("sensor_fails_hot"));
}

#[test]
fn a_built_in_regulator_has_none_to_lose() {
    hot("built-in regulator")
        .choose("reg_kind", "internal")
        .choose("reg_sensor_failure", "full")
        .set("reg_sensor_low_k", 30.0)
        .check(|says| {
            says.must_not_find("sensor_fails_hot");
            says.must_not_find("sensor_reads_low");
            says.holds(says.report.analyses.sensor_loss.is_none(), || {
                "a built-in regulator loses a sensor".to_string()
            });
        });
}

#[test]
fn of_two_each_loses_its_own() {
    hot("two at 48 V, sensors off")
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "48")
        .choose("alt2_nominal_v", "48")
        .choose("two_role", "house")
        .choose("reg_sensor_failure", "full")
        .check(|says| {
            let told = says.weights("sensor_fails_hot").len();
            says.holds(told == 2, || format!("{told} of two are told"));
            says.finding_says("sensor_fails_hot", &["second alternator's"]);
        });
}
