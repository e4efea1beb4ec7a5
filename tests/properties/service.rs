//! Settings and the commissioning list: whatever the worksheet, they are in
//! words and finite, and nothing is set beyond what it protects.

use std::collections::BTreeSet;

use ampwright_core::boat::{Chemistry, Inputs, RegulatorKind, SecondRole, SensorPlace, Worksheet};
use ampwright_core::guidance::commissioning::all_ids;
use ampwright_core::guidance::settings::{GroupCode, Setting, SettingCode, Settings};
use ampwright_core::guidance::{CAUTIONS, CautionCode, CautionTopic, cautions, cautions_at};
use ampwright_core::guidance::{commissioning, settings};
use ampwright_core::report;
use ampwright_core::report::Report;
use ampwright_core::text;
use ampwright_core::units::Reader;
use proptest::prelude::*;

use crate::draw::{any_sheet, normal_boat};

fn number(set: &Settings, group: GroupCode, code: SettingCode) -> Option<f64> {
    set.setting(group, code)?.number()
}

fn in_words(text: &str) -> Result<(), TestCaseError> {
    prop_assert!(!text.trim().is_empty());
    for word in ["NaN", "inf ", "inf.", "-0 ", " -", "  "] {
        prop_assert!(!text.contains(word), "“{word}” in {text}");
    }
    Ok(())
}

/// The groups of the two alternators' regulators.
const REGULATORS: [GroupCode; 2] = [GroupCode::Regulator, GroupCode::Second];

fn limits(inputs: &Inputs) -> [f64; 2] {
    [&inputs.alt, &inputs.alt2].map(|machine| match inputs.reg.sensor {
        SensorPlace::Case => machine.case_limit_c,
        SensorPlace::Winding => machine.class.limit_c(),
        SensorPlace::Rectifier => machine.rectifier_limit_c,
    })
}

/// Nothing is set beyond what it protects.
fn within_limits(inputs: &Inputs, set: &Settings) -> Result<(), TestCaseError> {
    let blocks = inputs.bank.nominal_v.blocks();
    let charge_v = number(set, GroupCode::Charge, SettingCode::Voltage).expect("a voltage");
    // A voltage below the bank's float is another system's figure and is not passed on.
    let float_v = number(set, GroupCode::Charge, SettingCode::Float).expect("a float");
    let of_this_bank = inputs.charge_v() >= float_v;
    prop_assert!(
        charge_v <= inputs.charge_v() || !of_this_bank,
        "{charge_v} V of {} V stated",
        inputs.charge_v()
    );
    prop_assert!(float_v <= charge_v);
    if inputs.bank.chemistry == Chemistry::Lfp {
        prop_assert!(charge_v <= 14.2 * blocks + 1e-9);
        prop_assert_eq!(
            number(set, GroupCode::Charge, SettingCode::Compensation),
            Some(0.0)
        );
    }
    // Drop-in packs have nothing to set.
    if inputs.bank.chemistry == Chemistry::Lfp && !inputs.packs_closed() {
        let step = |code| number(set, GroupCode::Management, code).expect("a step");
        let high = [
            SettingCode::HighWarning,
            SettingCode::HighChargingOff,
            SettingCode::HighContactor,
        ]
        .map(step);
        let low = [
            SettingCode::LowContactor,
            SettingCode::LowLoadsOff,
            SettingCode::LowWarning,
        ]
        .map(step);
        prop_assert!(charge_v < high[0] && high[0] < high[1] && high[1] < high[2]);
        prop_assert!(low[0] < low[1] && low[1] < low[2]);
    }
    // A sheet holds for a season: cold mornings have their own lines.
    let limit_a = inputs.own_charge_limit_a();
    let straight_a: f64 = [
        (GroupCode::Regulator, SettingCode::Profile),
        (GroupCode::Second, SettingCode::Others),
    ]
    .into_iter()
    .filter(|(group, house)| set.setting(*group, *house).is_some())
    .filter_map(|(group, _)| number(set, group, SettingCode::CurrentCap))
    .sum();
    let converter_a = set
        .setting(GroupCode::Converter, SettingCode::Profile)
        .and_then(|_| number(set, GroupCode::Converter, SettingCode::Current))
        .unwrap_or(0.0);
    prop_assert!(
        straight_a + converter_a <= limit_a + 1e-9,
        "{straight_a} + {converter_a} of {limit_a}"
    );
    if let Some(charger_a) = number(set, GroupCode::ShoreCharger, SettingCode::Current) {
        prop_assert!(
            charger_a <= limit_a.min(inputs.mains_charger_a()) + 1e-9,
            "{charger_a} A of {limit_a}"
        );
    }
    for (group, limit_c) in REGULATORS.into_iter().zip(limits(inputs)) {
        if let Some(set_c) = number(set, group, SettingCode::SetPoint) {
            prop_assert!(set_c <= limit_c - 5.0, "{set_c} of {limit_c}");
        }
    }
    if let Some(stated_a) = inputs.reg.current_cap_a {
        for group in REGULATORS {
            prop_assert!(number(set, group, SettingCode::CurrentCap).is_none_or(|a| a <= stated_a));
        }
    }
    if set
        .setting(GroupCode::Converter, SettingCode::Profile)
        .is_some()
    {
        let lockout_v =
            number(set, GroupCode::Converter, SettingCode::Lockout).expect("a lock-out");
        let again_v = number(set, GroupCode::Converter, SettingCode::Again).expect("a restart");
        prop_assert!(lockout_v < again_v && again_v < inputs.way.start_v);
    }
    Ok(())
}

