//! How finely the tables are stepped. Uses nothing of the charger.

/// Steps of the table of time.
pub const STEPS: usize = 120;
/// How many of them an hour has.
pub const STEPS_AN_HOUR: f64 = 20.0;
/// Steps of the table of charge for what is quickly found.
pub const CHARGES: usize = 40;
/// Steps of the table of charge for what has to settle first.
pub const SETTLED: usize = 40;

/// So many steps of charge, 0 to 1.
pub fn charges(steps: usize) -> impl Iterator<Item = f64> {
    (0..=steps).map(move |step| step as f64 / steps as f64)
}

/// Each figure of two lists of the same steps, so far from the first to the second,
/// 0 to 1.
pub fn between(one: &[f64], other: &[f64], share: f64) -> Vec<f64> {
    let each = one.iter().zip(other);
    each.map(|(one, other)| one + share * (other - one))
        .collect()
}
