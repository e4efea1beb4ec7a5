//! The output formula against a bridge stepped through time: three sine
//! voltages behind inductances, six diodes, a stiff battery.

use std::f64::consts::PI;

use ampwright_core::physics::losses::COPPER_FACTOR;
use ampwright_core::physics::output::OutputCurve;

use crate::{near, near_part, within};

const POLE_PAIRS: f64 = 6.0;
const HENRY: f64 = 110e-6;
const BATTERY_V: f64 = 14.0;
const DIODE_V: f64 = 0.9;

/// Flux linkages whose voltages are 41.5 and 60.3 V at 6000 rpm \[V·s\].
const WEAK: f64 = 0.011;
const STRONG: f64 = 0.016;

fn radians_s(rpm: f64) -> f64 {
    2.0 * PI * POLE_PAIRS * rpm / 60.0
}

/// Mean direct current and rms phase current \[A\] of the last of 12 periods.
///
/// Each leg sits at V + Vd with current flowing out and at −Vd with current
/// flowing in; the change is spread over a twentieth of an ampere.
fn stepped(rpm: f64, linkage: f64, ohm: f64) -> (f64, f64) {
    const STEPS: usize = 12_000;
    const PERIODS: usize = 12;
    let omega = radians_s(rpm);
    let peak_v = linkage * omega;
    let step_s = 2.0 * PI / omega / STEPS as f64;
    let mut phase_a = [0.0_f64; 3];
    let (mut charge, mut square) = (0.0, 0.0);
    for step in 0..PERIODS * STEPS {
        let angle = omega * step as f64 * step_s;
        let side = phase_a.map(|a| (a / 0.05).tanh());
        let leg_v = side.map(|s| 0.5 * BATTERY_V + (0.5 * BATTERY_V + DIODE_V) * s);
        let star_v = leg_v.iter().sum::<f64>() / 3.0;
        if step >= (PERIODS - 1) * STEPS {
            let dc_a: f64 = (0..3).map(|k| phase_a[k] * 0.5 * (1.0 + side[k])).sum();
            charge += dc_a;
            square += phase_a[0] * phase_a[0];
        }
        for k in 0..3 {
            let emf_v = peak_v * (angle - 2.0 * PI / 3.0 * k as f64).sin();
            phase_a[k] += step_s / HENRY * (emf_v - ohm * phase_a[k] - (leg_v[k] - star_v));
        }
    }
    (charge / STEPS as f64, (square / STEPS as f64).sqrt())
}

/// The curve of those voltages and inductances without resistance:
/// I∞ = (3/π)·λ/L with λ = E/ω, and n₀ where E = (2/π)·(V + 2·Vd).
fn ours(rpm: f64, linkage: f64) -> f64 {
    let peak_v = linkage * radians_s(rpm);
    let fundamental_v = 2.0 / PI * (BATTERY_V + 2.0 * DIODE_V);
    let curve = OutputCurve {
        infinite_a: 3.0 / PI * linkage / HENRY,
        zero_rpm: rpm * fundamental_v / peak_v,
        test_v: BATTERY_V,
        rotor_c: 25.0,
        diode_v: DIODE_V,
        field_exponent: 0.75,
        speed_exponent: 0.17,
    };
    curve.full_field_a(rpm, BATTERY_V, 25.0)
}

#[test]
fn stepping_agrees_with_another_program() {
    // Worked independently with other steps and another diode.
    near_part("6000", stepped(6000.0, STRONG, 0.0).0, 136.58, 0.005);
    near_part("6000, R", stepped(6000.0, WEAK, 0.035).0, 89.83, 0.005);
    near_part("3000", stepped(3000.0, WEAK, 0.0).0, 80.91, 0.005);
    near_part("3000, R", stepped(3000.0, WEAK, 0.035).0, 72.52, 0.005);
    near_part("1800", stepped(1800.0, WEAK, 0.0).0, 44.27, 0.005);
}

#[test]
fn formula_by_hand() {
    near("6000", ours(6000.0, STRONG), 136.95, 0.01);
    near("6000, weak", ours(6000.0, WEAK), 92.64, 0.01);
    near("3000", ours(3000.0, WEAK), 83.50, 0.01);
    near("1800", ours(1800.0, WEAK), 56.19, 0.01);
}

#[test]
fn formula_within_3_5_percent_well_above_its_beginning() {
    for (rpm, linkage) in [
        (6000.0, STRONG),
        (6000.0, WEAK),
        (4500.0, WEAK),
        (3000.0, WEAK),
    ] {
        let off = ours(rpm, linkage) / stepped(rpm, linkage, 0.0).0 - 1.0;
        println!("{rpm} rpm: formula {:+.1} %", 100.0 * off);
        within("error", off, -0.005, 0.035);
    }
}

/// A known fault of the formula, kept in sight: near its beginning the diodes
/// conduct with gaps, and it promises about a quarter too much.
#[test]
fn formula_is_a_quarter_too_high_near_its_beginning() {
    let off = ours(1800.0, WEAK) / stepped(1800.0, WEAK, 0.0).0 - 1.0;
    println!("1800 rpm: formula {:+.1} %", 100.0 * off);
    within("error", off, 0.20, 0.35);
}

#[test]
fn copper_factor() {
    near("π²/6", COPPER_FACTOR, 1.644_93, 1e-5);
    let formula = (COPPER_FACTOR / 3.0).sqrt();
    near("phase rms over dc", formula, 0.740_48, 1e-5);
    for (rpm, linkage) in [(6000.0, STRONG), (6000.0, WEAK), (3000.0, WEAK)] {
        let (dc_a, phase_a) = stepped(rpm, linkage, 0.0);
        within("stepped ratio", phase_a / dc_a, 0.7400, 0.7425);
    }
    let (dc_a, phase_a) = stepped(1800.0, WEAK, 0.0);
    near("with gaps", phase_a / dc_a, 0.753, 0.004);
}
