//! The MathML of a formula: well-formed, and with the numbers of its text.

use ampwright_core::explain::{MathNode, Working};
use proptest::prelude::*;

use crate::workings::words::words;

/// Whether each tag of a text is closed by its own, and nothing is left open.
fn is_well_formed(markup: &str) -> bool {
    let mut open: Vec<&str> = Vec::new();
    for piece in markup.split('<').skip(1) {
        let Some((tag, text)) = piece.split_once('>') else {
            return false;
        };
        if text.contains(['>', '&']) {
            return false;
        }
        match tag.strip_prefix('/') {
            Some(closed) if open.pop() != Some(closed) => return false,
            Some(_) => {}
            None => open.extend(tag.split(' ').next()),
        }
    }
    open.is_empty()
}

/// The MathML is well-formed and holds the numbers of the text, in order.
pub fn mathml_says_the_same(working: &Working) -> Result<(), TestCaseError> {
    let both = [
        (&working.symbols, &working.mathml.symbols),
        (&working.figures, &working.mathml.figures),
    ];
    for (text, formula) in both {
        prop_assert_eq!(text.is_empty(), formula.is_none(), "{}", working.id);
        let mathml = formula.as_ref().map(MathNode::markup).unwrap_or_default();
        prop_assert!(is_well_formed(&mathml), "{}: {mathml}", working.id);
        let set: Vec<&str> = mathml
            .split("<mn>")
            .skip(1)
            .filter_map(|rest| rest.split('<').next())
            .collect();
        let spaced = text.replace('²', " 2 ");
        let written: Vec<&str> = words(&spaced)
            .filter(|word| word.parse::<f64>().is_ok())
            .collect();
        prop_assert_eq!(set, written, "{}: {} {}", working.id, text, mathml);
    }
    Ok(())
}

#[test]
fn what_is_not_well_formed_is_seen() {
    assert!(is_well_formed("<math display=\"block\"><mi>x</mi></math>"));
    for markup in [
        "<math><mi>x</math>",
        "<mi>x",
        "<mi>x</mi></math>",
        "<mi>&</mi>",
    ] {
        assert!(!is_well_formed(markup), "{markup}");
    }
}
