//! A formula as it is shown for one boat: cases decided, calls and steps put in
//! their places, bounds that do not act left out.

use crate::formula::Function;

/// A part of a shown formula. A figure is named by its place in the list of
/// what the formula used.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Node {
    /// A number that is written as it is.
    Number(f64),
    /// A figure: a symbol, or what it is on this boat.
    Figure(usize),
    /// −a
    Negative(Box<Node>),
    /// a + b
    Sum(Box<Node>, Box<Node>),
    /// a − b
    Difference(Box<Node>, Box<Node>),
    /// a · b
    Product(Box<Node>, Box<Node>),
    /// a / b
    Quotient(Box<Node>, Box<Node>),
    /// a to the power of b
    Power(Box<Node>, Box<Node>),
    /// √a
    Root(Box<Node>),
    /// e to the power of a
    Exponential(Box<Node>),
    /// ln a
    Logarithm(Box<Node>),
    /// A function of one argument.
    Function(Function, Box<Node>),
    /// The least of several.
    Least(Vec<Node>),
    /// The greatest of several.
    Greatest(Vec<Node>),
}

/// How tightly a part holds together, loosest first: one that is looser than
/// its place asks for stands in brackets.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Hold {
    /// Sums, differences, what is taken the negative of.
    Sum,
    /// Products and quotients.
    Product,
    /// Powers.
    Power,
    /// Numbers, figures, functions.
    Whole,
}

impl Node {
    /// What it comes to, the figures being what `figure` says.
    pub(super) fn value(&self, figure: &dyn Fn(usize) -> f64) -> f64 {
        let of = |part: &Node| part.value(figure);
        let best = |parts: &[Node], better: fn(f64, f64) -> f64| {
            parts.iter().map(of).reduce(better).unwrap_or(f64::NAN)
        };
        match self {
            Node::Number(number) => *number,
            Node::Figure(at) => figure(*at),
            Node::Negative(a) => -of(a),
            Node::Sum(a, b) => of(a) + of(b),
            Node::Difference(a, b) => of(a) - of(b),
            Node::Product(a, b) => of(a) * of(b),
            Node::Quotient(a, b) => of(a) / of(b),
            Node::Power(a, b) => of(a).powf(of(b)),
            Node::Root(a) => of(a).sqrt(),
            Node::Exponential(a) => of(a).exp(),
            Node::Logarithm(a) => of(a).ln(),
            Node::Function(function, a) => function.value(of(a)),
            Node::Least(parts) => best(parts, f64::min),
            Node::Greatest(parts) => best(parts, f64::max),
        }
    }

    /// Visits the figures in it from left to right.
    pub(super) fn visit(&mut self, see: &mut dyn FnMut(&mut usize)) {
        match self {
            Node::Number(_) => {}
            Node::Figure(at) => see(at),
            Node::Negative(a)
            | Node::Root(a)
            | Node::Exponential(a)
            | Node::Logarithm(a)
            | Node::Function(_, a) => {
                a.visit(see);
            }
            Node::Sum(a, b)
            | Node::Difference(a, b)
            | Node::Product(a, b)
            | Node::Quotient(a, b)
            | Node::Power(a, b) => {
                a.visit(see);
                b.visit(see);
            }
            Node::Least(parts) | Node::Greatest(parts) => {
                for part in parts {
                    part.visit(see);
                }
            }
        }
    }

    /// Whether no figure of the boat is in it.
    pub(super) fn is_plain(&self) -> bool {
        match self {
            Node::Number(_) => true,
            Node::Figure(_) => false,
            Node::Negative(a)
            | Node::Root(a)
            | Node::Exponential(a)
            | Node::Logarithm(a)
            | Node::Function(_, a) => a.is_plain(),
            Node::Sum(a, b)
            | Node::Difference(a, b)
            | Node::Product(a, b)
            | Node::Quotient(a, b)
            | Node::Power(a, b) => a.is_plain() && b.is_plain(),
            Node::Least(parts) | Node::Greatest(parts) => parts.iter().all(Node::is_plain),
        }
    }

    /// How tightly it holds together.
    pub(super) fn hold(&self) -> Hold {
        match self {
            Node::Sum(..) | Node::Difference(..) | Node::Negative(_) => Hold::Sum,
            Node::Product(..) | Node::Quotient(..) => Hold::Product,
            Node::Power(..) => Hold::Power,
            _ => Hold::Whole,
        }
    }

    fn is_number(&self, number: f64) -> bool {
        *self == Node::Number(number)
    }

    /// a + b, without a nought.
    pub(super) fn sum(a: Node, b: Node) -> Node {
        if a.is_number(0.0) {
            b
        } else if b.is_number(0.0) {
            a
        } else {
            Node::Sum(Box::new(a), Box::new(b))
        }
    }

    /// a − b, without a nought or two signs.
    pub(super) fn difference(a: Node, b: Node) -> Node {
        if b.is_number(0.0) {
            return a;
        }
        match b {
            Node::Negative(b) => Node::sum(a, *b),
            b if a.is_number(0.0) => Node::Negative(Box::new(b)),
            b => Node::Difference(Box::new(a), Box::new(b)),
        }
    }

    /// a · b, without a one.
    pub(super) fn product(a: Node, b: Node) -> Node {
        if a.is_number(1.0) {
            b
        } else if b.is_number(1.0) {
            a
        } else {
            Node::Product(Box::new(a), Box::new(b))
        }
    }

    /// a / b, without a one.
    pub(super) fn quotient(a: Node, b: Node) -> Node {
        if b.is_number(1.0) {
            a
        } else {
            Node::Quotient(Box::new(a), Box::new(b))
        }
    }

    /// The least of two: a number that does not bound the other is left out.
    pub(super) fn least(a: Node, b: Node, figure: &dyn Fn(usize) -> f64) -> Node {
        let (one, two) = (a.value(figure), b.value(figure));
        if b.is_plain() && one <= two {
            a
        } else if a.is_plain() && two <= one {
            b
        } else {
            Node::Least(joined(a, b, |node| match node {
                Node::Least(parts) => Ok(parts),
                other => Err(other),
            }))
        }
    }

    /// The greatest of two, likewise.
    pub(super) fn greatest(a: Node, b: Node, figure: &dyn Fn(usize) -> f64) -> Node {
        let (one, two) = (a.value(figure), b.value(figure));
        if b.is_plain() && one >= two {
            a
        } else if a.is_plain() && two >= one {
            b
        } else {
            Node::Greatest(joined(a, b, |node| match node {
                Node::Greatest(parts) => Ok(parts),
                other => Err(other),
            }))
        }
    }
}

/// Two lists in one, numbers first, as they are usually written.
fn joined(a: Node, b: Node, parts: fn(Node) -> Result<Vec<Node>, Node>) -> Vec<Node> {
    let (a, b) = if b.is_plain() { (b, a) } else { (a, b) };
    let list = |node: Node| parts(node).unwrap_or_else(|one| vec![one]);
    let mut all = list(a);
    all.extend(list(b));
    all
}
