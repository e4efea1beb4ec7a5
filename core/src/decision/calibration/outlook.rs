//! Where the case temperature is heading, from the latest readings alone: when
//! it reaches a level at this rate, or that it levels off before.
//!
//! A body that warms under steady losses approaches a steady value by
//! `T = a + b·exp(−t/τ)`. The latest readings are held against that curve for
//! many time constants τ, the straight line (τ without end) among them. Every
//! curve that misses the readings by hardly more than the best one may be the
//! true one, so the answer is a range: where the readings cannot tell a curve
//! from a line, only the earliest time is certain.

use crate::analysis::{Moment, RunReport};
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::Row;
use crate::numerics::interpolate;

/// The latest readings that count: the air warms and the current falls
/// meanwhile, so older ones belong to another curve \[min\]. Own reasoning.
const WINDOW_MIN: f64 = 12.0;
/// Where that holds too few readings, so many are looked for …
const WANTED: usize = 4;
/// … and so far back \[min\].
const LONGEST_MIN: f64 = 30.0;
/// Two readings closer together tell no rate \[min\].
const LEAST_SPAN_MIN: f64 = 0.5;
/// Least scatter of a hand-held thermometer read in whole degrees \[K\]. Own
/// reasoning.
const LEAST_SCATTER_K: f64 = 0.5;
/// A curve is believed that misses the readings by no more than this many
/// squares of the scatter above the best one: two standard deviations.
const BELIEVED: f64 = 4.0;
/// A rate below this cannot be told from none: 1 K in five minutes \[K/min\].
/// Own reasoning.
const LEAST_RATE_K_MIN: f64 = 0.2;
/// A time beyond this is no answer for a trial \[min\].
const FARTHEST_MIN: f64 = 120.0;
/// Time constants that are tried \[min\]: from a winding's to a heavy case's.
const SHORTEST_TAU_MIN: f64 = 1.5;
const LONGEST_TAU_MIN: f64 = 90.0;
const TAUS: u32 = 60;

/// Where the case temperature is heading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Outlook {
    /// Too few readings of the case, or all of the same half minute.
    TooFew,
    /// The last reading is at the level or above it.
    Reached {
        /// That reading \[°C\].
        case_c: f64,
    },
    /// It cools.
    Falls {
        /// The last reading \[°C\].
        case_c: f64,
        /// How fast \[K/min\].
        k_min: f64,
    },
    /// It neither rises nor falls by what a thermometer can tell.
    Steady {
        /// The last reading \[°C\].
        case_c: f64,
    },
    /// It rises and may reach the level.
    Rises {
        /// How fast now \[K/min\].
        k_min: f64,
        /// Earliest time to the level, from the last reading \[min\].
        earliest_min: f64,
        /// Time by the curve that fits best; none where that stays below.
        likely_min: Option<f64>,
        /// Latest time; none where it may also level off below.
        latest_min: Option<f64>,
    },
    /// It rises and levels off below.
    LevelsOff {
        /// Where, by the curve that fits best \[°C\].
        at_c: f64,
    },
}

/// Where the case is heading, against a level \[°C\]. Times count from the last
/// reading of the case.
pub fn outlook(rows: &[Row], level_c: f64) -> Outlook {
    let points = latest(rows);
    let (Some(first), Some(last)) = (points.first(), points.last()) else {
        return Outlook::TooFew;
    };
    let case_c = last.1;
    if case_c >= level_c {
        return Outlook::Reached { case_c };
    }
    if last.0 - first.0 < LEAST_SPAN_MIN {
        return Outlook::TooFew;
    }
    // Times before the last reading are negative.
    let points: Vec<(f64, f64)> = points.iter().map(|(t, c)| (t - last.0, *c)).collect();
    let believed = believed(&points);
    let Some(best) = best(&believed) else {
        return Outlook::TooFew;
    };
    let k_min = best.rate_k_min();
    if k_min < -LEAST_RATE_K_MIN {
        let k_min = -k_min;
        return Outlook::Falls { case_c, k_min };
    }
    if k_min <= LEAST_RATE_K_MIN {
        return Outlook::Steady { case_c };
    }
    let times = || believed.iter().map(|curve| curve.reaches_min(level_c));
    let Some(earliest_min) = times().flatten().reduce(f64::min) else {
        let at_c = best.settles_c().unwrap_or(case_c);
        return Outlook::LevelsOff { at_c };
    };
    Outlook::Rises {
        k_min,
        earliest_min,
        likely_min: best.reaches_min(level_c),
        latest_min: times().try_fold(0.0, |latest: f64, time| time.map(|time| latest.max(time))),
    }
}

/// The case as the charging run was calculated \[°C\], at a minute of it; none
/// beyond its end.
pub fn calculated_case_c(run: &RunReport, minute: f64) -> Option<f64> {
    let case = |moment: &Moment| Some((moment.minute, moment.alternators.first()?.case_c));
    let points: Vec<(f64, f64)> = run.series.iter().filter_map(case).collect();
    let (last, _) = points.last()?;
    (minute <= *last).then(|| interpolate(&points, minute))?
}

