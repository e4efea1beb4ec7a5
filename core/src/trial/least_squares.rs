//! Least squares for curves that are not straight: K. Levenberg, "A method for
//! the solution of certain non-linear problems in least squares", Quarterly of
//! Applied Mathematics 2, 164–168, 1944; D. W. Marquardt, "An algorithm for
//! least-squares estimation of nonlinear parameters", J. SIAM 11(2), 431–441,
//! 1963. Bounds are kept by stopping at them.

use crate::physics::linear::Factors;

/// What is to be made small, and within which limits.
#[derive(Debug, Clone, Copy)]
pub struct Search<const N: usize> {
    /// Where to begin. Parameters are scaled: a change of one is a large one.
    pub start: [f64; N],
    /// Lowest and highest value of each.
    pub bounds: [(f64, f64); N],
    /// Which may move.
    pub free: [bool; N],
}

/// The least that was found.
#[derive(Debug, Clone)]
pub struct Least<const N: usize> {
    /// The parameters.
    pub at: [f64; N],
    /// What is left of each residual there.
    pub residuals: Vec<f64>,
}

/// Difference that slopes are taken over, in scaled units.
const NUDGE: f64 = 0.03;
/// Rounds after which even a hopeless case ends.
const MOST_ROUNDS: usize = 40;

/// Makes the sum of the squares of `residuals` as small as the bounds allow.
/// The number of residuals may not depend on the parameters.
pub fn least<const N: usize>(
    residuals: &impl Fn(&[f64; N]) -> Vec<f64>,
    search: &Search<N>,
) -> Least<N> {
    let bounds = &search.bounds;
    let mut at: [f64; N] = std::array::from_fn(|i| match search.free[i] {
        true => search.start[i].max(bounds[i].0).min(bounds[i].1),
        false => search.start[i],
    });
    let mut here = residuals(&at);
    let mut cost = square(&here);
    let mut damping = 1e-3;
    for _ in 0..MOST_ROUNDS {
        let slopes = slopes(residuals, &at, &here, bounds, &search.free);
        let normal = normal(&slopes);
        let fall: [f64; N] =
            std::array::from_fn(|i| -slopes.iter().zip(&here).map(|(s, r)| s[i] * r).sum::<f64>());
        // What would only be pushed against its bound stays there.
        let moves: [bool; N] = std::array::from_fn(|i| {
            let (low, high) = bounds[i];
            search.free[i] && !(at[i] <= low && fall[i] < 0.0 || at[i] >= high && fall[i] > 0.0)
        });
        let before = cost;
        while damping < 1e9 {
            let stepped = step(&normal, &fall, &moves, damping).map(|step| {
                let to: [f64; N] = std::array::from_fn(|i| match moves[i] {
                    true => (at[i] + step[i]).max(bounds[i].0).min(bounds[i].1),
                    false => at[i],
                });
                (to, residuals(&to))
            });
            match stepped {
                Some((to, there)) if square(&there) < cost => {
                    (at, cost, here) = (to, square(&there), there);
                    damping = (damping * 0.2).max(1e-9);
                    break;
                }
                _ => damping *= 5.0,
            }
        }
        if before - cost <= 1e-7 * before {
            break;
        }
    }
    Least {
        at,
        residuals: here,
    }
}

/// How each residual changes with each free parameter, by small differences.
pub fn slopes<const N: usize>(
    residuals: &impl Fn(&[f64; N]) -> Vec<f64>,
    at: &[f64; N],
    here: &[f64],
    bounds: &[(f64, f64); N],
    free: &[bool; N],
) -> Vec<[f64; N]> {
    let mut slopes = vec![[0.0; N]; here.len()];
    for i in (0..N).filter(|i| free[*i]) {
        let nudge = if at[i] + NUDGE > bounds[i].1 {
            -NUDGE
        } else {
            NUDGE
        };
        let mut moved = *at;
        moved[i] += nudge;
        for ((row, there), here) in slopes.iter_mut().zip(residuals(&moved)).zip(here) {
            row[i] = (there - here) / nudge;
        }
    }
    slopes
}

/// Slopes times slopes, summed over the residuals: the normal matrix.
pub fn normal<const N: usize>(slopes: &[[f64; N]]) -> [[f64; N]; N] {
    std::array::from_fn(|i| {
        std::array::from_fn(|j| slopes.iter().map(|slopes| slopes[i] * slopes[j]).sum())
    })
}

fn step<const N: usize>(
    normal: &[[f64; N]; N],
    fall: &[f64; N],
    moves: &[bool; N],
    damping: f64,
) -> Option<[f64; N]> {
    let both = |i: usize, j: usize| moves[i] && moves[j];
    let matrix = std::array::from_fn(|i| {
        std::array::from_fn(|j| match (i == j, both(i, j)) {
            // A parameter nothing depends on stays where it is.
            (true, true) => normal[i][i] * (1.0 + damping) + 1e-9,
            (true, false) => 1.0,
            (false, true) => normal[i][j],
            (false, false) => 0.0,
        })
    });
    let right = std::array::from_fn(|i| if moves[i] { fall[i] } else { 0.0 });
    let step = Factors::of(matrix)?.solve(&right);
    step.iter().all(|step| step.is_finite()).then_some(step)
}

fn square(residuals: &[f64]) -> f64 {
    residuals.iter().map(|r| r * r).sum()
}

#[cfg(test)]
mod tests {
    use super::{Search, least};

    /// H. H. Rosenbrock, "An automatic method for finding the greatest or
    /// least value of a function", Computer Journal 3, 175–184, 1960: the
    /// curved valley, least at (1, 1), begun where he began.
    fn valley(bounds: [(f64, f64); 2], free: [bool; 2]) -> [f64; 2] {
        let residuals = |x: &[f64; 2]| vec![10.0 * (x[1] - x[0] * x[0]), 1.0 - x[0]];
        let search = Search {
            start: [-1.2, 1.0],
            bounds,
            free,
        };
        least(&residuals, &search).at
    }

    #[test]
    fn the_curved_valley() {
        let [x, y] = valley([(-5.0, 5.0); 2], [true; 2]);
        assert!((x - 1.0).abs() < 1e-3 && (y - 1.0).abs() < 2e-3, "{x} {y}");
    }

    #[test]
    fn bounds_are_kept() {
        // By hand: with x no more than 0.5, y follows x² to 0.25.
        let [x, y] = valley([(-5.0, 0.5), (-5.0, 5.0)], [true; 2]);
        assert!(x == 0.5 && (y - 0.25).abs() < 1e-3, "{x} {y}");
    }

    #[test]
    fn what_is_not_free_stays() {
        let [x, y] = valley([(-5.0, 5.0); 2], [true, false]);
        assert_eq!(y, 1.0);
        assert!((x - 1.0).abs() < 0.01 || (x + 1.0).abs() < 0.02, "{x}");
    }
}
