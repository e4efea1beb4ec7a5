//! Stepping through time with a method that does not mind fast and slow parts
//! side by side: the six-stage Rosenbrock method RODAS of orders 4 and 3 with
//! step control (E. Hairer, G. Wanner, "Solving Ordinary Differential Equations
//! II", 2nd ed., 1996, section IV.7; coefficients from memory, their order is
//! checked by a test below); [`Blend`] interpolates inside a step.
//!
//! A regulator with a narrow band on a light, quick sensor makes an explicit
//! method take thousands of steps; this one takes some hundred.

use crate::numerics::hermite::Blend;
use crate::numerics::linear::Lu;
use crate::numerics::rodas::{A, ALPHA, C, GAMMA, STAGES, TIME};

/// A point of a solution: time \[s\], state, and the state's rate of change.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point<const N: usize> {
    /// Time \[s\].
    pub seconds: f64,
    /// State.
    pub state: [f64; N],
    /// Its rate of change \[1/s\].
    pub rate: [f64; N],
}

/// What counts as an error of one in each part of the state, and the longest step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerance<const N: usize> {
    /// Error allowed in a step.
    pub per_step: [f64; N],
    /// Whether a part feeds any other; those that do not are carried along.
    pub feeds: [bool; N],
    /// Longest step \[s\].
    pub longest_s: f64,
    /// A step this short is taken whatever its error \[s\]: the method is stable.
    pub shortest_s: f64,
}

/// How a rate changes with time alone \[1/s²\], by a small difference.
pub fn by_difference<const N: usize>(
    rate: impl Fn(f64, &[f64; N]) -> [f64; N],
) -> impl Fn(&Point<N>) -> [f64; N] {
    const SECOND: f64 = 1e-6;
    move |here| {
        let later = rate(here.seconds + SECOND, &here.state);
        std::array::from_fn(|part| (later[part] - here.rate[part]) / SECOND)
    }
}

/// Steps `rate` from `start` until `done` says so or `last_s` is reached;
/// `drift` is how the rate changes with time alone. Every step end is kept.
pub fn solve<const N: usize>(
    rate: impl Fn(f64, &[f64; N]) -> [f64; N],
    drift: impl Fn(&Point<N>) -> [f64; N],
    start: [f64; N],
    last_s: f64,
    tolerance: &Tolerance<N>,
    done: impl Fn(&Point<N>) -> bool,
) -> Vec<Point<N>> {
    /// Steps after which even a hopeless case ends.
    const MOST_STEPS: u32 = 100_000;
    /// Tries after which the shortest step grows by its own length, and again
    /// after as many more: what hovers at a corner of the output curve for
    /// hours would not end otherwise.
    const PATIENCE: u32 = 2000;
    let mut now = Point {
        seconds: 0.0,
        state: start,
        rate: rate(0.0, &start),
    };
    let mut points = vec![now];
    let mut step = (0.02 * tolerance.longest_s).min(last_s);
    let mut slopes = Slopes::at(&rate, &drift, &now, tolerance);
    let mut shortest_s = tolerance.shortest_s;
    for tries in 1..=MOST_STEPS {
        if tries % PATIENCE == 0 {
            shortest_s += tolerance.shortest_s;
        }
        if now.seconds >= last_s || done(&now) {
            break;
        }
        let reaches_end = now.seconds + step >= last_s;
        if reaches_end {
            step = last_s - now.seconds;
        }
        let tried = try_step(&rate, &now, &slopes, step);
        let worst = tried.map_or(f64::INFINITY, |(_, error)| {
            (0..N)
                .map(|part| (error[part] / tolerance.per_step[part]).abs())
                .fold(0.0, f64::max)
        });
        if let Some((state, _)) = tried
            && (worst <= 1.0 || step <= shortest_s)
        {
            let seconds = if reaches_end {
                last_s
            } else {
                now.seconds + step
            };
            now = Point {
                seconds,
                state,
                rate: rate(seconds, &state),
            };
            points.push(now);
            slopes = Slopes::at(&rate, &drift, &now, tolerance);
        }
        let factor = (0.9 * worst.max(1e-6).powf(-0.25)).clamp(0.2, 5.0);
        step = (step * factor).min(tolerance.longest_s).max(shortest_s);
    }
    points
}

/// How the rate changes with each part of the state, and with time.
struct Slopes<const N: usize> {
    state: [[f64; N]; N],
    time: [f64; N],
}

