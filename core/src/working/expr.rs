//! A formula as a small tree: what it comes to, and how it is written, with
//! symbols or with this boat's numbers.

use std::ops::{Add, Div, Mul, Sub};

use crate::worksheet::Key;

/// A formula. It lies in a box: what is a word long is cheap to hand around.
#[derive(Debug, Clone)]
pub(super) struct Expr(Box<Node>);

/// What stands in it.
#[derive(Debug, Clone)]
enum Node {
    /// A plain number that is part of the formula.
    Number(f64),
    /// A figure with a name.
    Named(Leaf),
    /// Figures joined.
    Joined(Join, Vec<Expr>),
}

/// A figure with a name.
#[derive(Debug, Clone)]
pub(super) struct Leaf {
    pub(super) symbol: String,
    pub(super) name: String,
    /// In its unit; one in per cent counts as a share.
    pub(super) value: f64,
    pub(super) unit: &'static str,
    pub(super) from: From,
}

/// Where a figure comes from.
#[derive(Debug, Clone, Copy)]
pub(super) enum From {
    /// An input of the worksheet.
    Input(Key),
    /// Another working.
    Working(&'static str),
    /// A constant, or a figure the run gave.
    Given,
}

/// How figures are joined.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Join {
    Sum,
    Less,
    Times,
    Over,
    Power,
    Root,
    Least,
    Most,
}

/// How tightly a text holds together: a sum, a product, a power, one figure.
const SUM: u8 = 1;
const PRODUCT: u8 = 2;
const ONE: u8 = 4;

/// Fewest and most significant digits a figure is written with.
const DIGITS: (usize, usize) = (4, 17);
/// An input is written this much finer: as typed, in all but odd cases.
const AS_TYPED: usize = 3;

fn join(how: Join, parts: Vec<Expr>) -> Expr {
    Expr(Box::new(Node::Joined(how, parts)))
}

// Written once, not wherever two figures meet.
#[inline(never)]
fn two(how: Join, one: Expr, other: Expr) -> Expr {
    join(how, vec![one, other])
}

macro_rules! joins {
    ($($trait:ident $method:ident $how:ident;)+) => {
        $(impl $trait for Expr {
            type Output = Expr;
            fn $method(self, other: Expr) -> Expr {
                two(Join::$how, self, other)
            }
        })+
    };
}
joins! { Add add Sum; Sub sub Less; Mul mul Times; Div div Over; }

/// A plain number.
#[inline(never)]
pub(super) fn num(number: f64) -> Expr {
    Expr(Box::new(Node::Number(number)))
}

/// A square root.
pub(super) fn root(of: Expr) -> Expr {
    join(Join::Root, vec![of])
}

/// A power.
pub(super) fn power(base: Expr, exponent: Expr) -> Expr {
    two(Join::Power, base, exponent)
}

/// A square.
pub(super) fn square(base: Expr) -> Expr {
    power(base, num(2.0))
}

/// The least of some.
pub(super) fn least(mut of: Vec<Expr>) -> Expr {
    match (of.pop(), of.is_empty()) {
        (Some(only), true) => only,
        (last, _) => {
            of.extend(last);
            join(Join::Least, of)
        }
    }
}

/// The greater of two.
pub(super) fn most(one: Expr, other: Expr) -> Expr {
    two(Join::Most, one, other)
}

/// The sum of some; nothing is 0.
pub(super) fn sum(of: Vec<Expr>) -> Expr {
    of.into_iter().reduce(Expr::add).unwrap_or(num(0.0))
}

/// A figure with a name.
#[inline(never)]
pub(super) fn leaf(leaf: Leaf) -> Expr {
    Expr(Box::new(Node::Named(leaf)))
}

impl Leaf {
    fn digits(&self, digits: usize) -> usize {
        match self.from {
            From::Input(_) => digits + AS_TYPED,
            _ => digits,
        }
    }
}

impl Expr {
    /// The figure it is, if it is one with a name.
    pub(super) fn leaf_mut(&mut self) -> Option<&mut Leaf> {
        match &mut *self.0 {
            Node::Named(leaf) => Some(leaf),
            _ => None,
        }
    }

    /// What it comes to with every figure written in so many digits.
    fn written(&self, digits: usize) -> f64 {
        match &*self.0 {
            Node::Number(number) => *number,
            Node::Named(leaf) => {
                let text = significant(leaf.value, leaf.digits(digits));
                let value = text.parse().unwrap_or(leaf.value);
                if leaf.unit == "%" {
                    value / 100.0
                } else {
                    value
                }
            }
            Node::Joined(how, parts) => {
                let mut values = parts.iter().map(|part| part.written(digits));
                let first = values.next().unwrap_or(0.0);
                if *how == Join::Root {
                    return first.sqrt();
                }
                values.fold(first, |a, b| match how {
                    Join::Sum => a + b,
                    Join::Less => a - b,
                    Join::Times => a * b,
                    Join::Over => a / b,
                    Join::Power => a.powf(b),
                    Join::Least => a.min(b),
                    _ => a.max(b),
                })
            }
        }
    }

