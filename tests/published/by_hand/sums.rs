//! Sums: bank, sun and inverter, by hand.

use ampwright_core::boat::inverter_wh;
use ampwright_core::physics::battery::lfp_resistance_ohm;
use ampwright_core::physics::charging::{lost_ah, to_give_ah, warmed_h};
use ampwright_core::physics::solar::sun_wh;

use crate::near;

#[test]
fn bank() {
    let ohm = lfp_resistance_ohm(0.8, 1.0, 400.0) + 0.0015;
    near("400 A·h", 1000.0 * ohm, 3.50, 1e-9);
    near("taper begins", (14.2 - 13.36) / ohm, 240.0, 1e-6);
    // 500 A·h and 0.5 mΩ: the current of a dead short at 13.2 V.
    let short_ohm = lfp_resistance_ohm(0.8, 1.0, 500.0) + 0.0005;
    near("short", 13.2 / short_ohm, 6286.0, 0.5);
}

#[test]
fn sun() {
    near("400 W, 5 h, 75 %", sun_wh(400.0, 5.0, 0.75), 1500.0, 1e-9);
}

#[test]
fn inverter() {
    // 1000 W·h at 90 %, 12 W idle for a whole day.
    near(
        "inverter",
        inverter_wh(1000.0, 0.90, 12.0, 24.0),
        1399.1,
        0.05,
    );
}

#[test]
fn charging() {
    // Lead that keeps four fifths: 125 A·h for 100, 25 of them lost.
    near("to give", to_give_ah(100.0, 0.8), 125.0, 1e-9);
    near("lost", lost_ah(125.0, 0.8), 25.0, 1e-9);
    // Half the current is a quarter of copper's heat.
    near("warmed", warmed_h(1.0, 40.0, 80.0), 0.25, 1e-9);
}
