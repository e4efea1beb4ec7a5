//! How several sources share a current.

use crate::physics::regulator::folded;
use crate::simulation::per_alternator::PerAlternator;

/// What one gives of what is wanted of all \[A\]: as much of it as it could give
/// of what all could; nothing where they give nothing, all where it is alone.
pub(super) fn part(wanted_a: f64, own_a: f64, all_a: f64) -> f64 {
    if all_a <= 0.0 {
        0.0
    } else if own_a == all_a {
        wanted_a
    } else {
        wanted_a * own_a / all_a
    }
}

/// How near what flows is found to what the sources can give.
const ROUNDING: f64 = 1e-5;

/// What each of several gives of a current \[A\] that they share by weights, none more
/// than it can give; the first has what the others leave.
pub(super) fn shared(
    wanted_a: f64,
    able_a: &PerAlternator<f64>,
    weights: &PerAlternator<f64>,
) -> PerAlternator<f64> {
    // All that they can give: nobody holds back, and there is nothing to share.
    let all_able_a: f64 = able_a.iter().sum();
    let weights = if wanted_a > (1.0 - ROUNDING) * all_able_a {
        able_a
    } else {
        weights
    };
    let mut shares_a: PerAlternator<f64> = able_a.iter().map(|_| 0.0).collect();
    let mut open: PerAlternator<bool> = able_a.iter().map(|_| true).collect();
    let mut left_a = wanted_a;
    // Who would have to give more than it can gives what it can, and the others
    // share what is left: once for each at most.
    for _ in 0..able_a.len() {
        let sum = |of: &PerAlternator<f64>| -> f64 {
            let each = of.iter().zip(&open);
            each.map(|(one, open)| if *open { *one } else { 0.0 }).sum()
        };
        // Where nobody has a weight they share as they can give it.
        let by = if sum(weights) > 0.0 { weights } else { able_a };
        let all = sum(by);
        let mut beyond = false;
        let given_a = left_a;
        for at in (0..able_a.len())
            .filter(|at| open[*at])
            .collect::<PerAlternator<usize>>()
        {
            shares_a[at] = part(given_a, by[at], all);
            if shares_a[at] > (1.0 + ROUNDING) * able_a[at] {
                (shares_a[at], open[at], beyond) = (able_a[at], false, true);
                left_a -= able_a[at];
            }
        }
        if !beyond {
            break;
        }
    }
    let others_a: f64 = shares_a.iter().skip(1).sum();
    if let Some(first_a) = shares_a.first_mut() {
        *first_a = wanted_a - others_a;
    }
    shares_a
}

/// Band around their mean temperature across which a link that keeps alternators equally
/// warm moves the current from the warmer to the cooler one \[K\]: own reasoning.
const EQUAL_BAND_K: f64 = 10.0;

/// The part of its own that each gives so that all come to the same temperature
/// \[°C\], 0 to 1.
pub(super) fn equally_warm(sensed_c: &PerAlternator<f64>) -> PerAlternator<f64> {
    let mean_c = sensed_c.iter().sum::<f64>() / sensed_c.len() as f64;
    let parts = sensed_c.iter();
    parts
        .map(|sensed_c| folded(mean_c, EQUAL_BAND_K, *sensed_c))
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::simulation::per_alternator::PerAlternator;
    use crate::simulation::sharing::shared;

    fn told(wanted_a: f64, able_a: [f64; 2], weights: [f64; 2]) -> Vec<f64> {
        let list = |of: [f64; 2]| of.into_iter().collect::<PerAlternator<f64>>();
        shared(wanted_a, &list(able_a), &list(weights)).to_vec()
    }

    /// By hand: 60 A by 2 to 1 are 40 and 20; the first can give only 30, and the
    /// second has the other 30. All that both can give is no question of weights.
    #[test]
    fn nobody_gives_more_than_it_can() {
        assert_eq!(told(60.0, [50.0, 50.0], [2.0, 1.0]), [40.0, 20.0]);
        assert_eq!(told(60.0, [30.0, 50.0], [2.0, 1.0]), [30.0, 30.0]);
        assert_eq!(told(80.0, [30.0, 50.0], [2.0, 1.0]), [30.0, 50.0]);
        assert_eq!(told(40.0, [30.0, 50.0], [0.0, 0.0]), [15.0, 25.0]);
    }
}
