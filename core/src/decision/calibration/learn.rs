//! Which figures of the model a log can tell.
//!
//! Every figure that could be corrected has a spread in which it is believed
//! to lie before the trial. The slopes of the residuals against the figures,
//! in units of those spreads, give the spread that is left after it. A figure
//! whose spread the log halves at least is fitted; the others stay as they
//! are, and what is not known of them widens the spread of those that are.
//! (Own reasoning on the usual normal equations of least squares.)

use crate::numerics::least_squares::{normal, solve};
use crate::numerics::mean_and_deviation;

/// How many figures could be corrected.
pub(super) const FIGURES: usize = 6;
/// Their places: cooling, heat capacity, own warm air, walls, start, heat from
/// winding to case.
pub(super) const COOLING: usize = 0;
pub(super) const CAPACITY: usize = 1;
pub(super) const RECIRCULATION: usize = 2;
pub(super) const WALLS: usize = 3;
pub(super) const START: usize = 4;
pub(super) const COUPLING: usize = 5;

/// Figures in units of their spreads, 0 for the worksheet's.
pub(super) type Scaled = [f64; FIGURES];

/// A figure is told if no more than this part of its spread is left.
const TOLD: f64 = 0.5;

/// How far model and thermometer may part in ways that no number of readings
/// averages out \[K\], and how many such ways a run has room for.
const TREND_K: f64 = 1.0;
const TRENDS: f64 = 4.0;
/// Thermometers on a boat are not believed closer \[K\].
const LEAST_K: f64 = 0.5;

/// Square of the standard deviation of one reading \[K²\], as if the readings
/// at so many times were independent: what no averaging helps against, and
/// the scatter of the residuals. Those that run in stretches instead of
/// scattering count for fewer: their square is multiplied by
/// (1 + r)/(1 − r), r their correlation with the next one (G. V. Bayley, J. M.
/// Hammersley, "The effective number of independent observations in an
/// autocorrelated time series", Suppl. J. Royal Statistical Society 8,
/// 184–197, 1946; from memory).
pub(super) fn square_k(times: usize, residuals: &[f64]) -> f64 {
    let trends = TREND_K * TREND_K / TRENDS * times as f64;
    let Some((mean, deviation)) = mean_and_deviation(residuals.iter().copied()) else {
        return trends.max(LEAST_K * LEAST_K);
    };
    let together: f64 = residuals
        .windows(2)
        .map(|pair| pair.iter().map(|r| r - mean).product::<f64>())
        .sum();
    let square = deviation * deviation * residuals.len() as f64;
    let alike = (together / square.max(1e-12)).clamp(0.0, 0.9);
    let of_all = mean * mean + deviation * deviation;
    of_all.max(LEAST_K * LEAST_K) * (1.0 + alike) / (1.0 - alike) + trends
}

/// Which figures slopes can tell, with readings of such a square uncertainty \[K²\],
/// and what is left of each spread.
///
/// Own warm air hardly differs from worse cooling. Where it is not told, the
/// cooling is that which goes with the worksheet's share of it.
pub(super) fn learn(
    slopes: &[Vec<f64>],
    square_k: f64,
    possible: &[bool; FIGURES],
) -> ([bool; FIGURES], Scaled) {
    let matrix = normal(slopes);
    let mut asked = *possible;
    let mut left = left(&matrix, square_k, &asked);
    if left[RECIRCULATION] > TOLD {
        asked[RECIRCULATION] = false;
        left = self::left(&matrix, square_k, &asked);
    }
    let told =
        std::array::from_fn(|figure| figure == START || asked[figure] && left[figure] <= TOLD);
    (told, left)
}

/// What is left of each spread: the normal equations with the spreads before.
fn left(matrix: &[Vec<f64>], square_k: f64, asked: &[bool; FIGURES]) -> Scaled {
    let mut rows = matrix.to_vec();
    for (i, row) in rows.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate() {
            let both = asked[i] && asked[j];
            *cell = if both { *cell / square_k } else { 0.0 };
        }
        row[i] += 1.0;
    }
    let mut left = [1.0; FIGURES];
    for (figure, left) in left.iter_mut().enumerate() {
        let mut unit = [0.0; FIGURES];
        unit[figure] = 1.0;
        if let Some(spread) = solve(&rows, &unit) {
            *left = spread[figure].max(0.0).sqrt();
        }
    }
    left
}

#[cfg(test)]
mod tests {
    use crate::decision::calibration::learn::{CAPACITY, COOLING, FIGURES, RECIRCULATION, learn};

    const ALL: [bool; FIGURES] = [true; FIGURES];

    /// By hand: with slopes of one each in a direction of their own, m readings
    /// of square uncertainty m leave 1/√2 of a spread, of m/3 just a half.
    #[test]
    fn spreads_that_are_left() {
        let mut slopes = vec![vec![0.0; 6]; FIGURES];
        slopes[COOLING] = vec![1.0; 6];
        let (told, left) = learn(&slopes, 6.0, &ALL);
        assert!((left[COOLING] - 0.5f64.sqrt()).abs() < 1e-12 && !told[COOLING]);
        let (told, left) = learn(&slopes, 1.99, &ALL);
        assert!(left[COOLING] < 0.5 && told[COOLING] && !told[CAPACITY]);
        assert_eq!(left[CAPACITY], 1.0);
    }

    #[test]
    fn what_looks_alike_is_not_told_apart() {
        let mut slopes = vec![vec![0.0; 50]; FIGURES];
        slopes[COOLING] = vec![3.0; 50];
        slopes[RECIRCULATION] = vec![-3.0; 50];
        let (told, _) = learn(&slopes, 1.0, &ALL);
        assert!(told[COOLING] && !told[RECIRCULATION]);
        slopes[RECIRCULATION][..25].fill(3.0);
        let (told, _) = learn(&slopes, 1.0, &ALL);
        assert!(told[COOLING] && told[RECIRCULATION]);
    }
}