    /// What it comes to.
    pub(super) fn exact(&self) -> f64 {
        self.written(DIGITS.1)
    }

    /// With its symbols.
    pub(super) fn symbols(&self) -> String {
        let mut out = String::new();
        self.write(&mut out, 0, SUM);
        out
    }

    /// With its figures, in as many digits as give `value` to so many decimals.
    pub(super) fn figures(&self, value: f64, decimals: usize) -> String {
        let (few, many) = DIGITS;
        let near = 0.2 * 10f64.powi(-(decimals as i32));
        let digits = (few..many)
            .find(|&digits| (self.written(digits) - value).abs() <= near)
            .unwrap_or(many);
        let mut out = String::new();
        self.write(&mut out, digits, SUM);
        out
    }

    /// Every figure with a name, each once, as they come.
    pub(super) fn leaves<'a>(&'a self, found: &mut Vec<&'a Leaf>) {
        match &*self.0 {
            Node::Number(_) => {}
            Node::Named(leaf) => {
                if found.iter().all(|other| other.symbol != leaf.symbol) {
                    found.push(leaf);
                }
            }
            Node::Joined(_, parts) => parts.iter().for_each(|part| part.leaves(found)),
        }
    }

    /// Writes it, with symbols for no digits, in brackets if it holds together
    /// less tightly than `least`.
    fn write(&self, out: &mut String, digits: usize, least: u8) {
        let (tight, from) = (self.tight(digits), out.len());
        if tight < least {
            out.push('(');
        }
        match &*self.0 {
            Node::Number(number) => out.push_str(&significant(*number, DIGITS.1)),
            Node::Named(leaf) if digits == 0 => out.push_str(&leaf.symbol),
            Node::Named(leaf) => {
                out.push_str(&significant(leaf.value, leaf.digits(digits)));
                if leaf.unit == "%" {
                    out.push_str(" %");
                }
            }
            Node::Joined(how, parts) => {
                let (before, between, after, first, next) = match how {
                    Join::Sum => ("", " + ", "", SUM, PRODUCT),
                    Join::Less => ("", " − ", "", SUM, PRODUCT),
                    Join::Times => ("", " · ", "", PRODUCT, PRODUCT),
                    Join::Over => ("", "/", "", PRODUCT, PRODUCT + 1),
                    Join::Power => ("", "^", "", ONE, ONE),
                    Join::Root => ("√(", "", ")", SUM, SUM),
                    Join::Least => ("min(", ", ", ")", SUM, SUM),
                    Join::Most => ("max(", ", ", ")", SUM, SUM),
                };
                out.push_str(before);
                let mut least = first;
                for (at, part) in parts.iter().enumerate() {
                    if let (Join::Power, 1, Node::Number(2.0)) = (how, at, &*part.0) {
                        out.push('²');
                        continue;
                    }
                    if at > 0 {
                        out.push_str(between);
                    }
                    part.write(out, digits, least);
                    least = next;
                }
                out.push_str(after);
            }
        }
        if tight < least {
            out.push(')');
        }
        // A real minus sign.
        while let Some(at) = out.get(from..).and_then(|text| text.find('-')) {
            out.replace_range(from + at..from + at + 1, "−");
        }
    }

    fn tight(&self, digits: usize) -> u8 {
        match &*self.0 {
            Node::Number(number) if *number < 0.0 => SUM,
            Node::Named(leaf) if digits > 0 && leaf.value < 0.0 => SUM,
            Node::Joined(Join::Sum | Join::Less, _) => SUM,
            Node::Joined(Join::Times | Join::Over, _) => PRODUCT,
            Node::Joined(Join::Power, _) => PRODUCT + 1,
            _ => ONE,
        }
    }
}

/// A number in so many significant digits, without idle zeros; whole numbers
/// are never shortened.
pub(super) fn significant(number: f64, digits: usize) -> String {
    let number = if number == 0.0 { 0.0 } else { number };
    // Digits before the point, or zeros behind it.
    let (mut size, mut left) = (0, number.abs());
    while left >= 10.0 && size < 17 {
        (left, size) = (left / 10.0, size + 1);
    }
    while left < 1.0 && size > -25 {
        (left, size) = (left * 10.0, size - 1);
    }
    let decimals = (digits as i32 - 1 - size).max(0) as usize;
    let long = format!("{number:.decimals$}");
    // What it takes to say the number exactly is enough.
    let exact = number.to_string();
    let text = if exact.len() < long.len() {
        exact
    } else {
        long
    };
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_string()
    } else {
        text
    }
}