/// The latest readings of the case, by time; those of one moment averaged.
fn latest(rows: &[Row]) -> Vec<(f64, f64)> {
    let mut all: Vec<(f64, f64)> = rows
        .iter()
        .filter_map(|row| Some((row.minute, row.get(Column::Case)?)))
        .collect();
    all.sort_by(|one, other| one.0.total_cmp(&other.0));
    let mean = |alike: &[(f64, f64)]| {
        let sum: f64 = alike.iter().map(|(_, case_c)| case_c).sum();
        let (minute, _) = alike.first()?;
        Some((*minute, sum / alike.len() as f64))
    };
    let all: Vec<(f64, f64)> = all.chunk_by(|a, b| a.0 == b.0).filter_map(mean).collect();
    let last_min = all.last().map_or(0.0, |(minute, _)| *minute);
    let back = |minutes: f64| all.partition_point(|(minute, _)| *minute < last_min - minutes);
    let wanted = all.len().saturating_sub(WANTED);
    let from = back(WINDOW_MIN).min(wanted.max(back(LONGEST_MIN)));
    all.get(from..).unwrap_or_default().to_vec()
}

/// `T = a + b·exp(−t/τ)`, or a straight line where τ is none.
#[derive(Debug, Clone, Copy)]
struct Curve {
    tau_min: Option<f64>,
    a: f64,
    b: f64,
    /// Sum of the squares of what it misses the readings by \[K²\].
    missed_k2: f64,
}

impl Curve {
    /// The best of a time constant; none where the readings determine none.
    fn of(points: &[(f64, f64)], tau_min: Option<f64>) -> Option<Curve> {
        let shape = |t: f64| tau_min.map_or(t, |tau| (-t / tau).exp());
        let count = points.len() as f64;
        let mean = |of: fn(&(f64, f64), f64) -> f64| {
            let sum: f64 = points.iter().map(|point| of(point, shape(point.0))).sum();
            sum / count
        };
        let (mean_c, mean_x) = (mean(|point, _| point.1), mean(|_, x| x));
        let (mut across, mut square) = (0.0, 0.0);
        for (t, case_c) in points {
            let x = shape(*t) - mean_x;
            across += x * (case_c - mean_c);
            square += x * x;
        }
        let b = across / square;
        let a = mean_c - b * mean_x;
        let missed = points.iter().map(|(t, c)| (a + b * shape(*t) - c).powi(2));
        let curve = Curve {
            tau_min,
            a,
            b,
            missed_k2: missed.sum(),
        };
        (square > 0.0 && curve.missed_k2.is_finite()).then_some(curve)
    }

    /// Rate at the last reading \[K/min\].
    fn rate_k_min(&self) -> f64 {
        self.tau_min.map_or(self.b, |tau| -self.b / tau)
    }

    /// The steady value \[°C\]; none of a line.
    fn settles_c(&self) -> Option<f64> {
        self.tau_min.map(|_| self.a)
    }

    /// Time from the last reading to a level above it \[min\].
    fn reaches_min(&self, level_c: f64) -> Option<f64> {
        let time = match self.tau_min {
            None => (level_c - self.a) / self.b,
            Some(tau) => tau * (-self.b / (self.a - level_c)).ln(),
        };
        // A curve below the last reading is there at once.
        (self.rate_k_min() > 0.0 && time <= FARTHEST_MIN).then_some(time.max(0.0))
    }
}

/// Curves that may be the true one.
fn believed(points: &[(f64, f64)]) -> Vec<Curve> {
    let ratio = LONGEST_TAU_MIN / SHORTEST_TAU_MIN;
    let tau = |at: u32| SHORTEST_TAU_MIN * ratio.powf(f64::from(at) / f64::from(TAUS));
    let all: Vec<Curve> = (0..=TAUS)
        .map(|at| Some(tau(at)))
        .chain([None])
        .filter_map(|tau| Curve::of(points, tau))
        .collect();
    let Some(best) = best(&all) else {
        return all;
    };
    let spare = points.len().saturating_sub(3);
    let scatter_k2 = match spare {
        0 => LEAST_SCATTER_K.powi(2),
        spare => (best.missed_k2 / spare as f64).max(LEAST_SCATTER_K.powi(2)),
    };
    let most_k2 = best.missed_k2 + BELIEVED * scatter_k2;
    let believed = all.into_iter().filter(|curve| curve.missed_k2 <= most_k2);
    believed.collect()
}

/// The curve that misses the readings least; of equal ones the straightest.
fn best(curves: &[Curve]) -> Option<Curve> {
    let less = |best: Curve, other: Curve| match other.missed_k2 <= best.missed_k2 + 1e-9 {
        true => other,
        false => best,
    };
    curves.iter().copied().reduce(less)
}

#[cfg(test)]
#[path = "outlook_tests.rs"]
mod tests;
