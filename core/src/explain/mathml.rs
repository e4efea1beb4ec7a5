//! Formulas as MathML: fractions and roots drawn as such, indices lowered. A
//! formula is a tree of elements, which a page sets as elements of its own and
//! which prints as text.

use std::fmt::{self, Display, Formatter};

use serde::{Serialize, Serializer};

use crate::explain::digits::{significant, written};
use crate::explain::node::{Hold, Node};
use crate::explain::term::Shown;

/// An element of MathML and what is in it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum MathNode {
    /// `mrow`: elements beside each other.
    Row(Vec<MathNode>),
    /// `mn`: a number, its decimals behind a point.
    Number(String),
    /// `mi`: a symbol, or the name of a function.
    Identifier(String),
    /// `mo`: a sign between elements, or a bracket.
    Operator(&'static str),
    /// `mo`: the comma between the members of a list. Where decimals stand
    /// behind a comma, readers expect a semicolon.
    Separator,
    /// `mtext`: words, as an index has them.
    Text(String),
    /// `mfrac`: one over the other.
    Fraction(Box<[MathNode; 2]>),
    /// `msqrt`: the square root.
    Root(Box<MathNode>),
    /// `msub`: a symbol and its index.
    Index(Box<[MathNode; 2]>),
    /// `msup`: a base and its power, or what else stands raised.
    Raised(Box<[MathNode; 2]>),
    /// `msubsup`: a symbol, its index, and what stands raised.
    IndexRaised(Box<[MathNode; 3]>),
}

/// A formula as MathML; both are none where there is no formula.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct MathMl {
    /// With its symbols.
    #[serde(serialize_with = "as_markup")]
    pub symbols: Option<MathNode>,
    /// With this boat's numbers.
    #[serde(serialize_with = "as_markup")]
    pub figures: Option<MathNode>,
}

/// JSON has the markup, empty where there is no formula.
fn as_markup<S: Serializer>(formula: &Option<MathNode>, serializer: S) -> Result<S::Ok, S::Error> {
    let markup = formula.as_ref().map(MathNode::markup);
    serializer.serialize_str(&markup.unwrap_or_default())
}

impl MathMl {
    /// A formula, its figures in so many digits.
    pub(super) fn of(shown: &Shown, node: &Node, digits: usize) -> MathMl {
        let symbols = set(node, &|at| match shown.uses.get(at) {
            Some(used) => symbol(&used.symbol),
            None => MathNode::Row(Vec::new()),
        });
        let figures = set(node, &|at| match shown.uses.get(at) {
            Some(used) if used.unit == "%" => MathNode::Row(vec![
                number(&written(used, digits)),
                MathNode::Operator("%"),
            ]),
            Some(used) => number(&written(used, digits)),
            None => MathNode::Row(Vec::new()),
        });
        MathMl {
            symbols: Some(symbols),
            figures: Some(figures),
        }
    }
}

impl MathNode {
    /// A symbol of a formula, as [`Working::symbols`](super::Working) and
    /// [`Used::symbol`](super::Used) write it.
    pub fn symbol(text: &str) -> MathNode {
        symbol(text)
    }

    /// The whole formula as markup that stands alone.
    pub fn markup(&self) -> String {
        format!(
            "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"block\">{self}</math>"
        )
    }
}

/// Its element as markup.
impl Display for MathNode {
    fn fmt(&self, f: &mut Formatter) -> fmt::Result {
        let mut element = |tag: &str, parts: &[MathNode]| {
            write!(f, "<{tag}>")?;
            parts.iter().try_for_each(|part| write!(f, "{part}"))?;
            write!(f, "</{tag}>")
        };
        match self {
            MathNode::Row(parts) => element("mrow", parts),
            MathNode::Fraction(parts) => element("mfrac", &**parts),
            MathNode::Root(part) => element("msqrt", std::slice::from_ref(&**part)),
            MathNode::Index(parts) => element("msub", &**parts),
            MathNode::Raised(parts) => element("msup", &**parts),
            MathNode::IndexRaised(parts) => element("msubsup", &**parts),
            MathNode::Number(number) => write!(f, "<mn>{number}</mn>"),
            MathNode::Identifier(name) => write!(f, "<mi>{name}</mi>"),
            MathNode::Operator(sign) => write!(f, "<mo>{sign}</mo>"),
            MathNode::Separator => write!(f, "<mo>,</mo>"),
            MathNode::Text(words) => write!(f, "<mtext>{words}</mtext>"),
        }
    }
}