impl<const N: usize> Slopes<N> {
    /// By small differences.
    fn at(
        rate: &impl Fn(f64, &[f64; N]) -> [f64; N],
        drift: &impl Fn(&Point<N>) -> [f64; N],
        here: &Point<N>,
        tolerance: &Tolerance<N>,
    ) -> Slopes<N> {
        let mut state = [[0.0; N]; N];
        for part in 0..N {
            // What feeds nothing changes nothing.
            if !tolerance.feeds[part] {
                continue;
            }
            let nudge = 0.1 * tolerance.per_step[part];
            let mut moved = here.state;
            moved[part] += nudge;
            let there = rate(here.seconds, &moved);
            for (row, slopes) in state.iter_mut().enumerate() {
                slopes[part] = (there[row] - here.rate[row]) / nudge;
            }
        }
        Slopes {
            state,
            time: drift(here),
        }
    }
}

/// One step: the new state and the estimate of its error; `None` where the
/// step's equations cannot be solved.
fn try_step<const N: usize>(
    rate: &impl Fn(f64, &[f64; N]) -> [f64; N],
    now: &Point<N>,
    slopes: &Slopes<N>,
    step: f64,
) -> Option<([f64; N], [f64; N])> {
    let mut matrix = slopes.state.map(|row| row.map(|slope| -slope));
    for (part, row) in matrix.iter_mut().enumerate() {
        row[part] += 1.0 / (step * GAMMA);
    }
    let factors = Lu::of(matrix)?;
    let mut stages = [[0.0; N]; STAGES];
    let placed = |stages: &[[f64; N]; STAGES], weights: &[f64; STAGES - 1]| -> [f64; N] {
        std::array::from_fn(|part| {
            let moved: f64 = weights.iter().zip(stages).map(|(w, k)| w * k[part]).sum();
            now.state[part] + moved
        })
    };
    for stage in 0..STAGES {
        let there = if stage == 0 {
            now.rate
        } else {
            rate(
                now.seconds + ALPHA[stage] * step,
                &placed(&stages, &A[stage]),
            )
        };
        let right: [f64; N] = std::array::from_fn(|part| {
            let coupled: f64 = C[stage].iter().zip(&stages).map(|(c, k)| c * k[part]).sum();
            there[part] + coupled / step + step * TIME[stage] * slopes.time[part]
        });
        stages[stage] = factors.solve(&right);
    }
    let error = stages[STAGES - 1];
    let before = placed(&stages, &A[STAGES - 1]);
    let state: [f64; N] = std::array::from_fn(|part| before[part] + error[part]);
    state
        .iter()
        .all(|part| part.is_finite())
        .then_some((state, error))
}

/// The state between two neighbouring points; see [`Blend`].
pub fn between<const N: usize>(a: &Point<N>, b: &Point<N>, seconds: f64) -> [f64; N] {
    let blend = Blend::at(a.seconds, b.seconds, seconds);
    std::array::from_fn(|i| blend.of([a.state[i], a.rate[i]], [b.state[i], b.rate[i]]))
}

#[cfg(test)]
mod tests {
    use crate::numerics::ode::{Point, Slopes, Tolerance, by_difference, solve, try_step};

    /// A check of the order: y' = −y² + cos t has no simple form,
    /// so halve the step and watch the difference shrink sixteenfold.
    fn end_after(steps: u32) -> f64 {
        let rate = |t: f64, y: &[f64; 1]| [-y[0] * y[0] + t.cos()];
        let tolerance = Tolerance {
            per_step: [1e-6],
            feeds: [true],
            longest_s: 1.0,
            shortest_s: 1e-3,
        };
        let step = 2.0 / f64::from(steps);
        let mut now = Point {
            seconds: 0.0,
            state: [0.5],
            rate: rate(0.0, &[0.5]),
        };
        for _ in 0..steps {
            let slopes = Slopes::at(&rate, &by_difference(rate), &now, &tolerance);
            let (state, _) = try_step(&rate, &now, &slopes, step).expect("solvable");
            let seconds = now.seconds + step;
            now = Point {
                seconds,
                state,
                rate: rate(seconds, &state),
            };
        }
        now.state[0]
    }

    #[test]
    fn the_method_is_of_fourth_order() {
        let (coarse, middle, fine) = (end_after(10), end_after(20), end_after(40));
        let ratio = (coarse - middle) / (middle - fine);
        assert!((12.0..20.0).contains(&ratio), "ratio {ratio}");
    }

    #[test]
    fn a_stiff_equation_takes_few_steps() {
        // A. Prothero, A. Robinson, Math. Comp. 28, 145–162, 1974: the solution is sin t.
        let rate = |t: f64, y: &[f64; 1]| [-1e6 * (y[0] - t.sin()) + t.cos()];
        let tolerance = Tolerance {
            per_step: [1e-6],
            feeds: [true],
            longest_s: 0.5,
            shortest_s: 1e-3,
        };
        let points = solve(rate, by_difference(rate), [0.0], 10.0, &tolerance, |_| {
            false
        });
        assert!(points.len() < 500, "{} steps", points.len());
        for point in points {
            let miss = (point.state[0] - point.seconds.sin()).abs();
            assert!(miss < 1e-4, "{miss} at {}", point.seconds);
        }
    }
}
