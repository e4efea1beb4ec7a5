//! A tabulated 28 V machine: M. Schmidt, R. Isermann, B. Lenzen, G. Hohenberg,
//! "Potential of regenerative braking using an integrated starter alternator",
//! SAE 2000-01-1020, as tabulated by NREL, who assume 28 V and mark it as not
//! confirmed; temperatures not stated. The paper itself not seen.

use ampwright_core::physics::losses::{LossModel, RatedLosses};

use crate::by_hand::fit;
use crate::table::rows;
use crate::{rms, within};

const MAP: &str = include_str!("data/schmidt2000_nrel_alternator_map.csv");

fn full_load() -> Vec<(f64, f64)> {
    rows::<5>(MAP)
        .iter()
        .filter(|row| row[2] == 1.0)
        .map(|row| (row[0], row[1]))
        .collect()
}

#[test]
fn output_curve_fits() {
    let points = full_load();
    let curve = fit::curve(&points, 28.0);
    let (of_most, of_each) = fit::errors(&curve, &points);
    println!(
        "28 V machine: I∞ {:.1} A, n₀ {:.0} rpm, rms {of_most:.2} % of the largest, {of_each:.2} % of each",
        curve.infinite_a, curve.zero_rpm
    );
    within("rms %", of_most, 0.0, 0.9);
    within("n₀", curve.zero_rpm, 1730.0, 1755.0);
}

/// Our efficiency less the tabulated one, in points, at loads of at least a
/// part of full: told only the rating and its efficiency, with this share of
/// the loss in fan and bearings.
fn off_points(fan_share: f64, least_load: f64) -> Vec<f64> {
    let curve = fit::curve(&full_load(), 28.0);
    let rated = RatedLosses {
        rated_a: 155.0,
        efficiency: 0.57,
        field_w: 0.4 * 155.0 * 2.0,
        iron_share: 0.15,
        fan_share,
        fan_exponent: 1.4,
    };
    let model = LossModel::calibrate(&rated, &curve);
    rows::<5>(MAP)
        .iter()
        .filter(|row| row[2] >= least_load)
        .map(|[rpm, _, _, amperes, measured]| {
            let open = model.at_speed(&curve, *rpm).at(*amperes, 28.0);
            let given_w = 28.0 * amperes;
            let ours = given_w / (given_w + open.with(110.0, 25.0).total_w());
            println!("{rpm} rpm, {amperes} A: {measured:.2}, ours {ours:.3}");
            100.0 * (ours - measured)
        })
        .collect()
}

#[test]
fn efficiency_from_half_load_up() {
    let off = rms(&off_points(0.07, 0.5));
    println!("from half load up: rms {off:.1} points");
    within("rms, points", off, 0.0, 5.0);
}

#[test]
fn efficiency_with_a_large_fan_share() {
    let off = rms(&off_points(0.11, 0.0));
    println!("fan share 11 %, all loads: rms {off:.1} points");
    within("rms, points", off, 0.0, 5.0);
}

/// A known difference, kept in sight: with the usual shares a quarter load
/// comes out some nine points too efficient, which takes the whole map beyond
/// five points.
#[test]
fn efficiency_at_a_quarter_load_is_too_high() {
    let whole = off_points(0.07, 0.0);
    let quarter: Vec<f64> = whole.iter().copied().step_by(4).collect();
    println!(
        "all loads: rms {:.1} points; a quarter: {:.1}",
        rms(&whole),
        rms(&quarter)
    );
    within("rms, points", rms(&whole), 5.0, 6.5);
    within("at a quarter load", rms(&quarter), 8.0, 11.0);
    assert!(quarter.iter().all(|off| *off > 0.0));
}
