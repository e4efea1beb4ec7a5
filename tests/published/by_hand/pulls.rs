//! Belts and load dump, by hand.

use ampwright_core::physics::belt::{
    carries_w, grip, own_pull_n, rule_w, side_n, slack_n, speed_m_s, torque_nm, wrap_factor,
    wrap_rad,
};
use ampwright_core::physics::dump::{Pulse, open_peak_v};

use crate::near;

#[test]
fn a_13_mm_belt() {
    // Groove 36°, wrap 160°, friction 0.3: 0.3/sin 18° = 0.9708.
    let ratio = grip(0.3, 36.0, 160f64.to_radians());
    near("ratio", ratio, 15.045, 0.002);
    let m_s = speed_m_s(65.0, 4000.0);
    near("speed", m_s, 13.614, 0.001);
    let own_n = own_pull_n(0.11, m_s);
    near("own pull", own_n, 20.39, 0.01);
    near("slack", slack_n(450.0, own_n, ratio), 48.94, 0.01);
    near("power", carries_w(450.0, own_n, ratio, m_s), 5459.8, 1.0);
    // Its own weight takes it all: 0.11·70² is 539 N.
    near(
        "too fast",
        carries_w(450.0, own_pull_n(0.11, 70.0), ratio, 70.0),
        0.0,
        0.0,
    );
}

#[test]
fn pulleys() {
    near(
        "160/65, 300 mm",
        wrap_rad(160.0, 65.0, 300.0).to_degrees(),
        161.78,
        0.005,
    );
    near(
        "the other way round",
        wrap_rad(65.0, 160.0, 300.0),
        wrap_rad(160.0, 65.0, 300.0),
        0.0,
    );
}

#[test]
fn the_shaft_of_150_amperes() {
    // 14.2 V, 55 %.
    let shaft_w = 150.0 * 14.2 / 0.55;
    near("shaft", shaft_w, 3872.7, 0.05);
    near("torque", torque_nm(shaft_w, 4000.0), 9.245, 0.001);
    near("engine", shaft_w / 0.96, 4034.0, 0.2);
    // By the rule: six horsepower.
    near("rule", rule_w(150.0, 1.0), 6.0 * 745.7, 1e-9);
    near("24 V", rule_w(75.0, 2.0), 6.0 * 745.7, 1e-9);
}

#[test]
fn pull_on_the_shaft() {
    // Half a turn: both sides add up, 500 and 100 N.
    near(
        "half a turn",
        side_n(400.0, 5.0, std::f64::consts::PI),
        600.0,
        1e-9,
    );
    // A quarter: √(500² + 100²).
    near(
        "a quarter",
        side_n(400.0, 5.0, std::f64::consts::FRAC_PI_2),
        509.902,
        0.001,
    );
}

#[test]
fn trade_table_of_wrap() {
    // Common practice, to two places.
    for (wrap_deg, factor) in [(180.0, 1.0), (160.0, 0.95), (140.0, 0.89), (120.0, 0.82)] {
        near("factor", wrap_factor(wrap_deg), factor, 0.0051);
    }
}

#[test]
fn a_clamp_of_35_volts() {
    let pulse = Pulse {
        peak_v: 87.0,
        rest_v: 14.0,
        ohm: 0.5,
        decay_s: 0.4,
    };
    // τ = 0.17372 s; 52·τ − 21·τ·ln(73/21) = 4.488 V·s; times 35/0.5.
    near("energy", pulse.clamp_j(35.0), 314.2, 0.1);
    near("never reached", pulse.clamp_j(87.0), 0.0, 0.0);
    // At rest it takes the whole of it: 14/0.5·73·τ.
    near(
        "at rest",
        pulse.clamp_j(14.0),
        28.0 * 73.0 * 0.4 / 10f64.ln(),
        1e-6,
    );
}

#[test]
fn peaks_at_three_speeds() {
    // n₀ 1400, 14 V, 0.9 V a diode, full field.
    let peak = |rpm: f64| open_peak_v(14.0, 0.9, rpm, 1400.0, 1.0);
    near("6000", peak(6000.0), 72.87, 0.01);
    near("3300", peak(3300.0), 39.27, 0.01);
    near("8000", peak(8000.0), 97.75, 0.01);
}
