//! Stepping through time: the explicit pair of Dormand and Prince of orders 5
//! and 4 with step control (J. R. Dormand, P. J. Prince, "A family of embedded
//! Runge-Kutta formulae", J. Comp. Appl. Math. 6, 19–26, 1980), and cubic
//! Hermite interpolation inside a step.

/// Weights of the stages, row by row.
const A: [[f64; 6]; 6] = [
    [1.0 / 5.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    [3.0 / 40.0, 9.0 / 40.0, 0.0, 0.0, 0.0, 0.0],
    [44.0 / 45.0, -56.0 / 15.0, 32.0 / 9.0, 0.0, 0.0, 0.0],
    [
        19372.0 / 6561.0,
        -25360.0 / 2187.0,
        64448.0 / 6561.0,
        -212.0 / 729.0,
        0.0,
        0.0,
    ],
    [
        9017.0 / 3168.0,
        -355.0 / 33.0,
        46732.0 / 5247.0,
        49.0 / 176.0,
        -5103.0 / 18656.0,
        0.0,
    ],
    [
        35.0 / 384.0,
        0.0,
        500.0 / 1113.0,
        125.0 / 192.0,
        -2187.0 / 6784.0,
        11.0 / 84.0,
    ],
];
/// Times of the stages.
const C: [f64; 6] = [0.2, 0.3, 0.8, 8.0 / 9.0, 1.0, 1.0];
/// Order 5 less order 4.
const E: [f64; 7] = [
    71.0 / 57600.0,
    0.0,
    -71.0 / 16695.0,
    71.0 / 1920.0,
    -17253.0 / 339_200.0,
    22.0 / 525.0,
    -1.0 / 40.0,
];

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
    /// Error allowed in a step; infinity for parts that are only carried along.
    pub per_step: [f64; N],
    /// Longest step \[s\].
    pub longest_s: f64,
}

/// Steps `rate` from `start` until `done` says so or `last_s` is reached.
/// Every step end is kept.
pub fn solve<const N: usize>(
    rate: impl Fn(f64, &[f64; N]) -> [f64; N],
    start: [f64; N],
    last_s: f64,
    tolerance: &Tolerance<N>,
    done: impl Fn(&Point<N>) -> bool,
) -> Vec<Point<N>> {
    /// Steps after which even a hopeless case ends.
    const MOST_STEPS: usize = 100_000;
    let mut now = Point {
        seconds: 0.0,
        state: start,
        rate: rate(0.0, &start),
    };
    let mut points = vec![now];
    let mut step = (0.01 * tolerance.longest_s).min(last_s);
    let mut tries = 0;
    while now.seconds < last_s && !done(&now) && tries < MOST_STEPS {
        tries += 1;
        let reaches_end = now.seconds + step >= last_s;
        if reaches_end {
            step = last_s - now.seconds;
        }
        let mut slopes = [now.rate; 7];
        let mut next = now.state;
        for stage in 0..6 {
            next = std::array::from_fn(|part| {
                let sum: f64 = (0..=stage).map(|k| A[stage][k] * slopes[k][part]).sum();
                now.state[part] + step * sum
            });
            slopes[stage + 1] = rate(now.seconds + C[stage] * step, &next);
        }
        let error = |part: usize| -> f64 {
            let sum: f64 = (0..7).map(|k| E[k] * slopes[k][part]).sum();
            (step * sum / tolerance.per_step[part]).abs()
        };
        let worst = (0..N).map(error).fold(0.0, f64::max);
        if worst <= 1.0 || step <= 1e-3 {
            now = Point {
                seconds: if reaches_end {
                    last_s
                } else {
                    now.seconds + step
                },
                state: next,
                rate: slopes[6],
            };
            points.push(now);
        }
        let factor = if worst > 0.0 {
            (0.9 * worst.powf(-0.2)).clamp(0.2, 4.0)
        } else {
            4.0
        };
        step = (step * factor).clamp(1e-3, tolerance.longest_s);
    }
    points
}

/// The state between two neighbouring points, by the cubic that meets both
/// states and both rates.
pub fn between<const N: usize>(a: &Point<N>, b: &Point<N>, seconds: f64) -> [f64; N] {
    let span = b.seconds - a.seconds;
    if span <= 0.0 {
        return b.state;
    }
    let s = ((seconds - a.seconds) / span).clamp(0.0, 1.0);
    let (s2, s3) = (s * s, s * s * s);
    let (h00, h10) = (2.0 * s3 - 3.0 * s2 + 1.0, s3 - 2.0 * s2 + s);
    let (h01, h11) = (3.0 * s2 - 2.0 * s3, s3 - s2);
    std::array::from_fn(|i| {
        h00 * a.state[i] + h10 * span * a.rate[i] + h01 * b.state[i] + h11 * span * b.rate[i]
    })
}
