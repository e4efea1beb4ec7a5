//! A second alternator: for the start battery, or beside the first one.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

fn with_second(name: &'static str, role: &str) -> Boat {
    Boat::new(name).choose("two_role", role)
}

#[test]
fn second_keeps_the_start_battery() {
    // 150 A for the house: some 137 A cold, 55 to 89 hot: 120 A·h in 1.35 to
    // 2.2 h. The other one gives what the engine's services take, 5 A.
    with_second("150 A for the house, 60 A for the start battery", "start")
        .set("alt_rated_a", 150.0)
        .set("alt_mass_kg", 8.0)
        .set("alt2_rated_a", 60.0)
        .set("alt2_mass_kg", 5.0)
        .check(|says| {
            says.cold_amps_between(130.0, 142.0);
            says.hot_share_between(40.0, 65.0);
            says.hours_between(1.3, 2.25);
            let second = says
                .report
                .analyses
                .alternators
                .get(1)
                .map(|second| second.hot_a);
            says.some_between("A of the second", second, 4.5, 5.5);
            says.must_not_find("management_opens");
            says.no_danger();
            says.survives();
        });
}

#[test]
fn both_charge_the_house() {
    // 2 × some 91 A cold; both heat the same air: 35 to 62 % of it hot, 63 to
    // 115 A. 120 A·h in 1.05 to 1.9 h. The bank's 200 A are never reached.
    with_second("two of 100 A on the house bank", "house").check(|says| {
        says.cold_amps_between(174.0, 188.0);
        says.hot_share_between(34.0, 63.0);
        says.hours_between(1.0, 2.0);
        says.must_not_find("management_opens");
        says.no_danger();
    });
}

#[test]
fn both_with_built_in_regulators_on_a_small_bank() {
    // 300 A·h may take 150 A; 183 flow, less 5.
    with_second("two with built-in regulators on 300 A·h", "house")
        .choose("reg_kind", "internal")
        .set("bank_capacity_ah", 300.0)
        .check(|says| {
            says.danger("management_opens");
            says.fix_or_danger("nothing_watches_heat");
        });
}

#[test]
fn two_caps_add_up() {
    // Each is capped at 60 A: 120 A together, 115 into a bank that bears 100.
    with_second("two capped at 60 A each, bank bears 100 A", "house")
        .set("reg_current_cap_a", 60.0)
        .set("bank_charge_limit_a", 100.0)
        .check(|says| {
            says.danger("management_opens");
            says.setting_between(GroupCode::Regulator, SettingCode::CurrentCap, 40.0, 53.0);
        });
}

#[test]
fn second_of_another_voltage() {
    with_second(
        "a 24 V alternator beside a 12 V one on a 12 V bank",
        "house",
    )
    .choose("alt2_nominal_v", "24")
    .check(|says| says.danger("alternator_voltage_mismatch"));
}

#[test]
fn a_24_v_engine_with_a_12_v_house() {
    // The engine's own alternator keeps its 24 V start battery, a 12 V one the house.
    with_second("24 V engine, 12 V alternator for the 12 V house", "start")
        .choose("alt_nominal_v", "12")
        .choose("alt2_nominal_v", "24")
        .set("way_start_v", 28.0)
        .check(|says| {
            says.must_not_find("alternator_voltage_mismatch");
            says.setting_between(GroupCode::StartBattery, SettingCode::Most, 28.0, 29.7);
            says.no_danger();
        });
}

#[test]
fn second_turns_too_slowly() {
    // 1500 × 0.8 = 1200 rpm, below where its curve begins.
    with_second("second alternator with a large pulley", "house")
        .set("alt2_pulley_ratio", 0.8)
        .check(|says| says.fix_or_danger("second_too_slow"));
}

#[test]
fn two_on_a_small_engine() {
    // 183 A × 13.7 V / 0.55 to 0.62 = 4.0 to 4.6 kW and the belts' loss; a diesel
    // of 0.8 L has 11 kW at 3000 rpm, 5 to 6 of them at 1500.
    with_second("two of 100 A on 0.8 L", "house")
        .set("eng_displacement_l", 0.8)
        .check(|says| {
            says.fix_or_danger("engine_overloaded");
            says.belt_kw_between(3.6, 5.4);
        });
}

/// Of two alternators only the second has the fault, and the finding says so.
fn second_alone(what: &'static str, fault: impl Fn(Boat) -> Boat, code: &str) {
    let well = || {
        with_second(what, "house")
            .set("bank_capacity_ah", 800.0)
            .choose("alt_class", "h")
            .choose("alt2_class", "h")
    };
    well().check(|says| says.must_not_find(code));
    fault(well()).check(|says| says.finding_says(code, &["second alternator"]));
}

#[test]
fn what_is_wrong_with_the_second_alone_is_found() {
    // More current at fewer revolutions: no output curve does that.
    second_alone(
        "second point above the rating",
        |boat| {
            boat.choose("alt2_curve", "points")
                .set("alt2_second_a", 200.0)
                .set("alt2_second_rpm", 1800.0)
        },
        "curve_points",
    );
    // Diodes, field, iron and fan of a small alternator take more than 15 %.
    second_alone(
        "85 % at the rating",
        |boat| boat.set("alt2_efficiency_pct", 85.0),
        "efficiency_too_high",
    );
    // A winding that gives off kilowatts is hotter than the air it gives them to.
    second_alone(
        "as cool as its air on the bench",
        |boat| {
            boat.set("alt2_anchor_winding_c", 80.0)
                .set("alt2_anchor_air_c", 80.0)
        },
        "anchor_out_of_reach",
    );
    // The regulator holds 105 °C; the second case withstands 100.
    second_alone(
        "a case for 100 °C",
        |boat| boat.set("alt2_case_limit_c", 100.0),
        "set_point_high",
    );
    // A winding for 130 °C behind a case held at 105.
    second_alone(
        "a winding of class B",
        |boat| {
            boat.choose("alt2_class", "b")
                .set("alt2_anchor_winding_c", 190.0)
                .set("space_outside_c", 40.0)
        },
        "case_sensor_lags",
    );
    // 1500 × 1.2 = 1800 rpm: less than half as much again as where it begins.
    second_alone(
        "a large pulley",
        |boat| boat.set("alt2_pulley_ratio", 1.2),
        "low_on_the_curve",
    );
}

#[test]
fn each_that_nothing_watches_is_told() {
    with_second("two with built-in regulators on 1500 A·h", "house")
        .choose("reg_kind", "internal")
        .set("bank_capacity_ah", 1500.0)
        .set("eng_displacement_l", 3.0)
        .check(|says| {
            let told = says.weights("nothing_watches_heat").len();
            says.holds(told == 2, || format!("{told} of two are told"));
            says.finding_says("nothing_watches_heat", &["second alternator"]);
        });
}
