//! What is said, and only where it holds.

use ampwright_core::guidance::commissioning;
use ampwright_core::guidance::commissioning::{StepCode, StepFigure};
use ampwright_core::guidance::settings::{GroupCode, SettingCode, SettingValue};

use crate::answers::said;
use crate::boat::Boat;
use crate::says::{Says, setting_said};

/// A bank that may take 30 A and is offered 60 or more: its management system opens
/// after some seconds, long before anything is hot.
#[test]
fn heat_after_a_disconnect_is_told_as_such() {
    Boat::new("a disconnect before the heat")
        .choose("reg_kind", "internal")
        .set("alt_rated_a", 120.0)
        .set("alt_anchor_winding_c", 240.0)
        .set("bank_capacity_ah", 400.0)
        .set("bank_charge_limit_a", 30.0)
        .check(|says| {
            says.danger("management_opens");
            let hot = |code: &str| code.ends_with("_too_hot") && !code.starts_with("cable");
            let mut told = 0;
            for finding in &says.report.findings {
                if hot(finding.code().name()) {
                    let said = said(finding);
                    told += 1;
                    says.holds(
                        said.contains("did not disconnect the bank first")
                            || said.contains("in a longer run"),
                        || format!("a run that is never had: {said}"),
                    );
                }
            }
            says.holds(told > 0, || "nothing gets too hot".to_string());
        });
}

/// 0.3 Ω·A·h for each 12 V block (common practice): 300 A·h resist 1 mΩ, so 13.6 V at
/// rest drive 13.6 kA, which the class T fuse that each run of cable names breaks;
/// 1000 A·h give 45 kA.
#[test]
fn a_fuse_that_is_named_already_is_no_finding() {
    Boat::new("300 A·h and class T fuses")
        .set("bank_capacity_ah", 300.0)
        .check(|says| {
            says.short_circuit_ka_between(10.0, 20.0);
            says.must_not_find("fuse_must_break");
            let named = says.wiring().runs.first().and_then(|run| run.breaks_ka);
            says.some_between("kA its fuse breaks", named, 20.0, 20.0);
        });
    Boat::new("1000 A·h")
        .set("bank_capacity_ah", 1000.0)
        .set("eng_displacement_l", 3.0)
        .check(|says| says.note("fuse_must_break"));
}

/// What the commissioning list says to set at the DC-DC charger \[A\].
fn switched_on_a(says: &Says) -> Option<f64> {
    let stages = commissioning(&says.sheet, &says.report);
    let mut steps = stages.iter().flat_map(|stage| &stage.steps);
    match steps
        .find(|step| step.code == StepCode::ConverterOn)?
        .figure
    {
        Some(StepFigure::DcDcCharger { most, .. }) => Some(most.value),
        _ => None,
    }
}

/// Charger and second alternator share what a bank may take: list and settings
/// sheet name the same output.
#[test]
fn list_and_sheet_share_out_the_bank() {
    Boat::new("a DC-DC charger beside a second alternator, 60 A allowed")
        .choose("way_kind", "converter")
        .choose("two_role", "house")
        .set("way_converter_a", 50.0)
        .set("bank_charge_limit_a", 60.0)
        .check(|says| {
            let setting = says.setting(GroupCode::Converter, SettingCode::Current);
            let sheet_a = setting.and_then(|setting| match setting.value {
                SettingValue::AtMost { quantity } | SettingValue::Exactly { quantity } => {
                    Some(quantity.value)
                }
                _ => None,
            });
            let list_a = switched_on_a(says);
            says.some_between("A in the sheet", sheet_a, 5.0, 45.0);
            let both = list_a.zip(sheet_a);
            says.holds(
                both.is_some_and(|(list, sheet)| (list - sheet).abs() < 1.0),
                || format!("the list says {list_a:?} A, the sheet {sheet_a:?} A"),
            );
        });
}

/// Without an alternator that charges there is no sensor on it.
#[test]
fn shore_power_alone_has_no_alternator() {
    for (rest, counted) in [("shore", false), ("engine", true)] {
        Boat::new("absorption ends")
            .choose("shore_rest", rest)
            .set("shore_charger_a", 30.0)
            .check(|says| {
                let end = says.setting(GroupCode::Charge, SettingCode::AbsorptionEnd);
                let said = end.map(setting_said).unwrap_or_default();
                says.holds(said.contains("alternator") == counted, || {
                    format!("{rest}: {said}")
                });
            });
    }
}

/// 100 and 60 A at 56.8 V are 9.1 kW of current; at 60 to 80 % of efficiency the two
/// take more than a small engine has. Neither of them takes that by itself.
#[test]
fn what_two_alternators_take_is_not_told_as_one_ones() {
    Boat::new("48 V and two alternators in the heat")
        .choose("bank_nominal_v", "48")
        .set("bank_capacity_ah", 200.0)
        .choose("alt_nominal_v", "48")
        .set("alt_rated_a", 100.0)
        .choose("two_role", "house")
        .choose("alt2_nominal_v", "48")
        .set("alt2_rated_a", 60.0)
        .set("space_outside_c", 38.0)
        .check(|says| {
            let mut told = 0;
            for finding in &says.report.findings {
                if finding.code().name() == "engine_overloaded" {
                    told += 1;
                    let said = said(finding);
                    says.holds(said.starts_with("Charging takes"), || said.clone());
                }
            }
            says.holds(told == 1, || format!("{told} say so"));
        });
}
