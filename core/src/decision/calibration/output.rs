//! Whether the machine gave what its output curve says, where a log shows it
//! at full field.

use serde::Serialize;

use crate::boat::{SecondRole, WayKind};
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::guess::Guess;
use crate::decision::calibration::model::Trial;
use crate::numerics::mean_and_deviation;
use crate::physics::output::through_points;
use crate::physics::thermal::Temperatures;

/// Why a log does not show whether the output curve is right.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum OutputUntold {
    /// The alternator is not alone on the house bank.
    NotAlone,
    /// There are no volts in the log.
    NoVolts,
    /// Heat, a cap, the charge voltage or the bank's limit may have held it back.
    HeldBack,
}

/// What a log says about the output curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Output {
    /// Nothing, and why.
    Untold(OutputUntold),
    /// It is right within what the log can tell.
    Agrees,
    /// This second point makes it right, in whole figures.
    Point {
        shaft_rpm: f64,
        amperes: f64,
        deviation_a: f64,
    },
    /// It is wrong, and no curve through the rating explains it; what the
    /// alternator gave, as a share of it.
    Wrong { share: f64 },
}

/// A current nearer to something else's limit than this may be held by it.
const NEAR: f64 = 0.97;
/// A sensor this close under the regulator's band, or volts this close under
/// what the regulator holds, may already hold back \[K\] \[V for each 12 V\].
const NEAR_K: f64 = 2.0;
const NEAR_V: f64 = 0.1;
/// Readings at full field that are needed.
const LEAST_READINGS: usize = 6;
/// Spread beyond which the readings do not follow one curve.
const MOST_SPREAD: f64 = 0.05;
/// Shares of the curve outside of which the machine was not at full field, or
/// is not the one on the worksheet.
const BELIEVED: (f64, f64) = (0.7, 1.2);
/// Smallest error worth mending, and least uncertainty of an ammeter and a
/// rev counter together.
const WORTH: f64 = 0.03;
const METERS: f64 = 0.02;

/// Weighs the amps of a log against the output curve, the house drawing
/// `load_a` \[A\]. The rotor is as warm as the case showed, whatever the cooling.
pub(super) fn weigh(trial: &Trial, load_a: f64) -> Output {
    let (inputs, curve) = (&trial.inputs, &trial.alternator.curve);
    if inputs.way.kind == WayKind::Converter || inputs.two.role == SecondRole::House {
        return Output::Untold(OutputUntold::NotAlone);
    }
    if trial
        .rows
        .iter()
        .all(|row| row.get(Column::Volts).is_none())
    {
        return Output::Untold(OutputUntold::NoVolts);
    }
    let near_v = NEAR_V * inputs.bank.nominal_v.blocks();
    // A bank's limit holds nothing back unless the regulator is told it.
    let linked_a = if inputs.limit_linked() {
        inputs.charge_limit_a() + load_a
    } else {
        f64::INFINITY
    };
    let bank_cap_a = inputs
        .bank_cap_a()
        .map_or(f64::INFINITY, |cap_a| cap_a + load_a);
    let others_a = trial.alternator.cap_a.min(linked_a).min(bank_cap_a);
    let run = trial.run(&Guess::of(inputs));
    let shares = trial.rows.iter().zip(run).filter_map(|(row, t)| {
        let (amperes, volts) = (row.get(Column::Amps)?, row.get(Column::Volts)?);
        let t = Temperatures {
            body_c: row.get(Column::Case)?,
            winding_c: row.get(Column::Winding).unwrap_or(t.winding_c),
            rectifier_c: row.get(Column::Rectifier).unwrap_or(t.rectifier_c),
            ..t
        };
        let held_v = trial.alternator.holds_v(&t).unwrap_or(inputs.held_v()) - near_v;
        let seconds = trial.seconds(Some(row));
        let shaft_rpm = trial.shaft_rpm(seconds);
        let (allowed, _) = trial
            .alternator
            .allowed(seconds, trial.alternator.felt_c(&t) + NEAR_K);
        let rotor_c = trial.alternator.network.rotor_c(t.body_c);
        let full_a = curve.full_field_a(shaft_rpm, volts, rotor_c);
        (allowed >= 1.0 && volts < held_v && amperes < NEAR * others_a && full_a > 1.0)
            .then(|| (shaft_rpm, amperes / full_a))
    });
    let shares: Vec<(f64, f64)> = shares.collect();
    let of_curve = mean_and_deviation(shares.iter().map(|(_, share)| *share));
    let speed = mean_and_deviation(shares.iter().map(|(rpm, _)| *rpm));
    let (Some((share, deviation)), Some((shaft_rpm, _))) = (of_curve, speed) else {
        return Output::Untold(OutputUntold::HeldBack);
    };
    if shares.len() < LEAST_READINGS || deviation > MOST_SPREAD || share < BELIEVED.0 {
        return Output::Untold(OutputUntold::HeldBack);
    }
    let error = (share - 1.0).abs();
    if error < WORTH.max(2.0 * METERS) {
        return Output::Agrees;
    }
    // What it would give cold, as the rating is understood.
    let shaft_rpm = shaft_rpm.round();
    let amperes = (share * curve.full_field_a(shaft_rpm, curve.test_v, curve.rotor_c)).round();
    let rating = (inputs.alt.rated_rpm, inputs.alt.rated_a);
    let fits = share <= BELIEVED.1
        && shaft_rpm < 0.8 * rating.0
        && through_points((shaft_rpm, amperes), rating).is_some();
    if fits {
        Output::Point {
            shaft_rpm,
            amperes,
            deviation_a: amperes * METERS.max(deviation / (shares.len() as f64).sqrt()),
        }
    } else {
        Output::Wrong { share }
    }
}
