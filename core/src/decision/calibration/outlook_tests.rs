//! Where the case is heading, against examples worked by hand.

use crate::decision::calibration::columns::{COLUMNS, Column};
use crate::decision::calibration::log::Row;
use crate::decision::calibration::outlook::{Outlook, outlook};

fn rows(points: &[(f64, f64)]) -> Vec<Row> {
    let row = |(minute, case_c): &(f64, f64)| {
        let mut figures = [None; COLUMNS];
        figures[Column::Case as usize] = Some(*case_c);
        Row::new(1, *minute, figures)
    };
    points.iter().map(row).collect()
}

/// By hand: from 30 °C towards 110 °C with a time constant of 10 min,
/// T = 110 − 80·exp(−t/10). At 10 min it is 110 − 80/e = 80.57 °C and rises by
/// 8/e = 2.94 K/min. 105 °C is there when 80·exp(−t/10) = 5, that is at
/// t = 10·ln 16 = 27.73 min: 17.73 min after the last reading. A straight line
/// would say 24.43/2.94 = 8.3 min.
#[test]
fn an_approach_worked_by_hand() {
    let points: Vec<(f64, f64)> = (0..=10)
        .map(f64::from)
        .map(|minute| (minute, 110.0 - 80.0 * (-minute / 10.0).exp()))
        .collect();
    let Outlook::Rises {
        k_min,
        earliest_min,
        likely_min: Some(likely_min),
        latest_min,
    } = outlook(&rows(&points), 105.0)
    else {
        panic!("{:?}", outlook(&rows(&points), 105.0));
    };
    // The time constants tried lie 7 % apart.
    assert!((k_min - 2.943).abs() < 0.05, "{k_min}");
    assert!((likely_min - 17.73).abs() < 1.5, "{likely_min}");
    assert!((8.3..17.73).contains(&earliest_min), "{earliest_min}");
    assert!(latest_min.is_none_or(|latest| latest > 17.73));
    // Far below the steady value the answer is narrow: 90 °C is there when
    // 80·exp(−t/10) = 20, at 10·ln 4 = 13.86 min.
    let Outlook::Rises {
        earliest_min,
        latest_min: Some(latest_min),
        ..
    } = outlook(&rows(&points), 90.0)
    else {
        panic!("{:?}", outlook(&rows(&points), 90.0));
    };
    assert!(earliest_min <= 3.86 && 3.86 <= latest_min);
    assert!(latest_min - earliest_min < 2.0);
    // It never gets to 125 °C.
    assert!(matches!(
        outlook(&rows(&points), 125.0),
        Outlook::LevelsOff { at_c } if (at_c - 110.0).abs() < 2.0
    ));
}

/// By hand: 60 °C and 66 °C two minutes apart are 3 K/min; 105 °C is 39 K on,
/// 13 min at the earliest. Two readings do not tell whether the rise flattens.
#[test]
fn two_readings_give_the_earliest_time_only() {
    let Outlook::Rises {
        earliest_min,
        latest_min,
        ..
    } = outlook(&rows(&[(4.0, 60.0), (6.0, 66.0)]), 105.0)
    else {
        panic!();
    };
    assert!((earliest_min - 13.0).abs() < 1e-6, "{earliest_min}");
    assert_eq!(latest_min, None);
}

#[test]
fn what_is_no_rise_is_told_as_what_it_is() {
    let of = |points: &[(f64, f64)]| outlook(&rows(points), 105.0);
    assert_eq!(of(&[]), Outlook::TooFew);
    assert_eq!(of(&[(3.0, 60.0)]), Outlook::TooFew);
    assert_eq!(of(&[(3.0, 60.0), (3.0, 62.0)]), Outlook::TooFew);
    assert_eq!(
        of(&[(3.0, 60.0), (9.0, 105.0)]),
        Outlook::Reached { case_c: 105.0 }
    );
    let steady = [(20.0, 98.0), (23.0, 99.0), (26.0, 98.0), (29.0, 98.5)];
    assert!(matches!(of(&steady), Outlook::Steady { .. }));
    let Outlook::Falls { k_min, .. } = of(&[(20.0, 98.0), (22.0, 96.0), (24.0, 94.0)]) else {
        panic!();
    };
    assert!((k_min - 1.0).abs() < 1e-6, "{k_min}");
}

/// The regulator has cut the current: what came long before no longer counts.
#[test]
fn the_latest_readings_count() {
    let mut points = vec![(0.0, 30.0), (5.0, 70.0), (10.0, 95.0)];
    points.extend((25..40).step_by(3).map(|minute| (f64::from(minute), 101.0)));
    assert_eq!(
        outlook(&rows(&points), 105.0),
        Outlook::Steady { case_c: 101.0 }
    );
}
