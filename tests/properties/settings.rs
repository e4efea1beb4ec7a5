//! The settings sheet holds for a season: no current of nothing, the steps of a
//! management system below what a cell withstands, a cap within what the
//! alternator and the bank allow.

use ampwright_core::boat::{Chemistry, RegulatorKind, Worksheet};
use ampwright_core::findings::{Code, Severity};
use ampwright_core::guidance::settings::{GroupCode, Setting, SettingCode, SettingValue, Settings};
use ampwright_core::guidance::{commissioning, settings};
use ampwright_core::report;
use ampwright_core::text;
use ampwright_core::units::{QuantityKind, Reader};
use proptest::prelude::*;

use crate::draw::{any_sheet, normal_boat};
use crate::regulated;

/// Settings of a current.
const CURRENTS: [SettingCode; 3] = [
    SettingCode::Current,
    SettingCode::CurrentCap,
    SettingCode::ChargeCurrent,
];

fn opened(inputs: &str) -> Worksheet {
    regulated::opened(&format!("v=2&{inputs}&end"))
}

fn set(inputs: &str) -> Settings {
    let sheet = opened(inputs);
    settings(&sheet, &report(&sheet))
}

fn number(set: &Settings, group: GroupCode, code: SettingCode) -> f64 {
    set.setting(group, code)
        .and_then(Setting::number)
        .unwrap_or_else(|| panic!("{} {}", group.name(), code.name()))
}

/// No setting of a current is nothing: that would be one cold morning's.
fn no_current_of_nothing(sheet: &Worksheet, set: &Settings) -> Result<(), TestCaseError> {
    for group in &set.groups {
        for setting in &group.settings {
            let current = setting
                .figure()
                .filter(|figure| figure.kind == QuantityKind::Current);
            prop_assert!(current.is_none_or(|a| a.value > 0.0), "{:?}", setting);
            let value = text::settings::value(setting, &Reader::METRIC);
            let nothing = value == "0 A" || value.starts_with("0.0 A");
            prop_assert!(!nothing, "{:?}: {}", setting.code, value);
        }
    }
    for step in commissioning(sheet, &report(sheet))
        .iter()
        .flat_map(|stage| &stage.steps)
    {
        let text = text::commissioning::text(step, &Reader::METRIC).to_lowercase();
        prop_assert!(!text.contains("no more than 0.0 a"), "{text}");
    }
    Ok(())
}

/// Volts a cell in order, and the last no more than a cell withstands.
fn steps_in_order(sheet: &Worksheet, set: &Settings) -> Result<(), TestCaseError> {
    let blocks = sheet.inputs.bank.nominal_v.blocks();
    let charge_v = number(set, GroupCode::Charge, SettingCode::Voltage);
    if sheet.inputs.bank.chemistry == Chemistry::Lfp {
        prop_assert!(charge_v / (4.0 * blocks) <= 3.55 + 1e-9);
        let steps = [
            SettingCode::HighWarning,
            SettingCode::HighChargingOff,
            SettingCode::HighContactor,
        ];
        if sheet.inputs.packs_closed() {
            // There is nothing to set in a closed pack.
            let figure = |code| set.setting(GroupCode::Management, code)?.number();
            prop_assert!(steps.map(figure).iter().all(Option::is_none));
        } else {
            let steps = steps.map(|code| number(set, GroupCode::Management, code) / (4.0 * blocks));
            prop_assert!(steps[0] > 3.55 && steps[0] < steps[1] && steps[1] < steps[2]);
            prop_assert!(steps[2] <= 3.65 + 1e-9, "{steps:?}");
        }
        // Row by row, joined where they are the same, as the run obeys them.
        let rows = set.group(GroupCode::ByTemperature);
        let rows = &rows.expect("a table").settings;
        let ladder = sheet.inputs.charge_ladder();
        prop_assert_eq!(rows.len(), ladder.len());
        for (row, step) in rows.iter().zip(&ladder) {
            let SettingValue::CellStep { from, to, most } = row.value else {
                return Err(TestCaseError::fail(format!("{row:?}")));
            };
            prop_assert_eq!(from.map(|from| from.value), step.from_c);
            prop_assert_eq!(to.map(|to| to.value), step.to_c);
            prop_assert_eq!(most.is_none(), step.amperes <= 0.0, "{:?}", row);
            prop_assert!(row.number().unwrap_or(0.0) <= step.amperes, "{:?}", row);
            prop_assert!(step.amperes <= sheet.inputs.own_charge_limit_a());
        }
    } else {
        let steps = [
            SettingCode::LowAllOff,
            SettingCode::LowLoadsOff,
            SettingCode::LowWarning,
        ]
        .map(|code| number(set, GroupCode::LowVolts, code) / blocks);
        prop_assert!(steps[0] >= 10.5 - 1e-9, "{steps:?}");
        prop_assert!(
            steps[0] + 0.1 < steps[1] && steps[1] + 0.1 < steps[2],
            "{steps:?}"
        );
    }
    Ok(())
}

