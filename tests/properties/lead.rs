//! Banks of lead: what they take in the cold and the heat, when they freeze,
//! what voltages harm or starve them.

use ampwright_core::boat::{Chemistry, Worksheet};
use ampwright_core::exchange::read_json;
use ampwright_core::findings::{Finding, Severity};
use ampwright_core::guidance::settings;
use ampwright_core::guidance::settings::{GroupCode, SettingCode, SettingValue};
use ampwright_core::physics::battery::{AGM, FLOODED, GEL, lead_freezes_c};
use ampwright_core::report;
use proptest::prelude::*;

use crate::draw::normal_boat;
use crate::regulated;

fn opened(link: &str) -> Worksheet {
    regulated::opened(link)
}

fn findings(inputs: &str) -> Vec<Finding> {
    report(&opened(&format!("v=2&{inputs}&end"))).findings
}

fn severity(inputs: &str, key: &str) -> Option<Severity> {
    let found = findings(inputs)
        .into_iter()
        .find(|finding| finding.code() == crate::code(key));
    found.map(|finding| finding.severity())
}

/// A built-in regulator holds so much on a bank of this kind.
fn held(kind: &str, volts: f64, celsius: f64) -> String {
    format!(
        "bank_chemistry={kind}&reg_kind=internal&reg_fixed_v={volts}&bank_temperature_c={celsius}"
    )
}

#[test]
fn too_much_voltage() {
    let over = |kind, volts, celsius| severity(&held(kind, volts, celsius), "lead_overvoltage");
    // What usual data sheets allow at 25 °C, and 0.4 V more.
    for (kind, most_v) in [("gel", 14.4), ("agm", 14.8), ("flooded", 15.0)] {
        assert_eq!(over(kind, most_v, 25.0), None, "{kind}");
        assert_eq!(
            over(kind, most_v + 0.1, 25.0),
            Some(Severity::Fix),
            "{kind}"
        );
        assert_eq!(
            over(kind, most_v + 0.5, 25.0),
            Some(Severity::Danger),
            "{kind}"
        );
        // 15 K warmer: 15 × 24 mV less, by hand 0.36 V.
        assert_eq!(
            over(kind, most_v - 0.2, 40.0),
            Some(Severity::Fix),
            "{kind}"
        );
        assert_eq!(over(kind, most_v + 0.3, 10.0), None, "{kind}");
    }
    // Twice that in 24 V.
    let high = "bank_chemistry=gel&bank_nominal_v=24&bank_charge_v=";
    assert_eq!(severity(&format!("{high}28.8"), "lead_overvoltage"), None);
    assert_eq!(
        severity(&format!("{high}29"), "lead_overvoltage"),
        Some(Severity::Fix)
    );
    // Another charger's voltage counts too.
    assert_eq!(
        severity(
            "bank_chemistry=gel&reg_kind=internal&reg_fixed_v=14.2&bank_charge_v=14.6",
            "lead_overvoltage"
        ),
        Some(Severity::Fix)
    );
    assert_eq!(
        severity("bank_chemistry=lfp&bank_charge_v=15", "lead_overvoltage"),
        None
    );
}

/// Nothing is said of lithium on a boat with a bank of lead.
#[test]
fn no_word_of_lithium() {
    for inputs in ["", "&reg_kind=internal", "&bank_temperature_c=-20"] {
        for found in findings(&format!("bank_chemistry=flooded{inputs}")) {
            let said = crate::said(&found);
            assert!(!said.contains("ithium"), "{said}");
        }
    }
}

#[test]
fn too_little_voltage() {
    let under = |kind, volts, celsius| severity(&held(kind, volts, celsius), "lead_undervoltage");
    for (kind, least_v) in [("gel", 14.1), ("agm", 14.2), ("flooded", 14.4)] {
        assert_eq!(under(kind, least_v, 25.0), None, "{kind}");
        assert_eq!(
            under(kind, least_v - 0.1, 25.0),
            Some(Severity::Note),
            "{kind}"
        );
        assert_eq!(
            under(kind, least_v - 0.3, 25.0),
            Some(Severity::Fix),
            "{kind}"
        );
        assert_eq!(under(kind, least_v, 5.0), Some(Severity::Fix), "{kind}");
        assert_eq!(
            severity(&format!("bank_chemistry={kind}"), "lead_undervoltage"),
            None
        );
    }
}

/// The daily charge to 90 % never fills it, unless the panels do.
#[test]
fn never_full() {
    let never = |more: &str| severity(&format!("bank_chemistry=agm{more}"), "lead_never_full");
    assert_eq!(never(""), Some(Severity::Note));
    assert_eq!(never("&run_to_pct=100"), None);
    assert_eq!(never("&sun_panel_w=5000"), None);
    assert_eq!(severity("", "lead_never_full"), None);
}

#[test]
fn frost() {
    let bank = |celsius: f64, low: f64| {
        format!(
            "bank_chemistry=flooded&bank_temperature_c={celsius}&bank_window_low_pct={low}&run_from_pct={low}"
        )
    };
    assert_eq!(
        severity(&bank(-20.0, 20.0), "lead_frozen"),
        Some(Severity::Danger)
    );
    assert_eq!(severity(&bank(-20.0, 70.0), "lead_frozen"), None);
    assert_eq!(
        severity(&bank(-20.0, 70.0), "lead_may_freeze"),
        Some(Severity::Note)
    );
    assert_eq!(severity(&bank(5.0, 20.0), "lead_may_freeze"), None);
    let lithium = "bank_temperature_c=-30";
    assert_eq!(severity(lithium, "lead_frozen"), None);
}

