//! What an expression comes to: used to hold it to its function.

use crate::formula::{Body, Condition, Expr};

impl Body {
    /// What the expression comes to for its arguments in order; one that is
    /// missing is "not a number".
    pub fn value(&self, arguments: &[f64]) -> f64 {
        self.expression.value(arguments)
    }
}

impl Expr {
    /// What it comes to.
    pub fn value(&self, arguments: &[f64]) -> f64 {
        let of = |part: &Expr| part.value(arguments);
        match self {
            Expr::Number(number) => *number,
            Expr::Constant(constant) => constant.value,
            Expr::Argument(at) => arguments.get(*at).copied().unwrap_or(f64::NAN),
            Expr::Negative(a) => -of(a),
            Expr::Sum(a, b) => of(a) + of(b),
            Expr::Difference(a, b) => of(a) - of(b),
            Expr::Product(a, b) => of(a) * of(b),
            Expr::Quotient(a, b) => of(a) / of(b),
            Expr::Power(a, b) => of(a).powf(of(b)),
            Expr::Root(a) => of(a).sqrt(),
            Expr::Exponential(a) => of(a).exp(),
            Expr::Logarithm(a) => of(a).ln(),
            Expr::Function(function, a) => function.value(of(a)),
            Expr::Least(a, b) => of(a).min(of(b)),
            Expr::Greatest(a, b) => of(a).max(of(b)),
            Expr::Call(body, given) => {
                let given: Vec<f64> = given.iter().map(of).collect();
                body.value(&given)
            }
            Expr::Case(when, then, otherwise) => of(if when.holds(arguments) {
                then
            } else {
                otherwise
            }),
        }
    }
}

impl Condition {
    /// Whether it holds.
    pub fn holds(&self, arguments: &[f64]) -> bool {
        let of = |part: &Expr| part.value(arguments);
        match self {
            Condition::Less(a, b) => of(a) < of(b),
            Condition::AtMost(a, b) => of(a) <= of(b),
            Condition::Equal(a, b) => of(a) == of(b),
            Condition::Both(a, b) => a.holds(arguments) && b.holds(arguments),
            Condition::Either(a, b) => a.holds(arguments) || b.holds(arguments),
            Condition::Not(a) => !a.holds(arguments),
        }
    }
}