/// Only the devices that the arrangement has.
fn only_devices_there_are(inputs: &Inputs, set: &Settings) -> Result<(), TestCaseError> {
    let engine = inputs.engine_charges();
    let external = inputs.reg.kind == RegulatorKind::External;
    let lithium = inputs.bank.chemistry == Chemistry::Lfp;
    for (code, expected) in [
        (GroupCode::Charge, true),
        (GroupCode::Regulator, engine && external),
        (GroupCode::BuiltIn, engine && !external),
        (
            GroupCode::Second,
            engine && inputs.two.role != SecondRole::None,
        ),
        (GroupCode::Management, lithium),
        (GroupCode::LowVolts, !lithium),
        (GroupCode::ShoreCharger, inputs.mains_charger_a() > 0.0),
        (GroupCode::StartBattery, true),
    ] {
        let found = set.groups.iter().filter(|group| group.code() == code);
        prop_assert_eq!(found.count(), usize::from(expected), "{}", code.name());
    }
    Ok(())
}

/// Lines of an A4 page in small print: 45 letters of a value beside 70 of a reason.
fn printed_lines(group: GroupCode, setting: &Setting) -> usize {
    let [label, value, reason] = said(group, setting).map(|said| said.chars().count());
    let columns = [label.div_ceil(32), value.div_ceil(45), reason.div_ceil(70)];
    columns.into_iter().max().unwrap_or(0)
}

/// Label, value and reason of a setting.
fn said(group: GroupCode, setting: &Setting) -> [String; 3] {
    let reader = &Reader::METRIC;
    [
        text::settings::label(group, setting, reader),
        text::settings::value(setting, reader),
        text::settings::reason(&setting.reason, reader),
    ]
}

fn sound(sheet: &Worksheet, report: &Report) -> Result<(), TestCaseError> {
    let set = settings(sheet, report);
    let mut names = BTreeSet::new();
    let mut lines = set.groups.len();
    for group in &set.groups {
        let of = group.code();
        in_words(text::settings::title(group.device))?;
        for setting in &group.settings {
            let code = setting.code;
            prop_assert!(names.insert((of, code)), "twice {}", code.name());
            for said in said(of, setting) {
                in_words(&said)?;
            }
            lines += printed_lines(of, setting);
            let number = setting.number();
            prop_assert!(number.is_none_or(f64::is_finite), "{}", code.name());
        }
    }
    prop_assert!(lines <= 80, "{} lines", lines);
    within_limits(&sheet.inputs, &set)?;
    only_devices_there_are(&sheet.inputs, &set)?;
    let mut ids = BTreeSet::new();
    for stage in commissioning(sheet, report) {
        prop_assert!(!stage.steps.is_empty());
        for step in &stage.steps {
            let id = step.code.name();
            prop_assert!(ids.insert(id), "twice {}", id);
            prop_assert_eq!(step.done, sheet.is_done(id));
            prop_assert_eq!(step.code.stage(), stage.code);
            let reader = &Reader::METRIC;
            in_words(&text::commissioning::text(step, reader))?;
            if let Some(stop) = &step.stop {
                in_words(&text::commissioning::stop(stop, reader))?;
            }
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(500))]

    #[test]
    fn settings_and_list_are_sound(drawn in any_sheet()) {
        sound(&drawn.0, &report(&drawn.0))?;
    }

    #[test]
    fn usual_boats_too(drawn in normal_boat()) {
        sound(&drawn.0, &report(&drawn.0))?;
    }

    /// A tick is there until it is taken back, and nothing else changes.
    #[test]
    fn a_tick_and_back(drawn in any_sheet(), at in any::<prop::sample::Index>()) {
        let ids: Vec<&str> = all_ids().collect();
        let id = ids[at.index(ids.len())];
        let mut sheet = drawn.0.clone();
        let before = sheet.is_done(id);
        prop_assert!(sheet.tick(id, !before) && sheet.is_done(id) != before);
        prop_assert!(sheet.tick(id, before));
        prop_assert_eq!(sheet, drawn.0);
    }

    /// Every place has a caution, and a boat is shown those that concern it.
    #[test]
    fn cautions_have_their_place(drawn in any_sheet()) {
        let inputs = &drawn.0.inputs;
        let placed: usize = CautionTopic::ALL.iter().map(|place| cautions_at(inputs, *place).count()).sum();
        prop_assert_eq!(placed, cautions(inputs).count());
        for always in [CautionTopic::Cable, CautionTopic::Disconnect, CautionTopic::Lead, CautionTopic::Rules] {
            prop_assert!(cautions_at(inputs, always).next().is_some(), "{:?}", always);
        }
        let cold = cautions_at(inputs, CautionTopic::Cold).count();
        prop_assert_eq!(cold > 0, inputs.bank.chemistry == Chemistry::Lfp);
        prop_assert_eq!(cautions_at(inputs, CautionTopic::Exhaust).count() > 0, inputs.engine_charges() || inputs.has_generator());
    }
}

#[test]
fn every_place_has_a_caution() {
    for place in CautionTopic::ALL {
        assert!(
            CAUTIONS.iter().any(|caution| caution.place == place),
            "{place:?}"
        );
    }
}

#[test]
fn every_caution_stands_in_the_list_once() {
    for code in CautionCode::ALL {
        let found = CAUTIONS.iter().filter(|caution| caution.code == *code);
        assert_eq!(found.count(), 1, "{}", code.name());
        in_words(&text::cautions::sentence(*code, &Reader::US)).expect("in words");
    }
}
