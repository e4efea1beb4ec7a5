//! Formulas as MathML, for the page: fractions and roots drawn as such,
//! indices lowered.

use serde::Serialize;

use crate::explain::digits::{significant, written};
use crate::explain::node::{Hold, Node};
use crate::explain::term::Shown;

/// A formula as MathML; both are empty where there is no formula.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct MathMl {
    /// With its symbols.
    pub symbols: String,
    /// With this boat's numbers.
    pub figures: String,
}

impl MathMl {
    /// A formula, its figures in so many digits.
    pub(super) fn of(shown: &Shown, node: &Node, digits: usize) -> MathMl {
        let symbols = write(node, &|at| match shown.uses.get(at) {
            Some(used) => symbol(&used.symbol),
            None => String::new(),
        });
        let figures = write(node, &|at| match shown.uses.get(at) {
            Some(used) if used.unit == "%" => row(&(number(&written(used, digits)) + &sign("%"))),
            Some(used) => number(&written(used, digits)),
            None => String::new(),
        });
        MathMl {
            symbols: whole(&symbols),
            figures: whole(&figures),
        }
    }
}

fn whole(inner: &str) -> String {
    format!("<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"block\">{inner}</math>")
}

fn row(inner: &str) -> String {
    format!("<mrow>{inner}</mrow>")
}

fn sign(sign: &str) -> String {
    format!("<mo>{sign}</mo>")
}

fn bracketed(inner: &str) -> String {
    row(&format!("{}{inner}{}", sign("("), sign(")")))
}

/// A number; a negative one in brackets.
fn number(number: &str) -> String {
    match number.strip_prefix('-') {
        Some(rest) => bracketed(&format!("{}<mn>{rest}</mn>", sign("−"))),
        None => format!("<mn>{number}</mn>"),
    }
}

/// A symbol: what follows a `_`, and lowered digits, become its index; the dash
/// of the second alternator stands raised.
fn symbol(text: &str) -> String {
    let (text, dash) = match text.strip_suffix('′') {
        Some(text) => (text, true),
        None => (text, false),
    };
    let lowered = |c: char| ('₀'..='₉').contains(&c);
    let (base, index) = match text.split_once('_') {
        Some((base, index)) => (base, index.to_string()),
        None => {
            let base = text.trim_end_matches(lowered);
            let index = text.get(base.len()..).unwrap_or_default();
            let digits = index.chars().filter_map(|c| {
                let digit = u32::from(c) - u32::from('₀');
                char::from_digit(digit, 10)
            });
            (base, digits.collect())
        }
    };
    let base = format!("<mi>{base}</mi>");
    let prime = sign("′");
    match (index.is_empty(), dash) {
        (true, false) => base,
        (true, true) => format!("<msup>{base}{prime}</msup>"),
        (false, false) => format!("<msub>{base}<mtext>{index}</mtext></msub>"),
        (false, true) => format!("<msubsup>{base}<mtext>{index}</mtext>{prime}</msubsup>"),
    }
}

fn write(node: &Node, figure: &dyn Fn(usize) -> String) -> String {
    let at_least = |part: &Node, hold: Hold| {
        let text = write(part, figure);
        // A fraction's bar holds it together, but for a power.
        let drawn = matches!(part, Node::Quotient(..)) && hold < Hold::Whole;
        if part.hold() < hold && !drawn {
            bracketed(&text)
        } else {
            text
        }
    };
    let joined = |a: String, between: &str, b: String| row(&(a + &sign(between) + &b));
    let list = |name: &str, parts: &[Node]| {
        let parts: Vec<String> = parts.iter().map(|part| write(part, figure)).collect();
        row(&format!(
            "<mi>{name}</mi>{}",
            bracketed(&parts.join(&sign(",")))
        ))
    };
    match node {
        Node::Number(value) => number(&significant(*value, 17)),
        Node::Figure(at) => figure(*at),
        Node::Negative(a) => row(&(sign("−") + &at_least(a, Hold::Product))),
        Node::Sum(a, b) => {
            let right = if matches!(**b, Node::Negative(_)) {
                Hold::Product
            } else {
                Hold::Sum
            };
            joined(at_least(a, Hold::Sum), "+", at_least(b, right))
        }
        Node::Difference(a, b) => joined(at_least(a, Hold::Sum), "−", at_least(b, Hold::Product)),
        Node::Product(a, b) => joined(at_least(a, Hold::Product), "·", at_least(b, Hold::Product)),
        Node::Quotient(a, b) => {
            format!("<mfrac>{}{}</mfrac>", write(a, figure), write(b, figure))
        }
        Node::Power(a, b) => {
            format!(
                "<msup>{}{}</msup>",
                at_least(a, Hold::Whole),
                write(b, figure)
            )
        }
        Node::Root(a) => format!("<msqrt>{}</msqrt>", write(a, figure)),
        Node::Exponential(a) => format!("<msup><mi>e</mi>{}</msup>", write(a, figure)),
        Node::Logarithm(a) => row(&format!("<mi>ln</mi>{}", bracketed(&write(a, figure)))),
        Node::Function(function, a) => row(&format!(
            "<mi>{}</mi>{}",
            function.name(),
            bracketed(&write(a, figure))
        )),
        Node::Least(parts) => list("min", parts),
        Node::Greatest(parts) => list("max", parts),
    }
}