fn raised(base: MathNode, power: MathNode) -> MathNode {
    MathNode::Raised(Box::new([base, power]))
}

fn identifier(name: &str) -> MathNode {
    MathNode::Identifier(name.to_string())
}

fn bracketed(inner: Vec<MathNode>) -> MathNode {
    let mut row = vec![MathNode::Operator("(")];
    row.extend(inner);
    row.push(MathNode::Operator(")"));
    MathNode::Row(row)
}

/// A number; a negative one in brackets.
fn number(number: &str) -> MathNode {
    match number.strip_prefix('-') {
        Some(rest) => bracketed(vec![
            MathNode::Operator("−"),
            MathNode::Number(rest.to_string()),
        ]),
        None => MathNode::Number(number.to_string()),
    }
}

/// A symbol: what follows a `_`, and lowered digits, become its index; the dash
/// of the second alternator stands raised.
fn symbol(text: &str) -> MathNode {
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
    let (base, prime) = (identifier(base), MathNode::Operator("′"));
    match (index.is_empty(), dash) {
        (true, false) => base,
        (true, true) => raised(base, prime),
        (false, false) => MathNode::Index(Box::new([base, MathNode::Text(index)])),
        (false, true) => MathNode::IndexRaised(Box::new([base, MathNode::Text(index), prime])),
    }
}

/// A formula, its figures set by a function.
fn set(node: &Node, figure: &dyn Fn(usize) -> MathNode) -> MathNode {
    let at_least = |part: &Node, hold: Hold| {
        let inner = set(part, figure);
        // A fraction's bar holds it together, but for a power.
        let drawn = matches!(part, Node::Quotient(..)) && hold < Hold::Whole;
        if part.hold() < hold && !drawn {
            bracketed(vec![inner])
        } else {
            inner
        }
    };
    let joined = |a: MathNode, sign: &'static str, b: MathNode| {
        MathNode::Row(vec![a, MathNode::Operator(sign), b])
    };
    let list = |name: &str, parts: &[Node]| {
        let mut inner = Vec::new();
        for part in parts {
            if !inner.is_empty() {
                inner.push(MathNode::Separator);
            }
            inner.push(set(part, figure));
        }
        MathNode::Row(vec![identifier(name), bracketed(inner)])
    };
    match node {
        Node::Number(value) => number(&significant(*value, 17)),
        Node::Figure(at) => figure(*at),
        Node::Negative(a) => {
            MathNode::Row(vec![MathNode::Operator("−"), at_least(a, Hold::Product)])
        }
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
        Node::Quotient(a, b) => MathNode::Fraction(Box::new([set(a, figure), set(b, figure)])),
        Node::Power(a, b) => raised(at_least(a, Hold::Whole), set(b, figure)),
        Node::Root(a) => MathNode::Root(Box::new(set(a, figure))),
        Node::Exponential(a) => raised(identifier("e"), set(a, figure)),
        Node::Logarithm(a) => {
            MathNode::Row(vec![identifier("ln"), bracketed(vec![set(a, figure)])])
        }
        Node::Function(function, a) => MathNode::Row(vec![
            identifier(function.name()),
            bracketed(vec![set(a, figure)]),
        ]),
        Node::Least(parts) => list("min", parts),
        Node::Greatest(parts) => list("max", parts),
    }
}
