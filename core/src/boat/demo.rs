//! A boat of our own invention, to show what a filled-in worksheet looks like.

use crate::boat::{
    Basis, Injection, Key, Load, LoadRow, Month, RegulatorKind, SensorPlace, StartKept, SunBasis,
    WayKind, Worksheet, typical_loads,
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
    let mut say = |name: &str, value: Value| {
        // Every name is checked by a test; a wrong one would leave the default.
        if let Some(key) = Key::named(name) {
            let _ = sheet.state(key, value);
        }
    };
    say("daily_basis", Basis::Listed.to_value());
    say("sun_panel_w", Value::Number(260.0));
    say("sun_basis", SunBasis::Place.to_value());
    say("sun_latitude_deg", Value::Number(37.0));
    say("sun_month", Month::October.to_value());
    say("bank_capacity_ah", Value::Number(420.0));
    say("way_kind", WayKind::Direct.to_value());
    say("way_start_kept", StartKept::House.to_value());
    say("alt_rated_a", Value::Number(120.0));
    say("alt_pulley_ratio", Value::Number(2.4));
    say("alt_mass_kg", Value::Number(6.4));
    say("reg_kind", RegulatorKind::External.to_value());
    say("reg_set_point_c", Value::Number(105.0));
    say("reg_sensor", SensorPlace::Case.to_value());
    say("eng_rpm", Value::Number(1400.0));
    say("eng_displacement_l", Value::Number(1.3));
    say("eng_injection", Injection::Chamber.to_value());
    say("space_outside_c", Value::Number(29.0));
    say("run_from_pct", Value::Number(40.0));
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
