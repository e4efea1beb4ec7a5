//! What a link or a file of version 1 meant.
//!
//! Links and files leave out whatever is at its default. Where version 2 has
//! another default, one of version 1 would open as another boat: here its old
//! value is stated for every input that it left out.

use crate::boat::key;
use crate::boat::{
    Alternator, AlternatorVolts, Bank, Currency, Key, RegulatorKind, WayKind, WhichAlternator,
    Worksheet,
};
use crate::schema::{Confidence, FieldType, Value};
use crate::simulation::cooling::winding_cooled_as_usual_c;

/// The oldest version that is read.
pub(super) const OLDEST: u64 = 1;
/// The version that is written.
pub(super) const NEWEST: u64 = 2;

/// States in a worksheet read from version 1 what it left out and version 2
/// takes otherwise. Nothing is marked as better known than it was.
pub(super) fn keep_meaning(sheet: &mut Worksheet) {
    // A regulated alternator, direct to the bank. What follows looks at these.
    keep(sheet, key!(reg.kind), RegulatorKind::External.to_value());
    keep(sheet, key!(way.kind), WayKind::Direct.to_value());
    let mut left_out: Vec<(Key, Value)> = vec![
        // The engine was started at 30 %, whatever the bank was made of.
        (key!(rule.start_pct), Value::Number(30.0)),
        // One mass for every alternator.
        (key!(alt.mass_kg), Value::Number(6.0)),
        (key!(alt2.mass_kg), Value::Number(6.0)),
        // One engine space for every engine.
        (key!(eng.surface_w_k), Value::Number(18.0)),
        (key!(space.wall_w_k), Value::Number(12.0)),
        (key!(space.leak_m3h), Value::Number(15.0)),
        (key!(space.heat_capacity_kj_k), Value::Number(30.0)),
        // One size of DC-DC charger for every alternator.
        (key!(way.converter_a), Value::Number(40.0)),
        // Amounts bore no sign.
        (key!(cost.currency), Currency::Plain.to_value()),
        // The heat of every alternator divided in one way of several that are now
        // thought possible.
        (key!(alt.coupling_w_k), Value::Number(6.0)),
        (key!(alt2.coupling_w_k), Value::Number(6.0)),
        (
            key!(alt.rectifier_air_pct),
            Value::Number(RECTIFIER_AIR_PCT),
        ),
        (
            key!(alt2.rectifier_air_pct),
            Value::Number(RECTIFIER_AIR_PCT),
        ),
        (key!(alt.still_air_pct), Value::Number(15.0)),
        (key!(alt2.still_air_pct), Value::Number(15.0)),
        (key!(alt.cooling_exponent), Value::Number(0.7)),
        (key!(alt2.cooling_exponent), Value::Number(0.7)),
        // A bank lasted as long as its cycles did.
        (key!(cost.calendar_years), Value::Number(100.0)),
        // A built-in regulator held the bank's charge voltage, hot or cold.
        (key!(reg.drop_mv_k), Value::Number(0.0)),
    ];
    // An alternator was of the voltage of the battery it was led to, whatever
    // voltage its rating was said to be taken at.
    for (key, which) in [
        (key!(alt.nominal_v), WhichAlternator::First),
        (key!(alt2.nominal_v), WhichAlternator::Second),
    ] {
        let installed = sheet.inputs.alternator(which);
        let led_to = installed
            .filter(|installed| !installed.fits())
            .and_then(|installed| AlternatorVolts::of_blocks(installed.battery_blocks()));
        left_out.extend(led_to.map(|volts| (key, volts.to_value())));
    }
    keep_lead_limits(sheet);
    if sheet.inputs.bank.charge_limit_a.is_none() {
        left_out.push((LIMIT, old_limit(&sheet.inputs.bank)));
    }
    if sheet.inputs.first_alternator().built_in_on_house() {
        left_out.push((key!(reg.fixed_v), Value::Number(sheet.inputs.charge_v())));
    }
    for (key, value) in left_out {
        keep(sheet, key, value);
    }
    for which in WhichAlternator::ALL {
        keep_anchor(sheet, which);
    }
}

/// Rectifier to air, in hundredths of winding to air: 3.2 to 3 \[%\].
const RECTIFIER_AIR_PCT: f64 = 320.0 / 3.0;
/// What the winding of an alternator of usual efficiency reached on the bench \[°C\].
const ANCHOR_C: f64 = 150.0;

/// States the winding's temperature on the bench that gives an alternator the
/// cooling it had. It is told of an alternator with its own losses.
fn keep_anchor(sheet: &mut Worksheet, which: WhichAlternator) {
    let installed = sheet.inputs.as_described(which);
    let winding_c = winding_cooled_as_usual_c(&installed, ANCHOR_C);
    keep(
        sheet,
        which.key(Alternator::anchor_winding_c),
        Value::Number(winding_c),
    );
}

/// States the old value of an input that was left out.
fn keep(sheet: &mut Worksheet, key: Key, value: Value) {
    if !sheet.is_said(key) {
        sheet.inputs.put(key, value);
        sheet.know(key, Confidence::Guess);
    }
}

/// Most charge current of the house bank.
const LIMIT: Key = key!(bank.charge_limit_a);

/// What a limit left out meant in version 1: a lead bank had none but what it
/// takes by itself, written as one ampere for each ampere-hour.
fn old_limit(bank: &Bank) -> Value {
    if bank.chemistry.lead().is_some() {
        Value::Number(bank.capacity_ah)
    } else {
        Value::Absent
    }
}

/// States the old charge limit of a lead bank in the arrangements, where they have
/// another bank than the boat.
fn keep_lead_limits(sheet: &mut Worksheet) {
    if sheet.inputs.bank.charge_limit_a.is_some() {
        return;
    }
    let boats = old_limit(&sheet.inputs.bank);
    let limits: Vec<Value> = sheet
        .arrangements
        .iter()
        .map(|one| old_limit(&one.on(sheet).inputs.bank))
        .collect();
    for (one, limit) in sheet.arrangements.iter_mut().zip(limits) {
        let said = one.changes.iter().any(|(changed, _)| *changed == LIMIT);
        if !said && limit != boats {
            one.put(LIMIT, Some(limit));
        }
    }
}
