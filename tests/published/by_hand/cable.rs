//! Cables and fuses worked by hand.

use ampwright_core::physics::ampacity::{engine_factor, gauge_a, metric_a};
use ampwright_core::physics::cable::{
    GAUGES, Gauge, METRICS, circular_mils, copper_c, drop_v, gauge_of_mils,
};
use ampwright_core::physics::fuse;

use crate::{near, near_part};

fn gauge(name: &str) -> Gauge {
    GAUGES
        .into_iter()
        .find(|gauge| gauge.name == name)
        .expect("a size")
}

#[test]
fn gauges() {
    let two = gauge("2/0 AWG");
    near("2/0 diameter", two.diameter_mm(), 9.266, 5e-4);
    near("2/0 area", two.mm2(), 67.43, 5e-3);
    near("2/0 mils", two.circular_mils(), 133_077.0, 0.5);
    near("2/0 ohms", two.solid_ohm_km(), 0.255_68, 5e-6);
    near("4/0 area", gauge("4/0 AWG").mm2(), 107.22, 5e-3);
    near("4/0 mils", gauge("4/0 AWG").circular_mils(), 211_600.0, 0.5);
    near("6 area", gauge("6 AWG").mm2(), 13.302, 5e-4);
    near("6 mils", gauge("6 AWG").circular_mils(), 26_251.0, 0.5);
    // 2 % for the strands, 3 % for tin: 0.25568 · 1.02 · 1.03.
    near("2/0 boat cable", two.ohm_km(true), 0.268_617, 1e-5);
}

#[test]
fn the_circular_mil_rule() {
    // 150 A, 20 ft out and back, 3 % of 12 V: 10.75 · 150 · 20/0.36.
    let mils = circular_mils(150.0, 10.0 * 0.3048, 0.36);
    near("mils", mils, 89_583.3, 0.1);
    assert_eq!(gauge_of_mils(mils), Some(gauge("1/0 AWG")));
    // The same in 2/0: 10.75 · 150 · 20/133 077.
    let volts = 10.75 * 150.0 * 20.0 / gauge("2/0 AWG").circular_mils();
    near("2/0", volts, 0.2423, 5e-5);
    assert_eq!(gauge_of_mils(211_700.0), None);
    // Ohm's law with solid copper says the same within the rule's rounding.
    let ours = drop_v(3.048, 150.0, gauge("2/0 AWG").solid_ohm_km(), 20.0);
    near_part("physics", ours, volts, 0.05);
}

#[test]
fn loss_along_a_run() {
    // 35 mm², 5 m out and back, 100 A; 5.61 % of 12 V at 75 °C.
    let ohm_km = METRICS
        .iter()
        .find(|metric| metric.mm2 == 35.0)
        .expect("a size")
        .ohm_km(false);
    near("20 °C", drop_v(5.0, 100.0, ohm_km, 20.0), 0.554, 5e-4);
    near("75 °C", drop_v(5.0, 100.0, ohm_km, 75.0), 0.674, 5e-4);
    // Half the current, a quarter of the warming: 50 + 55/4.
    near("copper", copper_c(50.0, 105.0, 0.5), 63.75, 1e-9);
}

#[test]
fn what_is_left_in_an_engine_space() {
    // 330 · 0.85, and half as much again; 400 is the next rating below.
    let ampacity_a = gauge_a(gauge("2/0 AWG"), 105.0) * engine_factor(105.0, 50.0);
    near("2/0", ampacity_a, 280.5, 1e-9);
    let most_a = fuse::bounds_a(150.0, ampacity_a, 14.2).1;
    near("fuse", most_a, 420.75, 1e-9);
    let rating = fuse::RATINGS_A.into_iter().rfind(|a| *a <= most_a);
    assert_eq!(rating, Some(400.0));
    // At 80 °C: √(25/75).
    near("80 °C", engine_factor(105.0, 80.0), 0.577_35, 1e-5);
    near("105 °C", engine_factor(105.0, 105.0), 0.0, 0.0);
}

#[test]
fn metric_sizes_by_the_gauge_below() {
    // 70 mm² holds 2/0 (67.4), 95 holds 3/0 (85.0), 35 holds 2 (33.6), 25 holds 4 (21.2).
    for (mm2, amperes) in [
        (1.5, 25.0),
        (25.0, 160.0),
        (35.0, 210.0),
        (70.0, 330.0),
        (95.0, 385.0),
        (300.0, 445.0),
        (1.0, 0.0),
    ] {
        near("metric", metric_a(mm2, 105.0), amperes, 0.0);
    }
}

#[test]
fn a_short_at_the_posts() {
    // 500 A·h of 0.8 Ω·A·h are 1.6 mΩ, and 0.5 mΩ of lead: 13.2/0.0021.
    let amperes = fuse::short_circuit_a(13.2, 0.8 / 500.0, 0.5e-3);
    near("500 A·h", amperes, 6285.7, 0.1);
    assert_eq!(fuse::breaks_ka(amperes, fuse::LITHIUM_KA), Some(10.0));
    assert_eq!(fuse::breaks_ka(amperes, 2.0), Some(10.0));
    assert_eq!(fuse::breaks_ka(14_000.0, fuse::LITHIUM_KA), Some(20.0));
    assert_eq!(fuse::breaks_ka(120_000.0, fuse::LITHIUM_KA), None);
}
