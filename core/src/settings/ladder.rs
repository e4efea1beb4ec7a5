//! The most charge current of a lithium bank by the temperature of its cells,
//! for a whole season.

use crate::worksheet::Inputs;

/// A stretch of cell temperatures and the most current in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stretch {
    /// Its name, the same for ever.
    pub key: &'static str,
    /// Where it is, in words.
    pub words: &'static str,
    /// Most current \[A\]; 0 where nothing may flow.
    pub most_a: f64,
    /// Whether the bank's own limit holds in it.
    pub own: bool,
}

/// The stretches from cold to hot: none below 0 °C, a tenth of the ampere-hours
/// to 5, a fifth to 10, the bank's own limit to 50, a tenth to 60, none above;
/// never more than the bank's own limit. Rates of a published table for fast
/// continuous charge of lithium iron phosphate cells.
pub(super) fn ladder(inputs: &Inputs) -> [Stretch; 6] {
    let own_a = inputs.own_charge_limit_a();
    let rate = |rate: f64| (rate * inputs.bank.capacity_ah).min(own_a);
    let stretch = |key, words, most_a: f64| Stretch {
        key,
        words,
        most_a,
        own: most_a == own_a,
    };
    [
        stretch("frost", "below 0 °C", 0.0),
        stretch("to_5", "0 to 5 °C", rate(0.1)),
        stretch("to_10", "5 to 10 °C", rate(0.2)),
        stretch("to_50", "10 to 50 °C", own_a),
        stretch("to_60", "50 to 60 °C", rate(0.1)),
        stretch("hot", "above 60 °C", 0.0),
    ]
}
