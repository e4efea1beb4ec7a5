//! Formulas as plain text, and a working as text for print and for reading along.

use crate::explain::Working;
use crate::explain::digits::{significant, written};
use crate::explain::node::{Hold, Node};
use crate::explain::term::Shown;
use crate::explain::used::Used;
use crate::schema::Confidence;

/// A formula with its symbols.
pub(super) fn symbols(shown: &Shown, node: &Node) -> String {
    write(node, &|at| match shown.uses.get(at) {
        Some(used) => used.symbol.clone(),
        None => String::new(),
    })
}

/// A formula with its figures, in so many digits.
pub(super) fn figures(shown: &Shown, node: &Node, digits: usize) -> String {
    write(node, &|at| match shown.uses.get(at) {
        Some(used) => {
            let number = printed(&written(used, digits));
            let unit = if used.unit == "%" { " %" } else { "" };
            number + unit
        }
        None => String::new(),
    })
}

/// A number as it is printed: a minus is one, and holds together in brackets.
fn printed(number: &str) -> String {
    match number.strip_prefix('-') {
        Some(rest) => format!("(−{rest})"),
        None => number.to_string(),
    }
}

fn write(node: &Node, figure: &dyn Fn(usize) -> String) -> String {
    let at_least = |part: &Node, hold: Hold| {
        let text = write(part, figure);
        if part.hold() < hold {
            format!("({text})")
        } else {
            text
        }
    };
    let list = |name: &str, parts: &[Node]| {
        let parts: Vec<String> = parts.iter().map(|part| write(part, figure)).collect();
        format!("{name}({})", parts.join(", "))
    };
    match node {
        Node::Number(number) => printed(&significant(*number, 17)),
        Node::Figure(at) => figure(*at),
        Node::Negative(a) => format!("−{}", at_least(a, Hold::Whole)),
        Node::Sum(a, b) => {
            // A sum on the right needs no brackets, a negative does.
            let right = if matches!(**b, Node::Negative(_)) {
                Hold::Product
            } else {
                Hold::Sum
            };
            format!("{} + {}", at_least(a, Hold::Sum), at_least(b, right))
        }
        Node::Difference(a, b) => {
            format!(
                "{} − {}",
                at_least(a, Hold::Sum),
                at_least(b, Hold::Product)
            )
        }
        Node::Product(a, b) => {
            format!(
                "{} · {}",
                at_least(a, Hold::Product),
                at_least(b, Hold::Product)
            )
        }
        Node::Quotient(a, b) => {
            format!(
                "{}/{}",
                at_least(a, Hold::Product),
                at_least(b, Hold::Power)
            )
        }
        Node::Power(a, b) if **b == Node::Number(2.0) => format!("{}²", at_least(a, Hold::Whole)),
        Node::Power(a, b) => {
            format!("{}^{}", at_least(a, Hold::Whole), at_least(b, Hold::Whole))
        }
        Node::Root(a) => format!("√({})", write(a, figure)),
        Node::Exponential(a) => format!("exp({})", write(a, figure)),
        Node::Logarithm(a) => format!("ln({})", write(a, figure)),
        Node::Function(function, a) => format!("{}({})", function.name(), write(a, figure)),
        Node::Least(parts) => list("min", parts),
        Node::Greatest(parts) => list("max", parts),
    }
}

impl Used {
    /// The figure as it is written; empty when there is none.
    pub fn figure(&self) -> String {
        match self.value {
            Some(_) => written(self, 4).replace('-', "−"),
            None => String::new(),
        }
    }
}

impl Working {
    /// The working as a few lines of plain text.
    pub fn text(&self) -> String {
        let shown = |value: Option<f64>, decimals: usize| match value {
            Some(value) => format!("{value:.decimals$}").replace('-', "−"),
            None => "–".to_string(),
        };
        let mut text = format!(
            "{}: {} {}\n",
            self.what,
            shown(self.value, self.decimals),
            self.unit
        );
        for part in [&self.symbols, &self.figures] {
            if !part.is_empty() {
                text.push_str(&format!("  = {part}\n"));
            }
        }
        for used in &self.uses {
            let value = used.figure();
            let known = used.known.map_or("", Confidence::word);
            let parts = [
                used.symbol.as_str(),
                &used.name,
                &value,
                used.unit,
                used.says,
                known,
            ];
            let words: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
            text.push_str(&format!("  · {}\n", words.join(" | ")));
        }
        for part in [self.note.as_str(), self.source] {
            if !part.is_empty() {
                text.push_str(&format!("  {part}\n"));
            }
        }
        text
    }
}
