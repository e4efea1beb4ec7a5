//! Limits of a regulator as they are set in practice.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

#[test]
fn a_field_capped_for_a_weak_belt() {
    // Some 85 to 93 A cold at charging speed; with 60 % of the field 51 to 56 A.
    Boat::new("field capped at 60 %")
        .set("reg_field_cap_pct", 60.0)
        .check(|says| {
            says.peak_bank_amps_between(43.0, 52.0);
            says.dump_amps_between(48.0, 57.0);
            says.limited_by(&["temperature", "field_cap"]);
            says.setting_says(GroupCode::Regulator, SettingCode::FieldCap, &["60 %"]);
            says.no_danger();
        });
}

#[test]
fn a_field_cap_that_keeps_it_cool() {
    // 40 % of 85 to 93 A are 34 to 37 A cold; a rotor 80 to 100 K warmer has 30 to
    // 40 % more resistance and takes a tenth to a fifth off that, 27 to 33 A, less
    // than it holds hot (40 to 60): nothing folds back. 120 A·h / those: 3.6 to
    // 4.4 h, a little less for the cold beginning.
    Boat::new("field capped at 40 %")
        .set("reg_field_cap_pct", 40.0)
        .check(|says| {
            says.limited_by(&["field_cap"]);
            says.hours_between(3.4, 4.4);
            says.survives();
        });
}

#[test]
fn a_built_in_regulator_has_no_field_cap() {
    Boat::new("built-in regulator, field cap entered")
        .choose("reg_kind", "internal")
        .set("reg_field_cap_pct", 60.0)
        .check(|says| {
            says.dump_amps_between(80.0, 95.0);
        });
}
