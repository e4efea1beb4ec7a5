//! A measured 14 V, 180 A machine: D. Sarafianos et al., "Characterisation and
//! modelling of automotive Lundell alternators", 2015; points as digitised in
//! a public repository (first line of each file), the paper itself not seen.

use ampwright_core::Worksheet;
use ampwright_core::boat::Key;
use ampwright_core::physics::copper;
use ampwright_core::physics::losses::{COPPER_FACTOR, LossModel, RatedLosses};
use ampwright_core::physics::output::{OutputCurve, through_points};
use ampwright_core::schema::Value;

use crate::by_hand::fit;
use crate::table::{between, exponent, rows};
use crate::{near, near_part, within};

const OUTPUT: &str = include_str!("data/sarafianos2015_max_output.csv");
const FRICTION: &str = include_str!("data/sarafianos2015_friction_windage.csv");
const IRON: &str = include_str!("data/sarafianos2015_iron_loss_open_circuit.csv");
const LOADED: &str = include_str!("data/sarafianos2015_dc_load_points.csv");

fn output_points() -> Vec<(f64, f64)> {
    rows::<2>(OUTPUT)
        .iter()
        .map(|row| (row[0], row[1]))
        .collect()
}

/// The machine as ours, with a given loss in fan and bearings at 6000 rpm \[W\].
fn machine(fan_w: f64) -> (OutputCurve, LossModel) {
    let curve = fit::curve(&output_points(), 13.5);
    let loss_w = 13.5 * 180.0 * (1.0 / 0.57 - 1.0);
    let rated = RatedLosses {
        rated_a: 180.0,
        efficiency: 0.57,
        field_w: 72.0,
        iron_share: 0.15,
        fan_share: fan_w / loss_w,
        fan_exponent: Worksheet::default().inputs.alt.fan_exponent,
    };
    (curve, LossModel::calibrate(&rated, &curve))
}

#[test]
fn output_curve_fits() {
    let points = output_points();
    let curve = fit::curve(&points, 13.5);
    let (of_most, of_each) = fit::errors(&curve, &points);
    println!(
        "180 A machine: I∞ {:.1} A, n₀ {:.0} rpm, rms {of_most:.2} % of the largest, {of_each:.2} % of each",
        curve.infinite_a, curve.zero_rpm
    );
    within("rms %", of_most, 0.0, 0.9);
    within("n₀", curve.zero_rpm, 1515.0, 1535.0);
}

#[test]
fn two_points_give_the_third() {
    let (infinite_a, zero_rpm) = through_points((2000.0, 120.0), (6000.0, 180.0)).expect("a curve");
    let curve = OutputCurve {
        infinite_a,
        zero_rpm,
        ..fit::curve(&output_points(), 13.5)
    };
    near_part(
        "4000 rpm",
        curve.full_field_a(4000.0, 13.5, 25.0),
        170.0,
        0.015,
    );
}

#[test]
fn friction_and_windage() {
    let points: Vec<(f64, f64)> = rows::<2>(FRICTION).iter().map(|r| (r[0], r[1])).collect();
    let measured = exponent(&points);
    println!("friction and windage: exponent {measured:.3}");
    within("measured exponent", measured, 1.33, 1.40);
    let (curve, model) = machine(91.0);
    near(
        "ours",
        Worksheet::default().inputs.alt.fan_exponent,
        measured,
        0.07,
    );
    for (rpm, watts) in points {
        let ours = model.at_speed(&curve, rpm).at(0.0, 13.5).fan_w;
        println!("  {rpm:.0} rpm: {watts} W, ours {ours:.1} W");
        near_part("fan and bearings", ours, watts, 0.165);
    }
}

#[test]
fn iron_loss_against_speed() {
    let all = rows::<3>(IRON);
    for field_a in [1.5, 2.0, 2.25, 2.5] {
        let points: Vec<(f64, f64)> = [2000.0, 4000.0, 6000.0, 8000.0]
            .into_iter()
            .map(|rpm| {
                let at_speed: Vec<(f64, f64)> = all
                    .iter()
                    .filter(|row| row[0] == rpm)
                    .map(|row| (row[1], row[2]))
                    .collect();
                (rpm, between(&at_speed, field_a))
            })
            .collect();
        let measured = exponent(&points);
        println!("iron loss at {field_a} A of field: exponent {measured:.3}");
        near("iron exponent", 1.5, measured, 0.11);
    }
    // At full field our flux is that of the rating, so that speed alone is left.
    let (curve, model) = machine(91.0);
    let ours: Vec<(f64, f64)> = [2000.0, 4000.0, 6000.0, 8000.0]
        .into_iter()
        .map(|rpm| {
            let amperes = curve.full_field_a(rpm, 13.5, 25.0);
            (rpm, model.at_speed(&curve, rpm).at(amperes, 13.5).iron_w)
        })
        .collect();
    near("our iron exponent", exponent(&ours), 1.5, 1e-6);
}

#[test]
fn rectifier_drop_and_phase_current() {
    let usual = Worksheet::default().inputs.alt.diode_v;
    for [rpm, dc_a, dc_v, _, line_v, line_a] in rows::<6>(LOADED) {
        // Six-step line voltage: √(2/3)·(V + 2·Vd) rms.
        let drop_v = 0.5 * (line_v * 1.5_f64.sqrt() - dc_v);
        let share = line_a / dc_a;
        println!("{rpm:.0} rpm, {dc_a:.0} A: drop {drop_v:.3} V, phase rms over dc {share:.4}");
        if rpm < 3000.0 {
            // Near the beginning current flows with gaps and neither holds.
            continue;
        }
        near("drop of one diode", usual, drop_v, 0.07);
        near_part("phase rms", (COPPER_FACTOR / 3.0).sqrt(), share, 0.025);
    }
}

#[test]
fn field_power() {
    // 1.90 Ω at 20 °C, 13.5 V across it, the rotor at 100 °C.
    let measured_w = 13.5 * 13.5 / (1.90 * copper::ratio(100.0));
    let mut sheet = Worksheet::default();
    let key = Key::named("alt_rated_a").expect("a key");
    sheet.state(key, Value::Number(180.0)).expect("in range");
    println!(
        "field: measured {measured_w:.1} W, ours {:.1} W",
        sheet.inputs.first_alternator().field_w()
    );
    near_part(
        "field",
        sheet.inputs.first_alternator().field_w(),
        measured_w,
        0.05,
    );
}
