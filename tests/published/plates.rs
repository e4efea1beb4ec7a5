//! What plates and manuals of other machines promise, and what rules have machines
//! designed for.

use ampwright_core::boat::{AirBasis, Key, Plate, RegulatorKind, WayKind};
use ampwright_core::physics::copper::ratio;
use ampwright_core::physics::output::through_points;
use ampwright_core::physics::winding::by_resistance_c;
use ampwright_core::schema::{FieldType, Value};
use ampwright_core::{Report, Worksheet, report};

use crate::{near, near_part, within};

/// An alternator of a rating with its built-in regulator on a large bank, at a speed
/// of its shaft, in air of a temperature.
fn turning(rated_a: f64, plate: Plate, shaft_rpm: f64, air_c: f64) -> Report {
    let mut sheet = Worksheet::default();
    sheet.inputs.reg.kind = RegulatorKind::Internal;
    sheet.inputs.way.kind = WayKind::Direct;
    sheet.inputs.space.basis = AirBasis::Measured;
    let ratio = sheet.inputs.alt.pulley_ratio;
    for (name, value) in [
        ("alt_plate", plate.to_value()),
        ("alt_rated_a", Value::Number(rated_a)),
        ("bank_capacity_ah", Value::Number(2000.0)),
        ("bank_charge_limit_a", Value::Number(2000.0)),
        ("eng_rpm", Value::Number(shaft_rpm / ratio)),
        ("space_hot_c", Value::Number(air_c)),
        ("space_start_c", Value::Number(air_c)),
        ("space_recirculation_pct", Value::Number(0.0)),
    ] {
        let key = Key::named(name).expect("a key");
        sheet.state(key, value).expect("in range");
    }
    report(&sheet)
}

/// What it holds, settled, of its rating \[%\].
fn settled_pct(plate: Plate, shaft_rpm: f64, air_c: f64) -> f64 {
    turning(100.0, plate, shaft_rpm, air_c)
        .analyses
        .output
        .hot_a
}

/// What it gives after five minutes from cold, of its rating \[%\].
fn warm_pct(plate: Plate, shaft_rpm: f64) -> f64 {
    let run = turning(100.0, plate, shaft_rpm, 23.0).analyses.run;
    let then = run.series.iter().find(|moment| moment.minute >= 5.0);
    then.expect("a run of five minutes").alternator_a
}

/// SAE J56-1999, which follows ISO 8854 (as restated): the rated current is what a
/// machine gives at 6000 rpm in air of 23 °C once it has settled. One of such a
/// plate does here; one whose plate is of a cold machine gives a fifth less.
#[test]
fn a_plate_taken_warm() {
    near_part("warm", settled_pct(Plate::Warm, 6000.0, 23.0), 100.0, 0.02);
    within("cold", settled_pct(Plate::Cold, 6000.0, 23.0), 75.0, 85.0);
}

/// Service manuals of three passenger cars: with engine and machine hot, in air of
/// 20 °C, a good one gives 70 % of its rating or more. Ours gives that, with its
/// plate read as cold, at 5000 rpm of the shaft.
#[test]
fn accepted_on_the_vehicle() {
    within("20 °C", settled_pct(Plate::Cold, 5000.0, 20.0), 70.0, 100.0);
}

/// US Army TM 10-3930-671-24: a machine of 45 A gives at least 41 A at 3000 rpm and
/// 45 A at 5000 after a few minutes. Ours gives less with its plate read as cold,
/// more with it read as warm: what a plate means is the user's to find out.
#[test]
fn after_a_few_minutes() {
    for (shaft_rpm, theirs_a) in [(3000.0, 41.0), (5000.0, 45.0)] {
        let theirs_pct = 100.0 * theirs_a / 45.0;
        let (cold, warm) = (
            warm_pct(Plate::Cold, shaft_rpm),
            warm_pct(Plate::Warm, shaft_rpm),
        );
        within(&format!("{shaft_rpm} rpm"), theirs_pct, cold, warm);
    }
}

/// Outboard service manual, 2001, p. 2B-17: a machine on a belt, after warm-up and at
/// 12.6 V. A curve through its points at 1000 and 5750 rpm of the engine is within
/// 5 % of those between. At 600 rpm, where the curve has not begun, it gives 21 A.
#[test]
fn a_machine_on_a_belt() {
    let (infinite_a, zero_rpm) = through_points((1000.0, 37.0), (5750.0, 52.0)).expect("a curve");
    for (rpm, theirs_a) in [
        (1500.0, 44.0),
        (2000.0, 48.0),
        (2500.0, 50.0),
        (3000.0, 51.0),
        (4000.0, 52.0f64),
    ] {
        let ours_a = infinite_a * (1.0 - (zero_rpm / rpm) * (zero_rpm / rpm)).sqrt();
        near_part(&format!("{rpm} rpm"), ours_a, theirs_a, 0.05);
    }
    within("begins at", zero_rpm, 600.0, 1000.0);
}

/// 46 CFR 111.01-15: rotating machines in engine rooms are designed for air of 50 °C,
/// the rest for 45. The hot air that is taken where nobody has measured it is up to
/// 10 K above that: an engine box is no engine room.
#[test]
fn air_of_the_engine_room() {
    let hot_c = Worksheet::default().inputs.space.hot_c;
    within("hot air", hot_c, 50.0, 60.0);
}

/// MIL-HDBK-1003/11 (1987), section 15.6.2.1: an engine gives the room up to 7 % of
/// the heat in its fuel. Ours does while it charges: its surface, 80 °C, in air of
/// 50 °C, against litres an hour of 42.7 MJ/kg and 0.84 kg/L.
#[test]
fn heat_of_the_engine() {
    let sheet = Worksheet::default();
    let day = report(&sheet).analyses.day;
    let litres_h = day.fuel_l.expect("a run") / day.engine_hours.expect("a run");
    let fuel_w = litres_h * 0.84 * 42.7e6 / 3600.0;
    let engine = &sheet.inputs;
    let room_w = engine.engine_surface_w_k() * (engine.eng.running_c - 50.0);
    within("% of the fuel", 100.0 * room_w / fuel_w, 2.0, 7.0);
}

/// Generator protection relay manual, figure 5-23: a standing machine cools half as
/// fast as a turning one. Ours a fifth as fast, through a range of 15 to 40 %: it
/// loses its fan altogether, and its winding most of its air.
#[test]
fn standing_still() {
    let standing_pct = Worksheet::default().inputs.alt.still_air_pct;
    within("standing", standing_pct, 15.0, 50.0);
}

/// IEC 60034-1 takes 235 °C below nought for where copper's resistance would vanish,
/// IEEE 112 takes 234.5 (both from memory); the coefficient of IEC 60028 at 20 °C gives
/// 234.5. Between them a winding of 150 °C differs by a quarter of a kelvin.
#[test]
fn winding_by_resistance() {
    let cold_c = 20.0;
    let by_coefficient = ratio(150.0) / ratio(cold_c);
    near(
        "150 °C",
        by_resistance_c(by_coefficient, 1.0, cold_c),
        150.0,
        0.3,
    );
    let with_234_5 = by_coefficient * (234.5 + cold_c) - 234.5;
    near("234.5", with_234_5, 150.0, 0.05);
}
