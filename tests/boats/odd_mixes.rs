//! Arrangements, rules and figures that few boats have together.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};
use ampwright_core::text::year::sentences;
use ampwright_core::units::Reader;

use crate::boat::Boat;

/// Findings that say the alternator gets too hot.
const COOKS: &[&str] = &[
    "nothing_watches_heat",
    "winding_too_hot",
    "rectifier_too_hot",
    "case_too_hot",
];

#[test]
fn one_through_a_charger_and_one_direct() {
    // 30 A by the DC-DC charger, 55 to 89 A by a watched 150 A alternator:
    // 120 A·h in 1.0 to 1.45 h, and a little more as both heat one space.
    Boat::new("60 A through 30 A, and 150 A direct")
        .choose("way_kind", "converter")
        .set("way_converter_a", 30.0)
        .set("alt_rated_a", 60.0)
        .set("alt_mass_kg", 5.0)
        .choose("two_role", "house")
        .set("alt2_rated_a", 150.0)
        .set("alt2_mass_kg", 8.0)
        .check(|says| {
            says.hours_between(0.95, 1.6);
            says.no_danger();
            let exposed = says.disconnect().alternators.iter();
            let exposed = exposed.filter(|m| m.bank_left_v().is_some()).count();
            says.holds(exposed == 1, || format!("{exposed} of 2 lose the bank"));
        });
}

#[test]
fn two_for_the_start_battery() {
    Boat::new("both alternators on the start battery, DC-DC charger behind")
        .choose("way_kind", "converter")
        .choose("two_role", "start")
        .check(|says| {
            // 40 A of DC-DC charger: 120 / 40 = 3.0 h.
            says.hours_between(2.9, 3.2);
            says.must_not_find("management_opens");
        });
}

#[test]
fn a_small_alternator_and_a_charger_of_half_its_size() {
    // 20 × 13.5 / 12.74 + 5 = 26 A of 32 A cold, with nothing that feels heat.
    Boat::new("35 A alternator, 20 A DC-DC charger")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 20.0)
        .set("alt_rated_a", 35.0)
        .set("alt_mass_kg", 4.0)
        .check(|says| {
            says.must_find("converter_large");
            let any = COOKS.iter().any(|code| says.has(code));
            says.holds(any || says.has("converter_starves"), || {
                "neither heat nor a starved charger is found".to_string()
            });
        });
}

#[test]
fn charged_at_float_voltage() {
    // 13.4 V is 3.35 V a cell: full in the end, but slowly: the last fifth rests
    // at 13.33, and 0.07 V push little through 3.5 mΩ.
    let usual = Boat::new("14.2 V").answers();
    Boat::new("charge voltage 13.4 V")
        .set("bank_charge_v", 13.4)
        .check(|says| {
            let hours = [&usual.report, &says.report].map(|r| r.analyses.day.engine_hours);
            let longer = hours[1].is_none_or(|h| hours[0].is_some_and(|usual| h > 1.1 * usual));
            says.holds(longer, || format!("{hours:?} h at 14.2 and 13.4 V"));
            says.limited_by(&["charge_voltage", "temperature"]);
        });
}

#[test]
fn just_above_freezing() {
    // 0.1 C from 0 °C up: 40 A of 400 A·h; some 90 flow.
    Boat::new("cells at 0 °C")
        .set("bank_temperature_c", 0.0)
        .set("space_outside_c", -5.0)
        .check(|says| {
            says.must_not_find("lithium_frozen");
            says.danger("management_opens");
        });
}

#[test]
fn quiet_day_and_night() {
    // No hour is left for the engine: the year runs empty and says so.
    Boat::new("quiet from 0 to 24 h")
        .set("rule_quiet_from_h", 0.0)
        .set("rule_quiet_to_h", 24.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.year_hours_between(0.0, 0.5);
            let said = sentences(says.year(), &Reader::METRIC).join(" ");
            says.holds(said.contains("empty") || said.contains("short"), || {
                said.clone()
            });
        });
}

#[test]
fn a_rule_upside_down() {
    Boat::new("start at 90 %, stop at 80 %")
        .set("rule_start_pct", 90.0)
        .set("rule_stop_pct", 80.0)
        .check(|says| {
            says.hours_between(2.0, 3.4);
        });
}

#[test]
fn agm_through_a_charger() {
    // 60 A·h a day at 93 % kept: 64.5 / 30 A = 2.15 h, and the tail above 85 %.
    Boat::new("300 A·h AGM through 30 A")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .choose("bank_chemistry", "agm")
        .set("way_converter_a", 30.0)
        .set("bank_capacity_ah", 300.0)
        .set("daily_use_ah", 60.0)
        .set("run_from_pct", 65.0)
        .check(|says| {
            says.hours_between(2.0, 3.1);
            says.must_not_find("lead_over_current");
            says.no_danger();
            says.survives();
        });
}

