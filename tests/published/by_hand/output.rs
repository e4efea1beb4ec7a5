//! The output curve and the split of losses, by hand.

use ampwright_core::Worksheet;
use ampwright_core::physics::losses::{COPPER_FACTOR, LossModel, RatedLosses};
use ampwright_core::physics::output::{OutputCurve, through_points, through_rating};

use crate::{near, near_part};

fn curve(infinite_a: f64, zero_rpm: f64) -> OutputCurve {
    OutputCurve {
        infinite_a,
        zero_rpm,
        test_v: 14.0,
        rotor_c: 25.0,
        diode_v: 0.9,
        field_exponent: 0.8,
        speed_exponent: 0.3,
    }
}

#[test]
fn through_two_points() {
    let (infinite_a, zero_rpm) = through_points((1800.0, 60.0), (6000.0, 100.0)).expect("a curve");
    near("I∞", infinite_a, 103.12, 0.01);
    near("n₀", zero_rpm, 1463.9, 0.1);
    let curve = curve(infinite_a, zero_rpm);
    let cold = |rpm: f64| curve.full_field_a(rpm, 14.0, 25.0);
    near("3000", cold(3000.0), 90.01, 0.01);
    near("2500", cold(2500.0), 83.59, 0.01);
    // Rotor at 125 °C, exponents 0.8 and 0.3.
    let hot = |rpm: f64| curve.full_field_a(rpm, 14.0, 125.0);
    near(
        "x",
        14.0 * curve.at_speed(3000.0).field_per_v(125.0),
        0.7218,
        1e-4,
    );
    near("3000 hot", hot(3000.0), 66.96, 0.02);
    near("6000 hot", hot(6000.0), 76.51, 0.02);
    near("1800 hot", hot(1800.0), 35.14, 0.02);
}

#[test]
fn no_curve_through_nonsense() {
    for (slow, fast) in [
        ((1800.0, 60.0), (1800.0, 100.0)),
        ((1800.0, 100.0), (6000.0, 60.0)),
        ((1800.0, 60.0), (6000.0, 60.0)),
        ((6000.0, 60.0), (1800.0, 100.0)),
    ] {
        assert_eq!(through_points(slow, fast), None, "{slow:?} {fast:?}");
    }
}

#[test]
fn through_the_rating() {
    let (infinite_a, zero_rpm) = through_rating(100.0, 6000.0, 1400.0);
    near("I∞", infinite_a, 102.84, 0.01);
    let curve = curve(infinite_a, zero_rpm);
    near("1800", curve.full_field_a(1800.0, 14.0, 25.0), 64.64, 0.01);
    near("3000", curve.full_field_a(3000.0, 14.0, 25.0), 90.95, 0.01);
}

#[test]
fn pulleys() {
    let mut inputs = Worksheet::default().inputs;
    inputs.alt.pulley_ratio = 160.0 / 65.0;
    near(
        "850",
        inputs.first_alternator().shaft_rpm(850.0),
        2092.0,
        0.5,
    );
    near(
        "1500",
        inputs.first_alternator().shaft_rpm(1500.0),
        3692.0,
        0.5,
    );
}

#[test]
fn copper_loss() {
    near(
        "20 mΩ, 100 A",
        COPPER_FACTOR * 0.020 * 100.0 * 100.0,
        328.99,
        0.01,
    );
    // 14 V, 100 A, 55 %: loss 1145.45 W, diodes 180, field 50, iron 171.8, fan 114.5.
    let rated = RatedLosses {
        rated_a: 100.0,
        efficiency: 0.55,
        field_w: 50.0,
        iron_share: 0.15,
        fan_share: 0.10,
        fan_exponent: 1.4,
    };
    let (infinite_a, zero_rpm) = through_rating(100.0, 6000.0, 1550.0);
    let curve = curve(infinite_a, zero_rpm);
    let model = LossModel::calibrate(&rated, &curve);
    assert!(model.plausible);
    near("R at 20 °C", 1000.0 * model.phase_20c_ohm, 28.25, 0.01);
    // At the rating the flux is that of the rating and everything adds up again.
    let losses = model
        .at_speed(&curve, 6000.0)
        .at(100.0, 14.0)
        .with(110.0, 25.0);
    near("copper", losses.copper_w, 629.1, 0.1);
    near("diodes", losses.diode_w, 180.0, 1e-9);
    near("iron", losses.iron_w, 171.8, 0.1);
    near("fan", losses.fan_w, 114.5, 0.1);
    near("field", losses.field_w, 50.0, 1e-6);
    near("all", losses.total_w(), 1145.45, 0.01);
}

/// Hot over cold full-field output (rotor 25 to 125 °C, stator 45 to 145 °C)
/// worked out from one machine's measured saturation and a stepped bridge:
/// derived, not measured hot. Ours is too low near the curve's beginning.
#[test]
fn hot_over_cold() {
    let derived = [
        (1800.0, 0.747, 0.13),
        (2000.0, 0.763, 0.07),
        (2500.0, 0.778, 0.03),
        (3000.0, 0.783, 0.03),
        (4000.0, 0.788, 0.03),
        (6000.0, 0.784, 0.03),
    ];
    let curve = OutputCurve {
        field_exponent: 0.75,
        speed_exponent: 0.17,
        ..curve(185.0, 1524.0)
    };
    for (rpm, theirs, part) in derived {
        let ours = curve.full_field_a(rpm, 14.0, 125.0) / curve.full_field_a(rpm, 14.0, 25.0);
        println!("{rpm} rpm: hot over cold {ours:.3}, derived {theirs}");
        near_part("hot over cold", ours, theirs, part);
    }
}
