//! 12 V, lithium iron phosphate, the alternator straight on the bank.
//!
//! The sum behind most bands: an alternator of 100 A rated at 6000 rpm, turned
//! at 3300 (1500 rpm of the engine, pulleys 2.2 to 1), gives some 88 to 93 A
//! cold. Hot it holds 40 to 65 % of that, 35 to 60 A (common practice, no
//! source). A day that closes puts back what it uses: hours = A·h / A.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

#[test]
fn ordinary_cruiser() {
    // 120 A·h a day at 35 to 60 A: 2.0 to 3.4 h.
    // Short circuit: 13.4 to 13.8 V behind 0.3 Ω·A·h / 400 A·h = 0.75 mΩ: 17.9 to 18.4 kA.
    Boat::new("ordinary cruiser").check(|says| {
        says.cold_amps_between(87.0, 94.0);
        says.hot_share_between(40.0, 65.0);
        says.hours_between(2.0, 3.4);
        says.limited_by(&["temperature"]);
        says.short_circuit_ka_between(17.5, 19.0);
        says.no_danger();
        says.survives();
    });
}

#[test]
fn built_in_regulator_runs_past_the_banks_limit() {
    // A built-in regulator holds volts. A bank at 30 % is far below them, so all
    // of the 88 to 93 A flow, less the house's 5: well above the 50 A allowed.
    // The management then opens, and what flowed is cut off.
    Boat::new("built-in regulator, bank bears 50 A")
        .choose("reg_kind", "internal")
        .set("bank_charge_limit_a", 50.0)
        .check(|says| {
            says.danger("management_opens");
            says.first_is("management_opens");
            says.peak_bank_amps_between(75.0, 92.0);
            says.dump_amps_between(80.0, 95.0);
            says.peak_dump_between(55.0, 130.0);
            says.must_not_find("bank_limit_binds");
        });
}

#[test]
fn external_regulator_without_cap_or_link_does_no_better() {
    Boat::new("external regulator, no cap, no link, bank bears 50 A")
        .set("bank_charge_limit_a", 50.0)
        .check(|says| {
            says.danger("management_opens");
            says.dump_amps_between(75.0, 95.0);
            // What to do is said: cap the current, or link the regulator.
            says.finding_says("management_opens", &["50 A"]);
        });
}

#[test]
fn a_data_link_holds_the_banks_limit() {
    // 50 A into the bank and 5 A for the house, unless heat holds it lower:
    // 120 A·h / 55 A = 2.2 h at least.
    Boat::new("external regulator with a link, bank bears 50 A")
        .set("bank_charge_limit_a", 50.0)
        .choose("reg_link", "limits")
        .check(|says| {
            says.must_not_find("management_opens");
            says.peak_bank_amps_between(45.0, 50.5);
            says.hours_between(2.1, 3.4);
            says.survives();
        });
}

#[test]
fn a_cap_below_the_banks_limit_is_enough() {
    // The cap holds what the alternator gives: 40 A, 35 into the bank.
    // 120 A·h / 40 A = 3.0 h.
    Boat::new("external regulator capped at 40 A, bank bears 50 A")
        .set("bank_charge_limit_a", 50.0)
        .set("reg_current_cap_a", 40.0)
        .check(|says| {
            says.must_not_find("management_opens");
            says.hours_between(2.9, 3.15);
            says.peak_bank_amps_between(34.0, 40.0);
            says.dump_amps_between(39.0, 41.0);
            says.no_danger();
            says.survives();
        });
}

#[test]
fn built_in_regulator_on_a_large_bank() {
    // The classic way to burn an alternator: 400 A·h of lithium takes all it
    // gives for hours, and a built-in regulator feels no heat.
    Boat::new("stock alternator with built-in regulator on 400 A·h")
        .choose("reg_kind", "internal")
        .check(|says| {
            says.fix_or_danger("nothing_watches_heat");
            says.winding_between(130.0, 230.0);
            says.must_not_find("management_opens");
        });
}

#[test]
fn charged_to_3_65_v_a_cell() {
    // 14.6 V is 3.65 V a cell: no room for the management's three steps.
    // It should be 14.2 V (3.55), and the contactor opens at 14.6, never at 15.
    Boat::new("charge voltage 14.6 V")
        .set("bank_charge_v", 14.6)
        .check(|says| {
            says.fix("charge_voltage_no_room");
            says.finding_says("charge_voltage_no_room", &["14.2"]);
            says.must_not_find("lithium_overvoltage");
            says.setting_between(
                GroupCode::Management,
                SettingCode::HighContactor,
                14.4,
                14.6,
            );
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 13.8, 14.2);
        });
}

#[test]
fn charged_to_3_75_v_a_cell() {
    Boat::new("charge voltage 15.0 V")
        .set("bank_charge_v", 15.0)
        .check(|says| {
            says.danger("lithium_overvoltage");
            says.setting_between(
                GroupCode::Management,
                SettingCode::HighContactor,
                14.4,
                14.6,
            );
        });
}

#[test]
fn charged_to_13_2_v() {
    // 3.30 V a cell is where a bank two thirds full rests: it never gets to 90 %.
    Boat::new("charge voltage 13.2 V")
        .set("bank_charge_v", 13.2)
        .check(|says| {
            says.danger("cannot_be_charged");
            says.cannot_charge();
            says.verdict_contains(&["cannot", "can not", "never"]);
            says.verdict_lacks("more than a day");
        });
}