#[test]
fn flooded_at_24_v_with_a_12_v_alternator() {
    Boat::new("12 V alternator on 24 V of lead")
        .choose("bank_chemistry", "flooded")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "12")
        .check(|says| {
            says.danger("alternator_voltage_mismatch");
            says.cannot_charge();
        });
}

#[test]
fn the_house_keeps_the_start_battery() {
    // 5 A at 14 V through 91 % are 5.8 A out of the house bank while the engine
    // runs: 120 A·h at 29 to 54 A.
    Boat::new("start battery fed from the house")
        .choose("way_start_kept", "house")
        .check(|says| {
            says.hours_between(2.1, 4.2);
            says.no_danger();
            says.setting_between(GroupCode::Converter, SettingCode::StartVoltage, 13.6, 14.8);
        });
}

#[test]
fn a_48_v_house_keeps_a_12_v_start_battery() {
    Boat::new("48 V direct, 12 V start battery fed back")
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "48")
        .choose("way_start_kept", "house")
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 40.0)
        .set("alt_rated_a", 60.0)
        .set("alt_mass_kg", 9.0)
        .set("eng_displacement_l", 2.5)
        .check(|says| {
            // 60 A rated: 53 to 56 cold. 3.4 kW is a large alternator: 50 to 75 % hot,
            // 26 to 42 A: 40 A·h in 0.95 to 1.6 h.
            says.hours_between(0.9, 1.7);
            says.must_not_find("alternator_voltage_mismatch");
            says.setting_between(GroupCode::StartBattery, SettingCode::Most, 14.0, 14.9);
            says.setting_between(GroupCode::Converter, SettingCode::StartVoltage, 13.6, 14.8);
            // Banks of 48 V and 12 V are never joined.
            says.setting_says(
                GroupCode::StartBattery,
                SettingCode::Parallel,
                &["never", "none"],
            );
        });
}

#[test]
fn ten_ampere_hours() {
    // 0.8 Ω·A·h / 10 A·h are 80 mΩ: from 13.1 V at rest to 14.2 flow some 13 A,
    // and 5 are allowed.
    Boat::new("10 A·h and 100 A")
        .set("bank_capacity_ah", 10.0)
        .set("daily_use_ah", 5.0)
        .check(|says| {
            says.danger("management_opens");
            says.dump_amps_between(11.0, 17.0);
        });
}

#[test]
fn worn_cells() {
    // 4 Ω·A·h / 400 A·h = 10 mΩ and 1.5 of leads: 44 A lift 13.3 V to 13.8,
    // 70 A to 14.1: the voltage is met early, and nothing is in danger of it.
    Boat::new("worn cells of 4 Ω·A·h")
        .set("bank_resistance_ohm_ah", 4.0)
        .check(|says| {
            says.hours_between(2.0, 4.0);
            says.no_danger();
        });
}

#[test]
fn lead_to_the_brim_by_engine() {
    // The last tenth takes a lead bank hours; to 100 % no engine run gets.
    Boat::new("flooded to 100 % by engine")
        .choose("bank_chemistry", "flooded")
        .set("run_to_pct", 100.0)
        .set("bank_window_high_pct", 100.0)
        .set("daily_use_ah", 60.0)
        .check(|says| {
            let hours = says.report.analyses.day.engine_hours;
            says.holds(hours.is_none_or(|h| h > 5.0), || {
                format!("{hours:?} h to 100 %")
            });
            says.must_find_one_of(&["target_not_reached", "day_not_covered", "cannot_be_charged"]);
        });
}

#[test]
fn the_engine_breathes_from_outside() {
    Boat::new("intake air from outside")
        .choose("eng_breathing", "outside")
        .check(|says| {
            says.hours_between(2.0, 3.6);
            says.space_between(38.0, 75.0);
            says.no_danger();
        });
}

#[test]
fn a_low_speed_cap() {
    // Held to half field below 2500 rpm of the shaft; it turns 1760 at idle.
    let free = Boat::new("idle").set("eng_rpm", 800.0).answers();
    Boat::new("idle with a low-speed cap of 50 %")
        .set("eng_rpm", 800.0)
        .set("reg_low_speed_rpm", 2500.0)
        .set("reg_low_speed_pct", 50.0)
        .check(|says| {
            let (held_a, free_a) = (
                says.report.analyses.output.hot_a,
                free.report.analyses.output.hot_a,
            );
            says.holds(held_a <= free_a + 0.1, || {
                format!("{held_a:.1} and {free_a:.1} A")
            });
            says.no_danger();
        });
}

#[test]
fn class_n_and_a_hot_set_point() {
    // 200 °C of insulation helps neither diodes nor bearings.
    Boat::new("class N, set to 130 °C on the case")
        .choose("alt_class", "n")
        .set("reg_set_point_c", 130.0)
        .check(|says| {
            says.fix_or_danger("set_point_high");
            says.must_find_one_of(&["case_too_hot", "near_limit"]);
            says.must_not_find("winding_too_hot");
        });
}
