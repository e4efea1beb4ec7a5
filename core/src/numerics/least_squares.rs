//! Least squares for curves that are not straight: K. Levenberg, "A method for
//! the solution of certain non-linear problems in least squares", Quarterly of
//! Applied Mathematics 2, 164–168, 1944; D. W. Marquardt, "An algorithm for
//! least-squares estimation of nonlinear parameters", J. SIAM 11(2), 431–441,
//! 1963. Bounds are kept by stopping at them.

/// What is to be made small, and within which limits.
#[derive(Debug, Clone)]
pub struct Search {
    /// Where to begin. Parameters are scaled: a change of one is a large one.
    pub start: Vec<f64>,
    /// Lowest and highest value of each.
    pub bounds: Vec<(f64, f64)>,
    /// Which may move.
    pub free: Vec<bool>,
}

/// The least that was found.
#[derive(Debug, Clone)]
pub struct Least {
    /// The parameters.
    pub at: Vec<f64>,
    /// What is left of each residual there.
    pub residuals: Vec<f64>,
}

/// Residuals at some parameters; always as many.
pub type Residuals<'a> = &'a dyn Fn(&[f64]) -> Vec<f64>;

/// Difference that slopes are taken over, in scaled units.
const NUDGE: f64 = 0.03;
/// Rounds after which even a hopeless case ends.
const MOST_ROUNDS: usize = 40;

/// Makes the sum of the squares of `residuals` as small as the bounds allow.
pub fn least(residuals: Residuals, search: &Search) -> Least {
    let bounds = &search.bounds;
    let inside = |i: usize, value: f64| match bounds.get(i) {
        Some((low, high)) if search.free[i] => value.max(*low).min(*high),
        _ => search.start[i],
    };
    let mut at: Vec<f64> = search.start.clone();
    for (i, value) in at.iter_mut().enumerate() {
        *value = inside(i, *value);
    }
    let mut here = residuals(&at);
    let mut cost = square(&here);
    let mut damping = 1e-3;
    for _ in 0..MOST_ROUNDS {
        let slopes = slopes(residuals, &at, &here, bounds, &search.free);
        let normal = normal(&slopes);
        let fall: Vec<f64> = slopes.iter().map(|slope| -dot(slope, &here)).collect();
        // What would only be pushed against its bound stays there.
        let moves: Vec<bool> = (0..at.len())
            .map(|i| {
                let (low, high) = bounds[i];
                search.free[i] && !(at[i] <= low && fall[i] < 0.0 || at[i] >= high && fall[i] > 0.0)
            })
            .collect();
        let before = cost;
        while damping < 1e9 {
            let to = step(&normal, &fall, &moves, damping).map(|step| {
                let moved = |i: usize| inside(i, at[i] + step[i]);
                (0..at.len()).map(moved).collect::<Vec<f64>>()
            });
            let there = to.as_ref().map(|to| residuals(to));
            match (to, there) {
                (Some(to), Some(there)) if square(&there) < cost => {
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

/// How the residuals change with each parameter, a column each, by small
/// differences; nought for those that are not free.
pub fn slopes(
    residuals: Residuals,
    at: &[f64],
    here: &[f64],
    bounds: &[(f64, f64)],
    free: &[bool],
) -> Vec<Vec<f64>> {
    let mut moved = at.to_vec();
    let column = |i: usize| {
        if !free[i] {
            return vec![0.0; here.len()];
        }
        let nudge = if at[i] + NUDGE > bounds[i].1 {
            -NUDGE
        } else {
            NUDGE
        };
        moved[i] = at[i] + nudge;
        let mut there = residuals(&moved);
        moved[i] = at[i];
        for (there, here) in there.iter_mut().zip(here) {
            *there = (*there - here) / nudge;
        }
        there
    };
    (0..at.len()).map(column).collect()
}

/// Slopes times slopes, summed over the residuals: the normal matrix.
pub fn normal(slopes: &[Vec<f64>]) -> Vec<Vec<f64>> {
    let row = |a: &Vec<f64>| slopes.iter().map(|b| dot(a, b)).collect();
    slopes.iter().map(row).collect()
}

/// Solves a symmetric system whose matrix makes only positive squares, by the
/// root of A.-L. Cholesky (published by C. Benoit, Bulletin géodésique 2, 1924);
/// `None` for any other.
pub fn solve(matrix: &[Vec<f64>], right: &[f64]) -> Option<Vec<f64>> {
    let mut root: Vec<Vec<f64>> = Vec::new();
    let mut x: Vec<f64> = Vec::new();
    for (i, given) in matrix.iter().enumerate() {
        let mut row: Vec<f64> = Vec::new();
        for above in &root {
            let known = dot(&row, above);
            row.push((given[row.len()] - known) / above[row.len()]);
        }
        let square = given[i] - dot(&row, &row);
        if !(square > 0.0 && square.is_finite()) {
            return None;
        }
        let known = dot(&row, &x);
        row.push(square.sqrt());
        x.push((right[i] - known) / square.sqrt());
        root.push(row);
    }
    for i in (0..x.len()).rev() {
        x[i] /= root[i][i];
        for k in 0..i {
            x[k] -= root[i][k] * x[i];
        }
    }
    x.iter().all(|x| x.is_finite()).then_some(x)
}

fn step(normal: &[Vec<f64>], fall: &[f64], moves: &[bool], damping: f64) -> Option<Vec<f64>> {
    let mut matrix = normal.to_vec();
    let mut right = fall.to_vec();
    for (i, row) in matrix.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate() {
            if !(moves[i] && moves[j]) {
                *cell = 0.0;
            }
        }
        if moves[i] {
            // A parameter nothing depends on stays where it is.
            row[i] = row[i] * (1.0 + damping) + 1e-9;
        } else {
            (row[i], right[i]) = (1.0, 0.0);
        }
    }
    solve(&matrix, &right)
}

/// Sum of products, as far as both go.
fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn square(residuals: &[f64]) -> f64 {
    dot(residuals, residuals)
}

#[cfg(test)]
mod tests {
    use crate::numerics::least_squares::{Search, least, solve};

    /// H. H. Rosenbrock, "An automatic method for finding the greatest or
    /// least value of a function", Computer Journal 3, 175–184, 1960: the
    /// curved valley, least at (1, 1), begun where he began.
    fn valley(bounds: [(f64, f64); 2], free: [bool; 2]) -> [f64; 2] {
        let residuals = |x: &[f64]| vec![10.0 * (x[1] - x[0] * x[0]), 1.0 - x[0]];
        let search = Search {
            start: vec![-1.2, 1.0],
            bounds: bounds.to_vec(),
            free: free.to_vec(),
        };
        let at = least(&residuals, &search).at;
        [at[0], at[1]]
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

    #[test]
    fn systems_that_can_be_solved() {
        // By hand: 4·1 + 2·2 = 8, 2·1 + 3·2 = 8.
        let x = solve(&[vec![4.0, 2.0], vec![2.0, 3.0]], &[8.0, 8.0]).expect("solvable");
        assert!(
            (x[0] - 1.0).abs() < 1e-12 && (x[1] - 2.0).abs() < 1e-12,
            "{x:?}"
        );
        assert!(solve(&[vec![1.0, 2.0], vec![2.0, 4.0]], &[1.0, 1.0]).is_none());
    }
}
