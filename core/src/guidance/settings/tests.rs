//! Settings against arithmetic by hand.

use crate::Worksheet;
use crate::analysis::PartTemperatures;
use crate::boat::SensorPlace;
use crate::boat::key;
use crate::exchange::open_link;
use crate::guidance::settings::figures::set_point;
use crate::guidance::settings::{
    ChargeReason, GroupCode, Setting, SettingCode, SettingReason, SettingValue, Settings, Source,
    settings,
};
use crate::report::report;

fn opened(link: &str) -> Worksheet {
    open_link(link)
        .map(|opened| opened.sheet)
        .unwrap_or_default()
}

fn of(link: &str) -> Settings {
    let sheet = opened(link);
    settings(&sheet, &report(&sheet))
}

#[track_caller]
fn check(settings: &Settings, group: GroupCode, code: SettingCode, expected: f64) {
    let found = settings.setting(group, code).and_then(Setting::number);
    assert!(
        found.is_some_and(|found| (found - expected).abs() < 1e-9),
        "{} {}: {found:?}, not {expected}",
        group.name(),
        code.name()
    );
}

/// 400 A·h, 4 cells: 4 × 3.55, 5 % of 400, 4 × 3.35; 4 × 3.59, 3.62, 3.65;
/// 4 × 3.1, 3.0, 2.8; half of 400, a tenth and a fifth of it in the cold.
#[test]
fn lithium() {
    let set = of("v=2&end");
    check(&set, GroupCode::Charge, SettingCode::Voltage, 14.2);
    check(&set, GroupCode::Charge, SettingCode::AbsorptionEnd, 20.0);
    check(&set, GroupCode::Charge, SettingCode::Float, 13.4);
    check(&set, GroupCode::Charge, SettingCode::Compensation, 0.0);
    check(&set, GroupCode::Management, SettingCode::HighWarning, 14.36);
    check(
        &set,
        GroupCode::Management,
        SettingCode::HighChargingOff,
        14.48,
    );
    check(
        &set,
        GroupCode::Management,
        SettingCode::HighContactor,
        14.6,
    );
    check(&set, GroupCode::Management, SettingCode::LowWarning, 12.4);
    check(&set, GroupCode::Management, SettingCode::LowLoadsOff, 12.0);
    check(&set, GroupCode::Management, SettingCode::LowContactor, 11.2);
    check(
        &set,
        GroupCode::Management,
        SettingCode::ChargeCurrent,
        200.0,
    );
    check(&set, GroupCode::ByTemperature, SettingCode::To5, 40.0);
    check(&set, GroupCode::ByTemperature, SettingCode::To10, 80.0);
    check(&set, GroupCode::ByTemperature, SettingCode::To50, 200.0);
    check(&set, GroupCode::ByTemperature, SettingCode::To60, 40.0);
}

/// 24 V flooded, 300 A·h: 2 × 14.6; 2 % of 300; 2 × 13.4; 2 × 15.5; half-way
/// between 2 × 11.85 and 2 × 12.65 at 50 %, less 5 and 50 A times
/// 2 × 2/300 + 0.002 Ω: 24.42 and 23.73; then 2 × 0.5 lower; to a tenth.
#[test]
fn lead() {
    let set = of("v=2&bank_chemistry=flooded&bank_nominal_v=24&bank_capacity_ah=300&end");
    check(&set, GroupCode::Charge, SettingCode::Voltage, 29.2);
    check(&set, GroupCode::Charge, SettingCode::AbsorptionEnd, 6.0);
    check(&set, GroupCode::Charge, SettingCode::Float, 26.8);
    check(&set, GroupCode::Charge, SettingCode::Compensation, -4.0);
    check(&set, GroupCode::Charge, SettingCode::Equalising, 31.0);
    check(&set, GroupCode::LowVolts, SettingCode::LowWarning, 24.4);
    check(&set, GroupCode::LowVolts, SettingCode::LowLoadsOff, 23.7);
    check(&set, GroupCode::LowVolts, SettingCode::LowAllOff, 22.7);
    // −4 mV × 12 cells is −48 mV/K; 29.2 + 0.048 × 15, 29.2 − 0.048 × 15.
    let said = set.setting(GroupCode::Charge, SettingCode::Compensation);
    let said = said.expect("compensation");
    let SettingValue::Compensation { bank, .. } = said.value else {
        panic!("{:?}", said.value)
    };
    assert_eq!(bank.value, -48.0);
    let SettingReason::Charge(ChargeReason::Compensated { cold, hot, .. }) = said.reason else {
        panic!("{:?}", said.reason)
    };
    assert!((cold.value - 29.92).abs() < 1e-9 && (hot.value - 28.48).abs() < 1e-9);
}

