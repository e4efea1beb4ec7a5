//! A boat of our own invention, to show what a filled-in worksheet looks like.

use crate::boat::{
    Basis, Injection, Key, Load, LoadRow, Month, RegulatorKind, SensorPlace, StartKept, SunBasis,
    WayKind, Worksheet, key, typical_loads,
};
use crate::schema::{FieldType, Value};

/// The demo: an invented 11 m sloop at anchor in a warm place. No figure in it
/// was measured on any boat.
pub fn demo() -> Worksheet {
    let mut sheet = Worksheet {
        name: "Demo: the invented sloop Turnstone".to_string(),
        loads: demo_loads(),
        ..Worksheet::default()
    };
    // A value out of range would leave the default; a test holds each.
    let mut say = |key: Key, value: Value| drop(sheet.state(key, value));
    say(key!(daily.basis), Basis::Listed.to_value());
    say(key!(sun.panel_w), Value::Number(260.0));
    say(key!(sun.basis), SunBasis::Place.to_value());
    say(key!(sun.latitude_deg), Value::Number(37.0));
    say(key!(sun.month), Month::October.to_value());
    say(key!(bank.capacity_ah), Value::Number(420.0));
    say(key!(way.kind), WayKind::Direct.to_value());
    say(key!(way.start_kept), StartKept::House.to_value());
    say(key!(alt.rated_a), Value::Number(120.0));
    say(key!(alt.pulley_ratio), Value::Number(2.4));
    say(key!(alt.mass_kg), Value::Number(6.4));
    say(key!(reg.kind), RegulatorKind::External.to_value());
    say(key!(reg.set_point_c), Value::Number(105.0));
    say(key!(reg.sensor), SensorPlace::Case.to_value());
    say(key!(eng.rpm), Value::Number(1400.0));
    say(key!(eng.displacement_l), Value::Number(1.3));
    say(key!(eng.injection), Injection::Chamber.to_value());
    say(key!(space.outside_c), Value::Number(29.0));
    say(key!(run.from_pct), Value::Number(40.0));
    sheet
}

fn demo_loads() -> Vec<Load> {
    let mut loads = typical_loads();
    loads.push(Load {
        name: "Watermaker".to_string(),
        row: LoadRow {
            draw: 240.0,
            hours: 1.5,
            night_pct: 0.0,
            ..LoadRow::default()
        },
    });
    loads
}