#[test]
fn charged_to_13_8_v() {
    // 3.45 V a cell: gentle, common practice, and still quick enough.
    Boat::new("charge voltage 13.8 V")
        .set("bank_charge_v", 13.8)
        .check(|says| {
            says.no_danger();
            says.must_not_find("charge_voltage_no_room");
            says.hours_between(2.0, 3.6);
            says.setting_between(
                GroupCode::Management,
                SettingCode::HighContactor,
                14.0,
                14.6,
            );
        });
}

#[test]
fn small_alternator() {
    // 35 A rated: 31 to 33 A cold at 3300 rpm, 40 to 65 % hot: 12.5 to 21.5 A.
    // 120 A·h / those: 5.6 to 9.6 h.
    Boat::new("35 A alternator")
        .set("alt_rated_a", 35.0)
        .set("alt_mass_kg", 4.0)
        .check(|says| {
            says.cold_amps_between(30.0, 33.5);
            says.hot_share_between(40.0, 65.0);
            says.hours_between(5.6, 9.6);
            says.no_danger();
        });
}

#[test]
fn large_case_alternator() {
    // 250 A, large case, class H: some 225 A cold at 3300 rpm, 50 to 80 % hot.
    // 200 A·h / (112 to 185 A): 1.1 to 1.8 h.
    Boat::new("250 A large-case alternator on 800 A·h")
        .set("alt_rated_a", 250.0)
        .set("alt_mass_kg", 10.0)
        .choose("alt_class", "h")
        .set("alt_efficiency_pct", 62.0)
        .set("alt_anchor_winding_c", 140.0)
        .set("alt_max_rpm", 10_000.0)
        .set("bank_capacity_ah", 800.0)
        .set("daily_use_ah", 200.0)
        .set("eng_displacement_l", 2.2)
        .choose("belt_kind", "ribs8")
        .check(|says| {
            says.cold_amps_between(215.0, 235.0);
            says.hot_share_between(48.0, 80.0);
            says.hours_between(1.05, 1.9);
            says.must_not_find("management_opens");
            says.short_circuit_ka_between(35.0, 38.0);
            says.no_danger();
            says.verdict_lacks("overheats");
        });
}

#[test]
fn four_hundred_amperes_on_a_one_litre_engine() {
    // 400 A at 14 V is 5.6 kW; at 55 to 60 % efficiency 9 to 10 kW at the shaft.
    // A litre of diesel has some 14 kW at 3000 rpm, about half of it at 1500.
    Boat::new("400 A alternator on a 1.0 L engine")
        .set("alt_rated_a", 400.0)
        .set("alt_mass_kg", 14.0)
        .set("bank_capacity_ah", 1000.0)
        .set("eng_displacement_l", 1.0)
        .check(|says| {
            says.danger("engine_overloaded");
            says.belt_kw_between(7.5, 11.5);
            says.engine_share_between(100.0, 250.0);
        });
}

#[test]
fn weak_belt() {
    // A single 10 mm V-belt carries some 60 to 80 A at 12 V; 150 A want a
    // multi-rib belt or two (common practice, no source).
    Boat::new("150 A on one 10 mm belt")
        .set("alt_rated_a", 150.0)
        .choose("belt_kind", "v10")
        .check(|says| {
            says.fix_or_danger("belt_too_small");
            says.must_not_find("belt_not_said");
        });
}

#[test]
fn belt_shared_with_the_water_pump() {
    Boat::new("180 A on the water pump's belt")
        .set("alt_rated_a", 180.0)
        .choose("belt_kind", "ribs8")
        .choose("belt_pump", "yes")
        .check(|says| {
            says.fix("belt_shared_pump");
        });
}

#[test]
fn overspeed() {
    // 3600 rpm × 3.2 = 11 520 rpm, above 10 000; 10 000 / 3.2 = 3125.
    Boat::new("pulleys too quick for a large-case alternator")
        .set("alt_pulley_ratio", 3.2)
        .set("alt_max_rpm", 10_000.0)
        .set("eng_top_rpm", 3600.0)
        .check(|says| {
            says.fix_or_danger("overspeed");
            says.finding_says("overspeed", &["3125"]);
        });
}

#[test]
fn filled_to_the_brim() {
    // The last tenth of lithium goes in at nearly full current: the day's run
    // is hardly longer than one that ends at 90 %.
    Boat::new("charged to 100 %")
        .set("run_to_pct", 100.0)
        .set("bank_window_high_pct", 100.0)
        .check(|says| {
            says.hours_between(2.0, 3.8);
            says.no_danger();
        });
}

/// A soft start lets next to nothing flow at first: sheet and list speak of what
/// flows once the field is up.
#[test]
fn a_soft_start_is_told_by_its_full_current() {
    use ampwright_core::exchange::{commissioning_json, open_link, settings_json};
    use ampwright_core::guidance::{commissioning, settings};
    use ampwright_core::units::Reader;
    let link = "v=2&reg_kind=external&way_kind=direct&reg_ramp_min=3&cable_machine_m=3&end";
    let sheet = open_link(link).expect("a link").sheet;
    let report = ampwright_core::report(&sheet);
    let (run, reader) = (&report.analyses.run, &Reader::METRIC);
    assert!(run.start_a < 1.0 && run.most_a() > 50.0, "{}", run.most_a());
    let list = commissioning_json(&commissioning(&sheet, &report), reader).to_string();
    let sheet = settings_json(&settings(&sheet, &report), reader).to_string();
    let expected = format!("up to about {:.0} A", run.most_a().floor());
    assert!(list.contains(&expected), "{expected}");
    for text in [list, sheet] {
        assert!(!text.contains(" 0 A") && !text.contains(" 0.0 V"), "{text}");
    }
}