/// 80 and 80 A into a bank of 100 A, of which 95 are set: half of it each, whole
/// amps. 20 A of a DC-DC charger and an alternator capped at 60 A into 40 A, of
/// which 38 are set: 20 × 38/80 and 60 × 38/80.
#[test]
fn two_share_what_the_bank_takes() {
    let set = of(
        "v=2&reg_kind=external&way_kind=direct&bank_charge_limit_a=100&two_role=house&reg_current_cap_a=80&end",
    );
    check(&set, GroupCode::Regulator, SettingCode::CurrentCap, 47.0);
    check(&set, GroupCode::Second, SettingCode::CurrentCap, 47.0);
    let set = of(
        "v=2&reg_kind=external&bank_charge_limit_a=40&two_role=house&way_kind=converter&way_converter_a=20&reg_current_cap_a=60&end",
    );
    check(&set, GroupCode::Converter, SettingCode::Current, 9.5);
    check(&set, GroupCode::Second, SettingCode::CurrentCap, 28.0);
}

/// 3.55 V × 4 leaves room; neither the worksheet's 15 V nor its 14.6 V is passed
/// on. 14.4 V is the most for gel.
#[test]
fn too_high_a_charge_voltage() {
    let set = of("v=2&bank_charge_v=15&end");
    check(&set, GroupCode::Charge, SettingCode::Voltage, 14.2);
    assert_eq!(set.groups[0].settings[0].from, Source::BatteryMaker);
    let set = of("v=2&bank_charge_v=14.6&end");
    check(&set, GroupCode::Charge, SettingCode::Voltage, 14.2);
    check(
        &set,
        GroupCode::Management,
        SettingCode::HighContactor,
        14.6,
    );
    let set = of("v=2&bank_chemistry=gel&bank_charge_v=14.8&end");
    check(&set, GroupCode::Charge, SettingCode::Voltage, 14.4);
    let set = of("v=2&bank_charge_v=14&end");
    assert_eq!(
        set.groups[0].settings[0].from,
        Source::Worksheet(key!(bank.charge_v))
    );
}

/// Stated and useful; above what the engine runs at; below a battery at rest.
/// 13.1 − 0.5 is 12.6; the usual in 24 V is 26.
#[test]
fn lock_out() {
    let with = |said: &str| of(&format!("v=2&way_kind=converter&{said}&end"));
    check(
        &with("way_lockout_v=13.2"),
        GroupCode::Converter,
        SettingCode::Lockout,
        13.2,
    );
    check(
        &with("way_start_v=13.1"),
        GroupCode::Converter,
        SettingCode::Lockout,
        12.6,
    );
    check(
        &with("way_start_v=28"),
        GroupCode::Converter,
        SettingCode::Lockout,
        26.0,
    );
    // Again 0.3 V higher, or half-way to the running volts.
    check(
        &with("way_lockout_v=13.2"),
        GroupCode::Converter,
        SettingCode::Again,
        13.5,
    );
    check(
        &with("way_lockout_v=13.6"),
        GroupCode::Converter,
        SettingCode::Again,
        13.8,
    );
}

/// 105 under 120 stays; 118 becomes 120 − 20; a winding 7.2 K over 155 takes
/// 8 K off; a sensor on the winding has its class for a limit.
#[test]
fn set_points() {
    let mut inputs = Worksheet::default().inputs;
    let at = |inputs: &crate::Inputs, winding_c: f64| {
        let peak = PartTemperatures {
            winding_may_be_c: None,
            winding_c,
            case_c: 100.0,
            rectifier_c: 110.0,
            air_c: 50.0,
        };
        set_point(&inputs.first_alternator(), &peak).celsius
    };
    assert_eq!(at(&inputs, 140.0), 105.0);
    assert_eq!(at(&inputs, 162.2), 97.0);
    assert_eq!(at(&inputs, 300.0), 60.0);
    inputs.reg.set_point_c = 118.0;
    assert_eq!(at(&inputs, 140.0), 100.0);
    inputs.reg.sensor = SensorPlace::Winding;
    inputs.reg.set_point_c = 140.0;
    assert_eq!(at(&inputs, 140.0), 140.0);
}

/// What the sheet says of an alternator that gets too hot helps once it is put into
/// the worksheet.
#[test]
fn a_lower_set_point_helps() {
    let mut sheet = opened(
        "v=2&reg_kind=external&way_kind=direct&reg_set_point_c=128&alt_case_limit_c=150&alt_rated_a=160&bank_capacity_ah=800&space_outside_c=38&end",
    );
    let of = |sheet: &Worksheet| {
        let peak = report(sheet).analyses.run.alternators[0].peak;
        set_point(&sheet.inputs.first_alternator(), &peak)
    };
    let before = of(&sheet);
    sheet.inputs.reg.set_point_c = before.celsius;
    let after = of(&sheet);
    assert!(before.over_k > 1.0 && after.over_k < 0.5 * before.over_k);
}
