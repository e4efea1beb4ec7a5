//! What a diesel generator burns, against the chart of approximate consumption that
//! many dealers of generators print alike: gallons (US) an hour at a quarter, half,
//! three quarters and full load. It is coarse: from 20 to 30 kW its fuel at full
//! load grows by four fifths.

use ampwright_core::physics::generator::{FOOT, part_load_l_h, usual_full_l_h};

use crate::near_part;

/// A US gallon \[L\].
const GALLON_L: f64 = 3.785_411_784;

/// Rating \[kW\], loads and gallons an hour.
type Row = (f64, &'static [(f64, f64)]);

const CHART: [Row; 3] = [
    (8.0, &[(0.5, 0.39), (0.75, 0.54), (1.0, 0.69)]),
    (20.0, &[(0.25, 0.6), (0.5, 0.9), (0.75, 1.3), (1.0, 1.6)]),
    (30.0, &[(0.25, 1.3), (0.5, 1.8), (0.75, 2.4), (1.0, 2.9)]),
];

#[test]
fn fuel_by_the_kilowatts_alone() {
    for (rated_kw, row) in CHART {
        let part = if rated_kw < 10.0 { 0.12 } else { 0.27 };
        for (load, gallons) in row {
            let ours_l_h = part_load_l_h(usual_full_l_h(rated_kw), FOOT, *load);
            let what = format!("{rated_kw} kW at {load}");
            near_part(&what, ours_l_h, gallons * GALLON_L, part);
        }
    }
}

#[test]
fn part_load_with_the_full_load_known() {
    for (rated_kw, row) in CHART {
        let full = row.iter().find(|(load, _)| *load == 1.0);
        let full_l_h = full.expect("a full load").1 * GALLON_L;
        for (load, gallons) in row {
            let ours_l_h = part_load_l_h(full_l_h, FOOT, *load);
            let what = format!("{rated_kw} kW at {load}");
            near_part(&what, ours_l_h, gallons * GALLON_L, 0.17);
        }
    }
}
