//! 24 and 48 V.

use ampwright_core::boat::Key;
use ampwright_core::decision::arrangements::Disconnect;
use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;
use crate::says::Says;

/// A 24 V boat with an alternator of its own voltage.
fn v24(name: &'static str) -> Boat {
    Boat::new(name)
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .set("alt_rated_a", 80.0)
        .set("alt_mass_kg", 9.0)
        .set("eng_displacement_l", 2.5)
}

/// A 48 V boat with an alternator of its own voltage.
fn v48(name: &'static str) -> Boat {
    Boat::new(name)
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "48")
        .set("bank_capacity_ah", 300.0)
        .set("daily_use_ah", 100.0)
        .set("alt_rated_a", 100.0)
        .set("alt_mass_kg", 12.0)
        .set("eng_displacement_l", 3.0)
}

#[test]
fn ordinary_24_v() {
    // 80 A rated: 70 to 75 A cold at 3300 rpm. 2.2 kW is a large alternator, which
    // holds 60 to 75 % hot where its space is aired, and this one is not: 45 to
    // 72 %, 32 to 54 A (common practice, no source). 60 A·h / those: 1.1 to 1.9 h. Short circuit: 26.8 to 27.6 V behind
    // 0.3 Ω·A·h × 2 / 200 A·h = 3 mΩ: 8.9 to 9.2 kA.
    v24("24 V, 200 A·h, 80 A").check(|says| {
        says.cold_amps_between(68.0, 76.0);
        says.hot_share_between(45.0, 72.0);
        says.hours_between(1.05, 2.0);
        says.short_circuit_ka_between(8.7, 9.5);
        says.setting_between(GroupCode::Charge, SettingCode::Voltage, 27.6, 28.4);
        says.setting_between(
            GroupCode::Management,
            SettingCode::HighContactor,
            28.4,
            29.2,
        );
        says.must_not_find("alternator_voltage_assumed");
        says.no_danger();
    });
}

#[test]
fn voltage_of_the_alternator_not_said() {
    // Nearly every engine comes with a 12 V alternator: ask.
    Boat::new("24 V bank, alternator's voltage not said")
        .choose("bank_nominal_v", "24")
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .check(|says| {
            says.fix("alternator_voltage_assumed");
            says.must_not_find("alternator_voltage_mismatch");
        });
}

#[test]
fn a_12_v_alternator_straight_to_48_v() {
    Boat::new("12 V 150 A alternator on a 48 V bank")
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "12")
        .set("alt_rated_a", 150.0)
        .set("bank_capacity_ah", 200.0)
        .check(|says| {
            says.danger("alternator_voltage_mismatch");
            says.first_is("alternator_voltage_mismatch");
            says.finding_says("alternator_voltage_mismatch", &["12 V", "48 V"]);
        });
}

#[test]
fn a_24_v_alternator_straight_to_12_v() {
    Boat::new("24 V alternator on a 12 V bank")
        .choose("alt_nominal_v", "24")
        .check(|says| says.danger("alternator_voltage_mismatch"));
}

#[test]
fn ordinary_48_v() {
    // 16 cells: 56.8 V, never above 58.4. 60 V is where touch protection begins
    // and what 48 V gear withstands for long, 70 V for a moment (ISO 21780,
    // from memory). Short circuit: 53.6 to 55.2 V behind 0.3 × 4 / 300 = 4 mΩ.
    v48("48 V, 300 A·h, 100 A").check(|says| {
        says.setting_between(GroupCode::Charge, SettingCode::Voltage, 55.2, 56.8);
        says.setting_between(
            GroupCode::Management,
            SettingCode::HighContactor,
            56.8,
            58.4,
        );
        says.short_circuit_ka_between(13.0, 14.2);
        let bear_v = says.disconnect().alternators.first().map(|m| m.bear_v);
        says.some_between("V that 48 V electronics withstand", bear_v, 58.0, 75.0);
        // 90 A × 56 V = 5.0 kW; through 50 to 65 % efficiency 7.8 to 10 kW.
        says.belt_kw_between(7.0, 11.0);
        says.must_not_find("alternator_voltage_mismatch");
    });
}

#[test]
fn from_12_v_to_48_v() {
    // 20 A at 53.5 V through 91 %: 20 × 53.5 / (0.91 × 14) + 5 = 89 A of a
    // 12 V 150 A alternator, some 136 A cold: two thirds of it, unwatched.
    // 30 A·h / 20 A = 1.5 h.
    Boat::new("12 V engine, 48 V house, 20 A DC-DC charger")
        .choose("bank_nominal_v", "48")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 20.0)
        .set("bank_capacity_ah", 100.0)
        .set("daily_use_ah", 30.0)
        .set("alt_rated_a", 150.0)
        .set("alt_mass_kg", 8.0)
        .check(|says| {
            says.hours_between(1.45, 1.8);
            says.must_not_find("alternator_voltage_mismatch");
            // In watts the charger is large: 1070 of some 1900.
            says.must_find("converter_large");
        });
}

