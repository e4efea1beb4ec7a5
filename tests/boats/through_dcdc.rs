//! Through a DC-DC charger: alternator to start battery to house bank.
//!
//! The sum behind the bands: what a charger of I amperes takes from the start
//! battery is I × V_house / (efficiency × V_start), engine services on top.
//! 40 A at 13.5 V through 91 %: 40 × 13.5 / (0.91 × 14) = 42.4 A, and 5 A.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

fn stock(name: &'static str) -> Boat {
    Boat::new(name)
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
}

#[test]
fn stock_alternator_and_40_a() {
    // 120 A·h / 40 A = 3.0 h. The alternator gives 47 to 48 A of some 90.
    stock("stock 100 A alternator, 40 A DC-DC charger").check(|says| {
        says.hours_between(2.95, 3.1);
        says.hot_amps_between(46.0, 49.5);
        says.limited_by(&["converter", "dcdc_charger", "dc_dc_charger"]);
        says.must_not_find("management_opens");
        says.must_not_find("disconnect_unguarded");
        says.no_danger();
        says.survives();
    });
}

#[test]
fn sixty_ampere_alternator_and_30_a() {
    // 30 × 13.5 / (0.91 × 14) + 5 = 36.8 A of a 60 A alternator, some 53 A cold:
    // 69 % of it for hours, with nothing that feels heat. 120 / 30 = 4.0 h.
    stock("60 A alternator, 30 A DC-DC charger")
        .set("alt_rated_a", 60.0)
        .set("alt_mass_kg", 5.0)
        .set("way_converter_a", 30.0)
        .check(|says| {
            says.hours_between(3.9, 4.5);
            says.cold_amps_between(52.0, 56.0);
        });
}

#[test]
fn charger_as_large_as_the_alternator() {
    // 100 × 13.5 / 12.74 + 5 = 111 A wanted of some 90 there are: the start
    // battery pays, the charger goes on and off, the alternator works flat out.
    stock("100 A alternator, 100 A DC-DC charger")
        .set("way_converter_a", 100.0)
        .check(|says| {
            says.fix_or_danger("converter_starves");
            says.must_find_one_of(&[
                "nothing_watches_heat",
                "winding_too_hot",
                "rectifier_too_hot",
                "case_too_hot",
            ]);
        });
}

#[test]
fn locked_out() {
    // 12.8 V with the engine running, locked out below 13.0.
    stock("DC-DC charger locked out")
        .set("way_start_v", 12.8)
        .check(|says| {
            says.danger("converter_locked_out");
            says.cannot_charge();
        });
}

#[test]
fn a_charger_too_small_for_the_day() {
    // 260 A·h a day are 10.8 A day and night: 10 A never catch up.
    stock("10 A DC-DC charger for 260 A·h a day")
        .set("way_converter_a", 10.0)
        .set("daily_use_ah", 260.0)
        .check(|says| {
            says.cannot_charge();
            says.must_find_one_of(&["day_not_covered", "bank_is_emptied"]);
        });
}

#[test]
fn charger_beyond_what_the_bank_takes() {
    // 60 A into 100 A·h that bears 50, the house drawing 1.7 A meanwhile.
    stock("60 A DC-DC charger on a bank that bears 50 A")
        .set("way_converter_a", 60.0)
        .set("alt_rated_a", 150.0)
        .set("bank_capacity_ah", 100.0)
        .set("bank_charge_limit_a", 50.0)
        .set("daily_use_ah", 40.0)
        .check(|says| {
            says.must_find_one_of(&["management_opens", "bank_limit_binds"]);
            says.setting_between(GroupCode::Converter, SettingCode::Current, 45.0, 52.0);
        });
}

#[test]
fn from_12_v_to_24_v() {
    // 20 A at 27 V: 20 × 27 / (0.91 × 14) + 5 = 47.4 A of the 12 V alternator.
    // 60 A·h a day / 20 A = 3.0 h.
    stock("12 V engine, 24 V house, 20 A DC-DC charger")
        .choose("bank_nominal_v", "24")
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .set("way_converter_a", 20.0)
        .check(|says| {
            says.hours_between(2.95, 3.1);
            says.hot_amps_between(45.0, 50.0);
            says.must_not_find("alternator_voltage_mismatch");
            says.must_not_find("alternator_voltage_assumed");
            // 2 × 14.2 V; 8 cells × 3.65 V.
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 27.6, 28.4);
            says.setting_between(
                GroupCode::Management,
                SettingCode::HighContactor,
                28.4,
                29.2,
            );
            says.no_danger();
        });
}

#[test]
fn from_24_v_to_12_v() {
    // A 24 V engine: 40 × 13.5 / (0.91 × 28) + 5 = 26.2 A of a 24 V alternator.
    stock("24 V engine, 12 V house, 40 A DC-DC charger")
        .choose("alt_nominal_v", "24")
        .set("alt_rated_a", 60.0)
        .set("way_converter_a", 40.0)
        .set("way_start_v", 28.0)
        .set("way_lockout_v", 26.0)
        .check(|says| {
            says.hours_between(2.95, 3.1);
            says.hot_amps_between(25.0, 27.5);
            says.must_not_find("alternator_voltage_mismatch");
            says.no_danger();
            says.survives();
        });
}

#[test]
fn a_24_v_alternator_on_a_12_v_start_battery() {
    stock("24 V alternator on a 12 V start battery")
        .choose("alt_nominal_v", "24")
        .check(|says| {
            says.danger("alternator_voltage_mismatch");
        });
}

#[test]
fn two_chargers_and_a_watched_alternator() {
    // 2 × 30 A: 120 / 60 = 2.0 h if the alternator holds 60 × 13.5 / 12.74 + 5
    // = 68.6 A; a watched 150 A one has some 136 A cold, 55 to 88 hot.
    Boat::new("150 A alternator with external regulator, 60 A of DC-DC chargers")
        .choose("way_kind", "converter")
        .set("alt_rated_a", 150.0)
        .set("alt_mass_kg", 8.0)
        .set("way_converter_a", 60.0)
        .check(|says| {
            says.hours_between(1.95, 2.6);
            says.no_danger();
            says.survives();
        });
}