fn sound(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let report = report(sheet);
    let set = settings(sheet, &report);
    no_current_of_nothing(sheet, &set)?;
    steps_in_order(sheet, &set)?;
    let inputs = &sheet.inputs;
    for (group, machine) in [
        (GroupCode::Regulator, &inputs.alt),
        (GroupCode::Second, &inputs.alt2),
    ] {
        let cap = set.setting(group, SettingCode::CurrentCap);
        let cap_a = cap.and_then(Setting::number);
        prop_assert!(
            cap_a.is_none_or(|cap_a| cap_a <= machine.rated_a),
            "{:?}",
            group
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn a_sheet_holds_for_a_season(drawn in any_sheet()) {
        sound(&drawn.0)?;
    }

    #[test]
    fn usual_boats_too(drawn in normal_boat()) {
        sound(&drawn.0)?;
    }

    /// A cold morning changes no setting of a lithium bank: the same sheet at
    /// −5 °C as at 25.
    #[test]
    fn the_cold_changes_no_current(drawn in normal_boat(), bank_c in -20.0..45.0f64) {
        let mut sheet = drawn.0;
        sheet.inputs.bank.chemistry = Chemistry::Lfp;
        let currents = |sheet: &Worksheet| -> Vec<Option<f64>> {
            let set = settings(sheet, &report(sheet));
            set.groups
                .iter()
                .flat_map(|group| &group.settings)
                .filter(|setting| CURRENTS.contains(&setting.code))
                .map(Setting::number)
                .collect()
        };
        sheet.inputs.bank.temperature_c = 25.0;
        let warm = currents(&sheet);
        sheet.inputs.bank.temperature_c = bank_c;
        prop_assert_eq!(currents(&sheet), warm);
    }
}

/// A management system's steps stay where they are, whatever the bank is
/// charged to: 4 × 3.59, 3.62 and 3.65 V, by hand.
#[test]
fn steps_work_down_from_the_cells_limit() {
    for charge in [
        "",
        "bank_charge_v=13.8",
        "bank_charge_v=14.6",
        "bank_charge_v=16",
    ] {
        let set = set(charge);
        for (code, v) in [
            (SettingCode::HighWarning, 14.36),
            (SettingCode::HighChargingOff, 14.48),
            (SettingCode::HighContactor, 14.6),
        ] {
            assert!(
                (number(&set, GroupCode::Management, code) - v).abs() < 1e-9,
                "{charge} {code:?}"
            );
        }
    }
    assert!(
        (number(
            &set("bank_charge_v=14.6"),
            GroupCode::Charge,
            SettingCode::Voltage
        ) - 14.2)
            .abs()
            < 1e-9
    );
}

/// What of a bank's findings a worksheet has.
fn severity(inputs: &str, key: &str) -> Option<Severity> {
    let findings = report(&opened(inputs)).findings;
    let found = findings
        .iter()
        .find(|finding| finding.code() == crate::code(key));
    found.map(|finding| finding.severity())
}

#[test]
fn a_charge_voltage_needs_room() {
    let no_room = |inputs: &str| severity(inputs, "charge_voltage_no_room");
    let over = |inputs: &str| severity(inputs, "lithium_overvoltage");
    assert_eq!(no_room(""), None);
    assert_eq!(no_room("bank_charge_v=14.2"), None);
    assert_eq!(no_room("bank_charge_v=14.4"), Some(Severity::Fix));
    assert_eq!(no_room("bank_charge_v=14.6"), Some(Severity::Fix));
    assert_eq!(over("bank_charge_v=14.6"), None);
    assert_eq!(no_room("bank_charge_v=14.7"), None);
    assert_eq!(over("bank_charge_v=14.7"), Some(Severity::Danger));
    assert_eq!(
        no_room("bank_nominal_v=24&bank_charge_v=28.8"),
        Some(Severity::Fix)
    );
    // Another charger than the engine's brings it there too.
    assert_eq!(
        no_room("reg_kind=internal&reg_fixed_v=14&bank_charge_v=14.5"),
        Some(Severity::Fix)
    );
    let findings = report(&opened("bank_charge_v=14.6")).findings;
    let text = findings
        .iter()
        .find(|f| f.code() == Code::ChargeVoltageNoRoom)
        .map(crate::said)
        .expect("it");
    assert!(text.contains("14.2 V"), "{text}");
}

/// The cap is what an alternator holds hot and 15 % more, not its rating; the
/// run it leads to holds as much hot.
#[test]
fn a_cap_is_what_it_holds_hot() {
    let sheet = opened("alt_rated_a=150&bank_capacity_ah=800&belt_kind=ribs8");
    let before = report(&sheet);
    let cap_a = number(
        &settings(&sheet, &before),
        GroupCode::Regulator,
        SettingCode::CurrentCap,
    );
    let hot_a = before.analyses.output.hot_a;
    assert!(
        cap_a < 130.0 && cap_a > 1.05 * hot_a && cap_a < 1.25 * hot_a,
        "{cap_a} {hot_a}"
    );
    let mut with = sheet.clone();
    with.inputs.reg.current_cap_a = Some(cap_a);
    let after = report(&with);
    assert!((after.analyses.output.hot_a - hot_a).abs() < 0.01 * hot_a);
    // A built-in regulator has none.
    let set = set("reg_kind=internal");
    assert_eq!(
        set.setting(GroupCode::BuiltIn, SettingCode::CurrentCap)
            .and_then(Setting::number),
        None
    );
    assert_eq!(
        opened("reg_kind=internal").inputs.reg.kind,
        RegulatorKind::Internal
    );
}

/// A DC-DC charger is set no higher than the alternator can feed it hot.
#[test]
fn a_charger_does_not_starve() {
    let sheet = opened("way_kind=converter&way_converter_a=60&bank_capacity_ah=800");
    let set_a = number(
        &settings(&sheet, &report(&sheet)),
        GroupCode::Converter,
        SettingCode::Current,
    );
    assert!(set_a < 50.0, "{set_a}");
    let mut with = sheet.clone();
    with.inputs.way.converter_a = Some(set_a);
    let found = report(&with).findings;
    assert!(
        found
            .iter()
            .all(|finding| finding.code() != Code::ConverterStarves)
    );
}