#[test]
fn the_same_watts_at_three_voltages() {
    // The same watt-hours, watts and resistances in proportion: the same hours
    // and the same share of the engine, within what diodes lose less at more volts.
    let at = |name, volts: &str, blocks: f64| {
        Boat::new(name)
            .choose("bank_nominal_v", volts)
            .choose("alt_nominal_v", volts)
            .set("alt_rated_a", 120.0 / blocks)
            .set("bank_capacity_ah", 400.0 / blocks)
            .set("bank_harness_mohm", 1.5 * blocks * blocks)
            .set("daily_use_ah", 120.0 / blocks)
            .set("alt_diode_v", 0.35 * blocks)
            .answers()
    };
    let low = at("12 V", "12", 1.0);
    for (name, volts, blocks) in [("24 V", "24", 2.0), ("48 V", "48", 4.0)] {
        let high = at(name, volts, blocks);
        let hours = [&low, &high].map(|a| a.report.analyses.day.engine_hours.unwrap_or(f64::NAN));
        assert!(
            (hours[0] / hours[1] - 1.0).abs() < 0.03,
            "{name}: {hours:?} h for the same watts"
        );
        let kw = [&low, &high].map(|a| a.report.analyses.engine.peak_kw);
        assert!((kw[0] / kw[1] - 1.0).abs() < 0.03, "{name}: {kw:?} kW");
        let kilo = [&low, &high].map(|a| a.wiring().short_circuit_a);
        assert!(
            (kilo[0] / kilo[1] - blocks).abs() < 0.05 * blocks,
            "{name}: short circuits {kilo:?} A"
        );
    }
}

#[test]
fn agm_at_24_v() {
    // Two blocks in series: 28.4 to 29.4 V, float 26.4 to 27.6.
    v24("24 V AGM")
        .choose("bank_chemistry", "agm")
        .check(|says| {
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 28.4, 29.4);
            says.setting_between(GroupCode::Charge, SettingCode::Float, 26.4, 27.6);
            says.no_danger();
            says.hours_between(1.5, 4.5);
        });
}

#[test]
fn a_large_charger_on_a_small_alternator_by_watts() {
    // 40 A at 26.8 V through 91 %: 40 × 26.8 / 12.74 + 5 = 89 A of a 12 V 120 A
    // alternator, 81 % of what it gives cold, unwatched: something gets too hot.
    Boat::new("12 V 120 A, 24 V house, 40 A DC-DC charger")
        .choose("bank_nominal_v", "24")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 40.0)
        .set("alt_rated_a", 120.0)
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .check(|says| {
            says.hours_between(1.45, 1.7);
            says.hot_amps_between(75.0, 91.0);
            says.must_find_one_of(&["case_too_hot", "near_limit", "winding_too_hot"]);
        });
}

#[test]
fn a_link_at_48_v() {
    // 0.5 C of 200 A·h: 100 A into the bank, never more; 137 A there would be.
    Boat::new("48 V, 150 A, data link")
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "48")
        .set("alt_rated_a", 150.0)
        .set("alt_mass_kg", 12.0)
        .set("eng_displacement_l", 3.0)
        .set("bank_capacity_ah", 200.0)
        .choose("reg_link", "limits")
        .check(|says| {
            says.peak_bank_amps_between(95.0, 100.5);
            says.must_not_find("management_opens");
            // 106 A × 56 V / 0.55 to 0.65 = 9.1 to 10.8 kW of some 21.
            says.belt_kw_between(8.8, 11.5);
            says.engine_share_between(40.0, 65.0);
        });
}

/// The changes of the proposed arrangement of a name, as key and value.
fn changes(says: &Says, name: &str) -> Option<Vec<(String, f64)>> {
    let (_, with) = says
        .proposed()
        .into_iter()
        .find(|(known, _)| known == name)?;
    let figure = |key: &str| with.figure(Key::named(key)?);
    let keys = ["way_start_v", "way_lockout_v", "way_converter_a"];
    let each = keys
        .iter()
        .filter_map(|key| Some((key.to_string(), figure(key)?)));
    Some(each.collect())
}

#[test]
fn no_start_battery_is_of_48_v() {
    // Engines start from 12 or 24 V (common practice). An alternator of 48 V has
    // no start battery to charge, so no DC-DC charger and no second alternator
    // that leaves it there.
    let given = v48("48 V alternator, nothing caps it").set("bank_capacity_ah", 100.0);
    given.check(|says| {
        for name in [
            "Through a DC-DC charger",
            "A second alternator for the bank",
        ] {
            says.holds(changes(says, name).is_none(), || {
                format!("{name} is proposed for an alternator of 48 V")
            });
        }
    });
    // One that nobody gave a voltage is most likely of 12 V.
    Boat::new("48 V bank, alternator's voltage not said")
        .choose("bank_nominal_v", "48")
        .set("daily_use_ah", 30.0)
        .check(|says| {
            says.fix("alternator_voltage_assumed");
            let through = changes(says, "Through a DC-DC charger").unwrap_or_default();
            let start_v = through.first().map(|(_, volts)| *volts);
            says.some_between("V of the start battery", start_v, 13.0, 15.0);
        });
}

#[test]
fn one_that_must_not_be_connected_makes_no_spike() {
    Boat::new("12 V alternator on a 48 V bank, no spike")
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "12")
        .check(|says| {
            // Told once, not as too weak an alternator as well.
            says.must_not_find("bank_is_emptied");
            let outcomes = &says.comparison().outcomes;
            let told = outcomes.first().map(|one| one.disconnect);
            says.holds(told == Some(Disconnect::NothingCharges), || {
                format!("{told:?} when the battery disconnects")
            });
        });
}
