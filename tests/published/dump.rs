//! Load dump: ISO 16750-2, tests A and B, and its internal resistance, as
//! several makers of test equipment and J. KIEES 30(8), table 1, restate
//! them; the standard itself was not at hand.

use ampwright_core::physics::dump::{internal_ohm, open_peak_v, standard_pulse};

use crate::{near, within};

#[test]
fn iso_16750_2_pulses() {
    let twelve = standard_pulse(1.0).expect("12 V");
    assert_eq!(twelve.peak_v, (79.0, 101.0));
    assert_eq!(twelve.ohm, (0.5, 4.0));
    assert_eq!(twelve.decay_s, (0.04, 0.4));
    assert_eq!(twelve.clamped_v, 35.0);
    let twentyfour = standard_pulse(2.0).expect("24 V");
    assert_eq!(twentyfour.peak_v, (151.0, 202.0));
    assert_eq!(twentyfour.ohm, (1.0, 8.0));
    assert_eq!(twentyfour.decay_s, (0.1, 0.35));
    within("clamp", twentyfour.clamped_v, 58.0, 65.0);
    assert_eq!(standard_pulse(4.0), None);
}

#[test]
fn iso_16750_2_internal_resistance() {
    near(
        "14 V, 100 A, 6000",
        internal_ohm(14.0, 6000.0, 100.0),
        0.875,
        1e-9,
    );
    near("at 3000", internal_ohm(14.0, 3000.0, 100.0), 0.4375, 1e-9);
    near("200 A", internal_ohm(14.0, 6000.0, 200.0), 0.4375, 1e-9);
}

/// Our own estimate reaches what the standard tests with, at a quick shaft.
#[test]
fn our_peak_is_of_the_standards_order() {
    for (rpm, blocks) in [(6600.0, 1.0), (8000.0, 1.0), (6600.0, 2.0), (8000.0, 2.0)] {
        let (low_v, high_v) = standard_pulse(blocks).expect("a pulse").peak_v;
        let ours = open_peak_v(14.0 * blocks, 0.9, rpm, 1400.0, 1.0);
        within("peak", ours, 0.95 * low_v, 1.05 * high_v);
    }
}
