//! The air near the alternator where it comes to, from a log that is long enough.

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::model::Trial;
use crate::numerics::mean_and_deviation;

/// By how much the air is still to rise above its mean in the last fifth \[K\], if
/// the last three fifths approach a temperature step by step: A. C. Aitken's
/// Δ² process (Proc. Royal Society of Edinburgh 46, 289–305, 1926; from memory).
pub(super) fn still_to_rise_k(trial: &Trial, last_c: f64) -> f64 {
    /// More than that is not believed \[K\].
    const MOST_K: f64 = 5.0;
    let last_s = trial.seconds(trial.rows.last());
    let mean_c = |from: f64, to: f64| {
        let within = trial.rows.iter().filter(|row| {
            let seconds = trial.seconds(Some(row));
            (from * last_s..to * last_s).contains(&seconds)
        });
        mean_and_deviation(within.filter_map(|row| row.get(Column::Air))).map(|(mean, _)| mean)
    };
    let (Some(first_c), Some(then_c)) = (mean_c(0.4, 0.6), mean_c(0.6, 0.8)) else {
        return 0.0;
    };
    let (before_k, last_k) = (then_c - first_c, last_c - then_c);
    if last_k <= 0.0 || before_k <= last_k {
        return 0.0;
    }
    let ratio = last_k / before_k;
    (last_k * ratio / (1.0 - ratio)).min(MOST_K)
}

/// Least time after which the air near the machine is about as hot as it gets \[s\].
const LATE_S: f64 = 25.0 * 60.0;

/// Readings of the air in the last fifth, if that is late enough.
pub(super) fn late_air(trial: &Trial) -> Option<Vec<f64>> {
    let last_s = trial.seconds(trial.rows.last());
    let late: Vec<f64> = trial
        .rows
        .iter()
        .filter(|row| trial.seconds(Some(row)) >= 0.8 * last_s)
        .filter_map(|row| row.get(Column::Air))
        .collect();
    (last_s >= LATE_S && !late.is_empty()).then_some(late)
}
