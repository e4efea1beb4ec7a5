//! Whether ranges hold what they promise: for many boats whose truth is known, how
//! often the range that is told of eight cases in ten holds it, before a trial
//! and after one.
//!
//! `own` draws the truth from what each figure may be, with this model; `other`
//! has alternators with another thermal network, which this model cannot follow.
//! The test asks some of them, the bench 500.

pub mod other;
pub mod own;
mod random;
mod told;

use ampwright_core::Worksheet;
use ampwright_core::boat::{AirBasis, Chemistry, Key, RegulatorKind, WayKind};
use ampwright_core::schema::{FieldType, Value};

pub use told::Coverage;

fn set(sheet: &mut Worksheet, name: &str, value: Value) {
    let key = Key::named(name).expect("a key");
    sheet.state(key, value).expect("in its range");
    // As known as it is when nobody has looked.
    sheet.know(key, ampwright_core::schema::Confidence::Guess);
}

/// A regulated alternator straight to a large lithium bank, in a space whose hot
/// air was guessed.
fn direct(rated_a: f64) -> Worksheet {
    let mut sheet = Worksheet::default();
    set(&mut sheet, "reg_kind", RegulatorKind::External.to_value());
    set(&mut sheet, "way_kind", WayKind::Direct.to_value());
    set(&mut sheet, "space_basis", AirBasis::Measured.to_value());
    set(&mut sheet, "alt_rated_a", Value::Number(rated_a));
    set(&mut sheet, "bank_capacity_ah", Value::Number(600.0));
    set(&mut sheet, "bank_charge_limit_a", Value::Number(600.0));
    set(&mut sheet, "run_from_pct", Value::Number(20.0));
    sheet
}

/// The boats whose figures are moved.
pub fn boats() -> Vec<(&'static str, Worksheet)> {
    let mut large = direct(200.0);
    set(&mut large, "alt_efficiency_pct", Value::Number(61.0));
    let mut modelled = direct(120.0);
    set(&mut modelled, "space_basis", AirBasis::Modelled.to_value());
    let mut lead = direct(90.0);
    set(&mut lead, "bank_chemistry", Chemistry::Agm.to_value());
    set(&mut lead, "bank_charge_limit_a", Value::Absent);
    vec![
        ("100 A, lithium", direct(100.0)),
        ("200 A, lithium", large),
        ("120 A, air calculated", modelled),
        ("90 A, AGM", lead),
    ]
}
