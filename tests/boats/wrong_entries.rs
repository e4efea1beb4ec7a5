//! Entries that are wrong, or do not go together: the answer says so.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::answers::Weight;
use crate::boat::Boat;

#[test]
fn target_below_start() {
    Boat::new("from 90 % to 80 %")
        .set("run_from_pct", 90.0)
        .set("run_to_pct", 80.0)
        .check(|says| says.fix("target_below_start"));
}

#[test]
fn a_12_v_charge_voltage_on_24_v() {
    // 14.2 V on 8 cells is 1.77 V each: it charges nothing, and no sheet tells
    // anybody to set it.
    Boat::new("24 V lithium, charge voltage 14.2 V")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("bank_charge_v", 14.2)
        .check(|says| {
            says.danger("cannot_be_charged");
            says.cannot_charge();
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 27.6, 28.4);
        });
}

#[test]
fn a_24_v_charge_voltage_on_12_v_of_lead() {
    Boat::new("12 V AGM, charge voltage 28.8 V")
        .choose("bank_chemistry", "agm")
        .set("bank_charge_v", 28.8)
        .check(|says| {
            says.danger("lead_overvoltage");
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 14.2, 14.9);
        });
}

#[test]
fn empty_window() {
    Boat::new("window of 60 to 50 %")
        .set("bank_window_low_pct", 60.0)
        .set("bank_window_high_pct", 50.0)
        .check(|says| says.fix("empty_window"));
}

#[test]
fn faster_than_the_engine_turns() {
    Boat::new("charging at 4000 rpm of 3000")
        .set("eng_rpm", 4000.0)
        .check(|says| says.fix("faster_than_top"));
}

#[test]
fn pulleys_and_ratio_disagree() {
    // 180 / 65 = 2.77, and 2.2 is said.
    Boat::new("pulleys of 180 and 65 mm, ratio 2.2")
        .choose("belt_kind", "v13")
        .set("belt_engine_mm", 180.0)
        .set("belt_pulley_mm", 65.0)
        .check(|says| {
            says.fix("ratio_disagrees");
            says.finding_says("ratio_disagrees", &["2.77"]);
        });
}

#[test]
fn set_point_too_near_the_limit() {
    Boat::new("118 °C on a case that bears 120")
        .set("reg_set_point_c", 118.0)
        .check(|says| {
            says.fix_or_danger("set_point_high");
            says.setting_between(GroupCode::Regulator, SettingCode::SetPoint, 60.0, 112.0);
        });
}

#[test]
fn efficiency_that_cannot_be() {
    Boat::new("85 % efficient")
        .set("alt_efficiency_pct", 85.0)
        .check(|says| says.danger("efficiency_too_high"));
}

#[test]
fn compensation_on_lithium() {
    // −4 mV × 6 cells × −15 K is 0.36 V too much on a cold morning. In summer the
    // setting does the same wrong the other way; at 25 °C it is still wrong.
    for celsius in [10.0, 25.0] {
        Boat::new("lithium with temperature compensation")
            .set("bank_compensation_mv", -4.0)
            .set("bank_temperature_c", celsius)
            .check(|says| says.fix_or_danger("lithium_compensated"));
    }
}

#[test]
fn points_no_curve_goes_through() {
    Boat::new("as much at 1800 rpm as at 6000")
        .choose("alt_curve", "points")
        .set("alt_second_a", 100.0)
        .check(|says| says.danger("curve_points"));
}

#[test]
fn lock_out_of_a_12_v_system_in_a_24_v_one() {
    // 28 V running: it should lock out between 25.4 V (a full battery at rest)
    // and a little under 28.
    Boat::new("24 V engine, lock-out at 13 V")
        .choose("way_kind", "converter")
        .choose("alt_nominal_v", "24")
        .set("way_start_v", 28.0)
        .check(|says| says.setting_between(GroupCode::Converter, SettingCode::Lockout, 25.4, 27.6));
}

#[test]
fn a_built_in_regulator_that_holds_far_too_much() {
    Boat::new("15.5 V into lithium")
        .choose("reg_kind", "internal")
        .set("reg_fixed_v", 15.5)
        .check(|says| {
            says.danger("lithium_overvoltage");
            says.fix_or_danger("nothing_watches_heat");
        });
}

#[test]
fn more_than_any_alternator_puts_back() {
    // 3000 A·h a day are 125 A day and night; it holds 35 to 60.
    Boat::new("3000 A·h a day")
        .set("daily_use_ah", 3000.0)
        .check(|says| {
            says.cannot_charge();
            says.must_find_one_of(&["day_not_covered", "bank_is_emptied"]);
            says.holds(!says.codes(Weight::Danger).is_empty(), || {
                "no danger".to_string()
            });
        });
}

#[test]
fn the_house_draws_more_than_there_is() {
    Boat::new("150 A of house load while charging")
        .set("run_house_load_a", 150.0)
        .check(|says| says.danger("bank_is_emptied"));
}

#[test]
fn a_day_deeper_than_the_window() {
    // Window of 40 to 90 % of 200 A·h: 100 A·h; 200 a day. One run a day leaves
    // it near empty; two keep it. Either way the answer says what it does.
    Boat::new("200 A·h a day from a window of 100")
        .set("bank_capacity_ah", 200.0)
        .set("bank_window_low_pct", 40.0)
        .set("daily_use_ah", 200.0)
        .set("reg_current_cap_a", 80.0)
        .check(|says| {
            // 200 A·h at 35 to 60 A.
            says.hours_between(3.3, 5.8);
        });
}

#[test]
fn a_corroded_cable() {
    // 30 mΩ at 50 A are 1.5 V: the regulator sees its 14.2 V long before the bank.
    let sound = Boat::new("1.5 mΩ").answers();
    Boat::new("30 mΩ between bank and regulator")
        .set("bank_harness_mohm", 30.0)
        .check(|says| {
            says.limited_by(&["charge_voltage"]);
            let hours = [&sound.report, &says.report].map(|r| r.analyses.day.engine_hours);
            let longer = hours[1].is_none_or(|h| hours[0].is_some_and(|sound| h > 1.2 * sound));
            says.holds(longer, || format!("{hours:?} h with 1.5 and 30 mΩ"));
        });
}

#[test]
fn class_b() {
    // Class B bears 130 °C; with 105 on the case the winding is 15 to 30 K hotter.
    Boat::new("insulation class B")
        .choose("alt_class", "b")
        .check(|says| {
            says.must_find_one_of(&["near_limit", "winding_too_hot", "case_sensor_lags"]);
        });
}
