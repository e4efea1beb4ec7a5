//! What a link or a file of version 1 meant.
//!
//! Links and files leave out whatever is at its default. Where version 2 has
//! another default, one of version 1 would open as another boat: here its old
//! value is stated for every input that it left out.

use super::{Key, Worksheet};
use crate::fields::{Knowledge, Value};

/// The oldest version that is read.
pub(super) const OLDEST: u64 = 1;
/// The version that is written.
pub(super) const NEWEST: u64 = 2;

/// States in a worksheet read from version 1 what it left out and version 2
/// takes otherwise. Nothing is marked as better known than it was.
pub(super) fn keep_meaning(sheet: &mut Worksheet) {
    let mut left_out: Vec<(&str, Value)> = vec![
        // One mass for every alternator.
        ("alt_mass_kg", Value::Number(6.0)),
        ("alt2_mass_kg", Value::Number(6.0)),
        // One engine space for every engine.
        ("eng_surface_w_k", Value::Number(18.0)),
        ("space_wall_w_k", Value::Number(12.0)),
        ("space_leak_m3h", Value::Number(15.0)),
        ("space_heat_capacity_kj_k", Value::Number(30.0)),
        // A built-in regulator held the bank's charge voltage, hot or cold.
        ("reg_drop_mv_k", Value::Number(0.0)),
    ];
    if sheet.inputs.built_in_on_house() {
        left_out.push(("reg_fixed_v", Value::Number(sheet.inputs.charge_v())));
    }
    for (name, value) in left_out {
        // Every name is checked by a test; a wrong one would leave the default.
        let Some(key) = Key::named(name) else {
            continue;
        };
        if !sheet.is_said(key) {
            sheet.inputs.put(key, value);
            sheet.know(key, Knowledge::Guess);
        }
    }
}
