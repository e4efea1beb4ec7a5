//! In how many digits a formula's figures are written: as few as give its
//! result to the decimals it is shown with.

use crate::explain::node::Node;
use crate::explain::term::Shown;
use crate::explain::used::Used;

/// Fewest and most significant digits a figure is written with.
const FEWEST: usize = 4;
const MOST: usize = 17;
/// An input is written this much finer: as typed, in all but odd cases.
const AS_TYPED: usize = 3;

/// A number in so many significant digits, without idle zeros; whole numbers
/// are never shortened.
pub(super) fn significant(number: f64, digits: usize) -> String {
    let number = if number == 0.0 { 0.0 } else { number };
    let size = if number == 0.0 {
        0
    } else {
        number.abs().log10().floor() as i32
    };
    let decimals = (digits as i32 - 1 - size).clamp(0, 40) as usize;
    let rounded = format!("{number:.decimals$}");
    // What it takes to say the number exactly is enough.
    let exact = number.to_string();
    let text = if exact.len() < rounded.len() {
        exact
    } else {
        rounded
    };
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_string()
    } else {
        text
    }
}

/// A used figure in so many digits, before the minus is printed.
pub(super) fn written(used: &Used, digits: usize) -> String {
    let finer = if used.key.is_some() { AS_TYPED } else { 0 };
    significant(used.value.unwrap_or(0.0), digits + finer)
}

/// So many digits that a formula comes to its value to so many decimals.
pub(super) fn enough(shown: &Shown, node: &Node, value: f64, decimals: usize) -> usize {
    let near = 0.2 * 10f64.powi(-(decimals as i32));
    (FEWEST..MOST)
        .find(|digits| {
            let rounded = |at: usize| {
                let Some(used) = shown.uses.get(at) else {
                    return f64::NAN;
                };
                // The rounding of the written figure, read back.
                let written = written(used, *digits).parse().unwrap_or(f64::NAN);
                if used.unit == "%" {
                    written / 100.0
                } else {
                    written
                }
            };
            (node.value(&rounded) - value).abs() <= near
        })
        .unwrap_or(MOST)
}
