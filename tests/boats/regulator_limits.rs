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
    // 40 % are 34 to 37 A, less than it holds hot (40 to 60): nothing folds back,
    // and 120 A·h take 3.2 to 3.7 h.
    Boat::new("field capped at 40 %")
        .set("reg_field_cap_pct", 40.0)
        .check(|says| {
            says.limited_by(&["field_cap"]);
            says.hours_between(3.1, 3.8);
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
