//! Tables of cables and fuses.
//!
//! 33 CFR 183.425, Conductors: general, table 5, and 183.455, Overcurrent
//! protection: general (Code of Federal Regulations, United States; as printed
//! there). The column for engine spaces at 105 °C: the Coast Guard's electrical
//! system compliance guideline, as reprinted. IEC 60228:2004, table 3 and its
//! correction for temperature, as restated. ASTM B258, diameters in inches
//! (from memory).

use ampwright_core::physics::ampacity::{
    RATINGS_C, air_factor, engine_factor, gauge_a, iso_10133_a, metric_a,
};
use ampwright_core::physics::cable::{GAUGES, METRICS};
use ampwright_core::physics::{copper, fuse};

use crate::{near, near_part};

/// Rows as printed, from No. 16 to No. 0000, the column for 200 °C left out.
const TABLE_5: &str = "
    16   15  15  20  25  25  30
    14   20  20  25  30  35  40
    12   25  25  35  40  45  50
    10   40  40  50  55  60  70
    8    55  65  70  70  80  90
    6    80  95 100 100 120 125
    4   105 125 130 135 160 170
    3   120 145 150 155 180 195
    2   140 170 175 180 210 225
    1   165 195 210 210 245 265
    0   195 230 245 245 285 305
    -1  225 265 285 285 330 355
    -2  260 310 330 330 385 410
    -3  300 360 385 385 445 475";

#[test]
fn cfr_table_5() {
    let rows: Vec<Vec<f64>> = TABLE_5
        .trim()
        .lines()
        .map(|line| {
            let words = line.split_whitespace();
            words.map(|word| word.parse().expect("a number")).collect()
        })
        .collect();
    assert_eq!(rows.len(), GAUGES.len());
    for (row, gauge) in rows.iter().zip(GAUGES) {
        near(gauge.name, f64::from(gauge.number), row[0], 0.0);
        for (printed, rated_c) in row[1..].iter().zip(RATINGS_C) {
            near(gauge.name, gauge_a(gauge, rated_c), *printed, 0.0);
        }
    }
}

/// Whole amperes, rounded one way or the other.
#[test]
fn engine_spaces_as_reprinted() {
    let printed = [
        21.0, 30.0, 38.0, 51.0, 68.0, 102.0, 136.0, 153.0, 178.0, 208.0, 242.0, 280.0, 327.0, 378.0,
    ];
    for (gauge, printed) in GAUGES.into_iter().zip(printed) {
        let ours = gauge_a(gauge, 105.0) * engine_factor(105.0, 50.0);
        near(gauge.name, ours, printed, 0.75);
    }
}

/// Note 1, whose other factors are from memory, is what the heat balance says.
#[test]
fn note_1_and_the_heat_balance() {
    let note = [0.58, 0.75, 0.78, 0.82, 0.85, 0.89];
    for (rated_c, note) in RATINGS_C.into_iter().zip(note) {
        near("50 °C", air_factor(rated_c, 50.0), note, 0.0065);
        assert!(engine_factor(rated_c, 50.0) <= note);
    }
}

/// No metric size is given more than the standard quoted from memory gives it.
#[test]
fn metric_sizes_stay_below_iso_10133() {
    for metric in METRICS {
        if let Some(theirs) = iso_10133_a(metric.mm2) {
            assert!(metric_a(metric.mm2, 105.0) <= theirs, "{}", metric.name);
        }
    }
}

#[test]
fn iec_60228_class_5() {
    let printed = [
        (1.5, 13.3, 13.7),
        (2.5, 7.98, 8.21),
        (4.0, 4.95, 5.09),
        (6.0, 3.30, 3.39),
        (10.0, 1.91, 1.95),
        (16.0, 1.21, 1.24),
        (25.0, 0.780, 0.795),
        (35.0, 0.554, 0.565),
        (50.0, 0.386, 0.393),
        (70.0, 0.272, 0.277),
        (95.0, 0.206, 0.210),
        (120.0, 0.161, 0.164),
        (150.0, 0.129, 0.132),
        (185.0, 0.106, 0.108),
        (240.0, 0.0801, 0.0817),
        (300.0, 0.0641, 0.0654),
    ];
    assert_eq!(printed.len(), METRICS.len());
    for ((mm2, plain, tinned), metric) in printed.into_iter().zip(METRICS) {
        near("size", metric.mm2, mm2, 0.0);
        near(metric.name, metric.ohm_km(false), plain, 0.0);
        near(metric.name, metric.ohm_km(true), tinned, 0.0);
    }
}

/// The standard corrects with 0.4 % a kelvin, we with 0.393 %.
#[test]
fn iec_60228_temperature() {
    for (celsius, factor) in [(20.0, 1.0), (50.0, 0.893), (75.0, 0.820), (100.0, 0.758)] {
        near_part("to 20 °C", 1.0 / copper::ratio(celsius), factor, 0.005);
    }
}

#[test]
fn astm_b258_diameters() {
    let inches = [
        0.0508, 0.0641, 0.0808, 0.1019, 0.1285, 0.1620, 0.2043, 0.2294, 0.2576, 0.2893, 0.3249,
        0.3648, 0.4096, 0.4600,
    ];
    for (gauge, inches) in GAUGES.into_iter().zip(inches) {
        near(gauge.name, gauge.diameter_mm() / 25.4, inches, 5.1e-5);
    }
}

#[test]
fn cfr_fuse_rules() {
    // 183.455(c)(1): under 50 V, 150 % of the table.
    near("1/0", fuse::bounds_a(100.0, 285.0, 14.0).1, 427.5, 0.0);
    // (c)(2): from 50 V up the table's value, or the next rating within 150 %.
    near("a rating", fuse::bounds_a(100.0, 225.0, 50.0).1, 225.0, 0.0);
    near("the next", fuse::bounds_a(100.0, 285.0, 57.0).1, 300.0, 0.0);
    near("none near", fuse::bounds_a(1.0, 3.0, 57.0).1, 3.0, 0.0);
    // (b): 7 and 40 inches.
    near("bare", fuse::BARE_MM, 7.0 * 25.4, 1e-9);
    near("sheathed", fuse::SHEATHED_MM, 40.0 * 25.4, 1e-9);
}
