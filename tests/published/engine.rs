//! Friction of a diesel: J. B. Heywood, "Internal Combustion Engine
//! Fundamentals", 1988, section 13.6 (constants from memory), and the Willans
//! line drawn through it.

use ampwright_core::physics::fuel::{friction_kpa, friction_kw, willans};

use crate::near;

#[test]
fn direct_injection_1_5_l() {
    // 1.5 L, stroke 84 mm, 1500 rpm.
    let kpa = friction_kpa(75.0, 1500.0, 84.0);
    near("pressure", kpa, 154.06, 0.01);
    let kw = friction_kw(kpa, 1.5, 1500.0);
    near("power", kw, 2.889, 0.001);
    let line = willans(kw, 0.42, 42.7, 0.84);
    near("no load", line.idle_l_h, 0.690, 0.001);
    near("slope", line.slope_l_h_kw, 0.2390, 0.0001);
    // 150 A at 14.2 V, alternator 55 %, belt 96 %.
    let shaft_kw = 150.0 * 14.2 / 0.55 / 0.96 / 1000.0;
    near(
        "charging",
        line.idle_l_h + line.slope_l_h_kw * shaft_kw,
        1.654,
        0.001,
    );
    near(
        "electrical kWh",
        line.slope_l_h_kw / 0.96 / 0.55,
        0.4526,
        0.0002,
    );
}

#[test]
fn pre_chamber_1_0_l() {
    // 1.0 L, stroke 75 mm, 1200 rpm, C₁ 110.
    let kpa = friction_kpa(110.0, 1200.0, 75.0);
    near("pressure", kpa, 171.2, 0.05);
    let kw = friction_kw(kpa, 1.0, 1200.0);
    near("power", kw, 1.712, 0.001);
    near(
        "no load",
        willans(kw, 0.42, 42.7, 0.84).idle_l_h,
        0.409,
        0.001,
    );
}

#[test]
fn plain_efficiency() {
    // 35 % of 42.7 MJ/kg: 240.9 g for each kWh.
    let line = willans(0.0, 0.35, 42.7, 0.84);
    near("g/kWh", line.slope_l_h_kw * 840.0, 240.9, 0.05);
    near("L/kWh", line.slope_l_h_kw, 0.2868, 0.0001);
}
