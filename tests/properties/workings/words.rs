//! The words of a formula, and that each symbol is told what it is.

use ampwright_core::explain::Working;
use proptest::prelude::*;

/// The words of a formula as it is printed: symbols, numbers and functions.
pub fn words(formula: &str) -> impl Iterator<Item = &str> {
    formula
        .split([' ', '(', ')', '/', '^', '²', '·', '√', '+', '−'])
        .map(|word| word.trim_end_matches(','))
        .filter(|word| !word.is_empty() && *word != "%")
}

/// Every symbol of a formula is told what it is, once.
pub fn symbols_are_told(working: &Working) -> Result<(), TestCaseError> {
    let known = |word: &str| {
        working
            .uses
            .iter()
            .filter(|used| used.symbol == word)
            .count()
    };
    for word in words(&working.symbols) {
        let number = word.parse::<f64>().is_ok();
        let function = ["min", "max", "exp", "ln", "sin", "cos", "asin", "abs"].contains(&word);
        prop_assert!(
            number || function || known(word) == 1,
            "{}: {word} in {} is told {} times",
            working.id,
            working.symbols,
            known(word)
        );
    }
    for used in working.uses.iter().filter(|used| !used.symbol.is_empty()) {
        let there = words(&working.symbols).any(|word| word == used.symbol);
        prop_assert!(there, "{}: {} is nowhere", working.id, used.symbol);
    }
    Ok(())
}
