//! Laws of lead batteries, all from memory or as commonly restated: the
//! ampere-hour law (J. L. Woodbridge, 1935: amperes no more than the
//! ampere-hours missing); W. Peukert, Elektrotechnische Zeitschrift 20, 1897.

use std::f64::consts::LN_10;

use ampwright_core::physics::battery::{AGM, FLOODED, GEL, LeadKind, compensated_v, peukert_hours};

use crate::{near, within};

/// The law as it stands: a tail of one hour, and no other limit.
const BY_THE_LAW: LeadKind = LeadKind {
    appetite: 100.0,
    tail_h: 1.0,
    ..FLOODED
};

/// Hours until a part of 200 missing ampere-hours is in, or all that fit in
/// `most_h`, with what is in then \[A·h\]: the bank's own acceptance, in small steps.
fn charged(until_ah: f64, most_h: f64) -> (f64, f64) {
    const STEP_H: f64 = 1e-5;
    let (mut hours, mut in_ah) = (0.0, 0.0);
    while in_ah < until_ah && hours < most_h {
        in_ah += STEP_H * BY_THE_LAW.acceptance_a(200.0, in_ah / 200.0);
        hours += STEP_H;
    }
    (hours, in_ah)
}

#[test]
fn woodbridge() {
    near(
        "amperes are the ampere-hours missing",
        BY_THE_LAW.acceptance_a(200.0, 0.0),
        200.0,
        1e-9,
    );
    // Restated as 90 % of the missing charge in 2 to 3 h; by hand ln 10 hours.
    let (hours, _) = charged(180.0, 10.0);
    within("2 to 3 h", hours, 2.0, 3.0);
    near("90 %", hours, LN_10, 1e-3);
    let (_, in_ah) = charged(200.0, 1.0);
    near("200 A·h missing, 1 h", in_ah, 126.42, 0.01);
}

#[test]
fn peukert() {
    let hours = peukert_hours(100.0, 20.0, 20.0, 1.25);
    near("20 A from 100 A·h in 20 h", hours, 3.5355, 1e-4);
    near("A·h", 20.0 * hours, 70.71, 0.01);
    near(
        "at its rated current",
        peukert_hours(100.0, 20.0, 5.0, 1.25),
        20.0,
        1e-9,
    );
}

/// −4 mV for each cell and kelvin, six cells: common practice, no source.
#[test]
fn temperature_compensation() {
    near("40 °C", compensated_v(14.4, 1.0, -4.0, 40.0), 14.04, 1e-9);
    near("10 °C", compensated_v(14.4, 1.0, -4.0, 10.0), 14.76, 1e-9);
}

/// Bands of common practice, no source.
#[test]
fn usual_lead() {
    within("flooded V", FLOODED.absorption_v, 14.4, 14.8);
    within("AGM V", AGM.absorption_v, 14.2, 14.6);
    within("gel V", GEL.absorption_v, 14.1, 14.2);
    within("AGM appetite", AGM.appetite, 0.3, 0.5);
    for kind in [FLOODED, AGM, GEL] {
        within("A·h returned", kind.efficiency, 0.85, 0.95);
        // Full appetite until 50 to 80 % is in.
        let taper = 1.0 - kind.appetite * kind.tail_h;
        within("taper begins", taper, 0.5, 0.8);
    }
}
