//! Whether the data of a formula come to what its function gives: what the
//! unit test of every formula asks.

use crate::formula::Formula;

/// Arguments that are tried for each formula.
const DRAWS: u32 = 400;

/// Holds a formula to its function over arguments from 0.02 to 50, now and then
/// below zero, and now and then equal to each other.
pub(crate) fn agrees<const N: usize>(formula: &Formula<N>) {
    let mut state = 0x9E37_79B9_u32;
    let mut drawn = || {
        // A linear congruential generator; G. Marsaglia's multiplier, from memory.
        state = state.wrapping_mul(69_069).wrapping_add(1);
        f64::from(state >> 8) / f64::from(1_u32 << 24)
    };
    for _ in 0..DRAWS {
        let level = drawn() < 0.05;
        let first = 0.02 * 2500f64.powf(drawn());
        let given: [f64; N] = std::array::from_fn(|_| {
            let size = if level {
                first
            } else {
                0.02 * 2500f64.powf(drawn())
            };
            if drawn() < 0.05 { -size } else { size }
        });
        let (data, function) = (formula.body.value(&given), (formula.value)(given));
        let same = data == function
            || data.is_nan() && function.is_nan()
            || (data - function).abs() <= 1e-9 * function.abs().max(1e-9);
        let name = formula.body.name;
        assert!(same, "{name}{given:?} is {function}, its data give {data}");
    }
}
