//! Laws of lead batteries, all from memory or as commonly restated: the
//! ampere-hour law (J. L. Woodbridge, 1935: amperes no more than the
//! ampere-hours missing); W. Peukert, Elektrotechnische Zeitschrift 20, 1897;
//! J. F. Manwell, J. G. McGowan, "Lead acid battery storage model for hybrid
//! energy systems", Solar Energy 50(5), 1993.

use std::f64::consts::LN_10;

use ampwright_core::physics::battery::{
    AGM, FLOODED, GEL, ampere_hour_law, compensated_v, peukert_hours, two_well_capacity_ah,
};

use crate::{near, within};

#[test]
fn woodbridge() {
    // Restated as 90 % of the missing charge in 2 to 3 h; ln 10 = 2.3026 h.
    near("90 %", ampere_hour_law(LN_10, 1.0), 0.90, 1e-5);
    within(
        "2 to 3 h",
        0.90,
        ampere_hour_law(2.0, 1.0),
        ampere_hour_law(3.0, 1.0),
    );
    near(
        "200 A·h missing, 1 h",
        200.0 * ampere_hour_law(1.0, 1.0),
        126.42,
        0.01,
    );
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

#[test]
fn manwell_and_mcgowan() {
    let capacity = |hours: f64| two_well_capacity_ah(120.0, 0.3, 0.6, hours);
    near("20 h", capacity(20.0), 100.47, 0.01);
    near("1 h", capacity(1.0), 43.56, 0.01);
    near("endless", capacity(1e9), 120.0, 1e-3);
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