/// By hand: 0.2, 0.25 and 0.35 A for each of 100 A·h; version 1 meant 1 A.
#[test]
fn usual_limits() {
    for (kind, limit_a) in [("flooded", 20.0), ("gel", 25.0), ("agm", 35.0)] {
        let link = |v: u32| format!("v={v}&bank_chemistry={kind}&bank_capacity_ah=100&end");
        let limit = |v: u32| opened(&link(v)).inputs.charge_limit_a();
        assert!((limit(2) - limit_a).abs() < 1e-9, "{kind}");
        assert!((limit(1) - 100.0).abs() < 1e-9, "{kind}");
    }
    let lithium = opened("v=1&bank_capacity_ah=100&end");
    assert_eq!(lithium.inputs.bank.charge_limit_a, None);
    let stated = opened("v=1&bank_chemistry=agm&bank_charge_limit_a=40&end");
    assert_eq!(stated.inputs.bank.charge_limit_a, Some(40.0));
}

/// An arrangement of version 1 with a bank of another kind keeps its meaning.
#[test]
fn limits_of_arrangements() {
    let read = |chemistry: &str, other: &str| {
        let text = format!(
            r#"{{"type":"ampwright-worksheet","version":1,
                "inputs":{{"bank_chemistry":"{chemistry}","bank_capacity_ah":100}},
                "arrangements":[{{"name":"x","changes":{{"bank_chemistry":"{other}","bank_capacity_ah":200}}}}]}}"#
        );
        let sheet = read_json(&text).expect("a file").sheet;
        sheet.arrangements[0].on(&sheet).inputs.own_charge_limit_a()
    };
    assert!((read("lfp", "agm") - 200.0).abs() < 1e-9);
    assert!((read("agm", "lfp") - 100.0).abs() < 1e-9);
    assert!((read("agm", "gel") - 200.0).abs() < 1e-9);
}

/// Equalising is for flooded banks only; each lead bank is told of a full
/// charge once a week.
#[test]
fn upkeep() {
    for (kind, equalised, water) in [
        ("lfp", false, false),
        ("agm", false, false),
        ("gel", false, false),
        ("flooded", true, true),
    ] {
        let sheet = opened(&format!("v=2&bank_chemistry={kind}&end"));
        let set = settings(&sheet, &report(&sheet));
        let lines: Vec<_> = set
            .groups
            .iter()
            .flat_map(|group| &group.settings)
            .collect();
        let equalising = lines
            .iter()
            .find(|line| line.code == SettingCode::Equalising)
            .expect("said");
        assert_eq!(equalising.value != SettingValue::Off, equalised, "{kind}");
        let weekly = lines
            .iter()
            .any(|line| line.code == SettingCode::FullCharge);
        assert_eq!(weekly, kind != "lfp", "{kind}");
        assert_eq!(
            lines.iter().any(|line| line.code == SettingCode::Water),
            water,
            "{kind}"
        );
    }
}

/// A pump does not trip the switch: by hand, a 24 V bank of 300 A·h that rests
/// at 24.5 V and gives 50 A over 2 × 2/300 + 0.002 Ω stands at 23.73 V.
#[test]
fn steps_under_load() {
    let sheet = opened("v=2&bank_chemistry=flooded&bank_nominal_v=24&bank_capacity_ah=300&end");
    let set = settings(&sheet, &report(&sheet));
    let group = set.group(GroupCode::LowVolts).expect("one");
    let volts: Vec<_> = group
        .settings
        .iter()
        .map(|setting| setting.number().expect("volts"))
        .collect();
    assert!(volts[0] <= 24.5 - 5.0 * 0.0153, "{volts:?}");
    assert!(volts[1] <= 24.5 - 50.0 * 0.0153, "{volts:?}");
    assert!(
        volts[0] > 24.0 && volts[1] > 23.0 && volts[2] > 21.0,
        "{volts:?}"
    );
}

proptest! {
    #![proptest_config(crate::cases(200))]

    /// A colder bank takes no more, a warmer one no less, full or empty.
    #[test]
    fn cold_takes_less(cold_c in -40.0..60.0f64, more_k in 0.0..40.0f64, charge in 0.0..1.0f64) {
        for kind in [FLOODED, AGM, GEL] {
            let at = |celsius: f64| kind.at_temperature(celsius).acceptance_a(100.0, charge);
            prop_assert!(at(cold_c) <= at(cold_c + more_k) + 1e-12);
        }
    }

    /// A fuller bank freezes later.
    #[test]
    fn fuller_freezes_later(low in 0.0..1.0f64, more in 0.0..1.0f64) {
        prop_assert!(lead_freezes_c(low + more * (1.0 - low)) <= lead_freezes_c(low) + 1e-12);
    }

    /// No engine run of a usual boat is longer for a warmer bank of lead.
    #[test]
    fn a_warm_bank_fills_no_slower(drawn in normal_boat(), cold_c in -10.0..20.0f64) {
        let mut sheet = drawn.0;
        sheet.inputs.bank.chemistry = Chemistry::Agm;
        sheet.inputs.bank.charge_v = None;
        sheet.inputs.bank.compensation_mv = None;
        sheet.inputs.reg.kind = ampwright_core::boat::RegulatorKind::External;
        let minutes = |bank_c: f64| {
            let mut sheet = sheet.clone();
            sheet.inputs.bank.temperature_c = bank_c;
            report(&sheet).analyses.run.minutes_to_target.unwrap_or(f64::INFINITY)
        };
        prop_assert!(minutes(cold_c + 5.0) <= 1.02 * minutes(cold_c));
    }
}
