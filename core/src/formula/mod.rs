//! A formula as data: the body of a plain function, kept beside it by
//! `#[formula]` (`core/macros`), with symbols, unit and source.
//!
//! It may use nothing else of this crate and knows nothing of boats.
//! [`crate::physics`] is written with it, [`crate::explain`] shows it.

#[cfg(test)]
pub(crate) mod check;
#[cfg(test)]
mod tests;
mod value;

pub use ampwright_macros::formula;

/// A formula of so many arguments.
#[derive(Debug, Clone, Copy)]
pub struct Formula<const N: usize> {
    /// Its expression, symbols, unit and source.
    pub body: &'static Body,
    /// The function itself.
    pub value: fn([f64; N]) -> f64,
}

/// What there is to show of a formula.
#[derive(Debug, Clone, Copy)]
pub struct Body {
    /// Name of the function.
    pub name: &'static str,
    /// Symbol of what it gives.
    pub symbol: &'static str,
    /// Unit of what it gives.
    pub unit: &'static str,
    /// Who says so.
    pub source: Source,
    /// What it is given, in order.
    pub arguments: &'static [Argument],
    /// How it comes about.
    pub expression: Expr,
}

/// An argument of a formula.
#[derive(Debug, Clone, Copy)]
pub struct Argument {
    /// Name in the function.
    pub name: &'static str,
    /// Symbol in the formula.
    pub symbol: &'static str,
}

/// Where a formula is from: author, title, year, place, in a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Source(pub &'static str);

/// A constant with a symbol of its own.
#[derive(Debug, Clone, Copy)]
pub struct Constant {
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is.
    pub words: &'static str,
    /// Its unit.
    pub unit: &'static str,
    /// Its value.
    pub value: f64,
}

/// Plain arithmetic.
#[derive(Debug, Clone, Copy)]
pub enum Expr {
    /// A number that is shown as it is.
    Number(f64),
    /// A constant that is shown by its symbol.
    Constant(&'static Constant),
    /// An argument, by its place.
    Argument(usize),
    /// −a
    Negative(&'static Expr),
    /// a + b
    Sum(&'static Expr, &'static Expr),
    /// a − b
    Difference(&'static Expr, &'static Expr),
    /// a · b
    Product(&'static Expr, &'static Expr),
    /// a / b
    Quotient(&'static Expr, &'static Expr),
    /// a to the power of b
    Power(&'static Expr, &'static Expr),
    /// √a
    Root(&'static Expr),
    /// e to the power of a
    Exponential(&'static Expr),
    /// Natural logarithm.
    Logarithm(&'static Expr),
    /// A function of one argument.
    Function(Function, &'static Expr),
    /// The lesser of two.
    Least(&'static Expr, &'static Expr),
    /// The greater of two.
    Greatest(&'static Expr, &'static Expr),
    /// Another formula, and what it is given.
    Call(&'static Body, &'static [Expr]),
    /// What holds when a condition is met, and otherwise.
    Case(&'static Condition, &'static Expr, &'static Expr),
}

/// A function of one argument. Angles are in radians.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Function {
    /// Sine.
    Sine,
    /// Cosine.
    Cosine,
    /// The angle of a sine.
    Arcsine,
    /// Without its sign.
    Magnitude,
}

impl Function {
    /// As it is written before its brackets.
    pub const fn name(self) -> &'static str {
        match self {
            Function::Sine => "sin",
            Function::Cosine => "cos",
            Function::Arcsine => "asin",
            Function::Magnitude => "abs",
        }
    }

    /// What it makes of a number; "not a number" beyond its domain.
    pub fn value(self, of: f64) -> f64 {
        match self {
            Function::Sine => of.sin(),
            Function::Cosine => of.cos(),
            Function::Arcsine => of.asin(),
            Function::Magnitude => of.abs(),
        }
    }
}

/// What decides a case.
#[derive(Debug, Clone, Copy)]
pub enum Condition {
    /// a < b
    Less(&'static Expr, &'static Expr),
    /// a ≤ b
    AtMost(&'static Expr, &'static Expr),
    /// a = b
    Equal(&'static Expr, &'static Expr),
    /// Both hold.
    Both(&'static Condition, &'static Condition),
    /// One of them holds.
    Either(&'static Condition, &'static Condition),
    /// It does not hold.
    Not(&'static Condition),
}
