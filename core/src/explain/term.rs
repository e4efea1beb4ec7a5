//! What a figure came about from: the formula that ran, and what it was given.
//! Arguments are inputs, other figures, or formulas in their turn.

use crate::explain::node::Node;
use crate::explain::used::Used;
use crate::formula::{Argument, Body, Condition, Expr, Formula, Source};

/// A figure's formula with what it was given, or a part of it.
#[derive(Debug, Clone)]
pub(super) enum Term {
    /// A number that is written as it is.
    Number(f64),
    /// An input, a figure that is explained elsewhere, or one described in words. Its
    /// symbol is the argument's, where it has none of its own.
    Figure(Used),
    /// A formula that ran.
    Formula {
        /// What is shown of it.
        body: &'static Body,
        /// What it was given.
        arguments: Vec<Term>,
    },
    /// Added up, over a list of the boat's own.
    Sum(Vec<Term>),
    /// What is left of one after another.
    Difference(Box<Term>, Box<Term>),
    /// The least of what may flow.
    Least(Vec<Term>),
}

impl Term {
    /// A formula with what it is given.
    pub(super) fn of<const N: usize>(formula: Formula<N>, arguments: [Term; N]) -> Term {
        Term::Formula {
            body: formula.body,
            arguments: arguments.into(),
        }
    }

    /// One less another.
    pub(super) fn less(self, other: Term) -> Term {
        Term::Difference(Box::new(self), Box::new(other))
    }

    /// This term with a symbol of its own, where it is a figure; else as it is.
    pub(super) fn symbol(mut self, symbol: &str) -> Term {
        if let Term::Figure(used) = &mut self {
            used.symbol = symbol.to_string();
        }
        self
    }

    /// This term with another name, where it is a figure; else as it is.
    pub(super) fn named(mut self, name: &str) -> Term {
        if let Term::Figure(used) = &mut self {
            used.name = name.to_string();
        }
        self
    }

    /// This term as the second alternator's: its symbols have a dash.
    pub(super) fn of_second(self) -> Term {
        let all = |terms: Vec<Term>| terms.into_iter().map(Term::of_second).collect();
        match self {
            Term::Number(number) => Term::Number(number),
            Term::Figure(mut used) => {
                used.of_second = true;
                Term::Figure(used)
            }
            Term::Formula { body, arguments } => Term::Formula {
                body,
                arguments: all(arguments),
            },
            Term::Sum(terms) => Term::Sum(all(terms)),
            Term::Difference(a, b) => a.of_second().less(b.of_second()),
            Term::Least(terms) => Term::Least(all(terms)),
        }
    }

    /// Who says so, where it is a formula.
    pub(super) fn source(&self) -> Option<Source> {
        match self {
            Term::Formula { body, .. } => Some(body.source),
            _ => None,
        }
    }
}

/// A term as it is shown, and what it used in the order of its symbols.
#[derive(Debug, Clone, Default)]
pub(super) struct Shown {
    /// What it used.
    pub(super) uses: Vec<Used>,
}

impl Shown {
    /// How a term is shown: only what stands in the formula counts as used, in
    /// the order it stands there.
    pub(super) fn of(term: &Term) -> (Shown, Node) {
        let mut all = Shown::default();
        let mut node = all.term(term, "");
        let mut places: Vec<usize> = Vec::new();
        node.visit(&mut |at| {
            let place = places.iter().position(|place| place == at);
            let next = places.len();
            *at = place.unwrap_or_else(|| {
                places.push(*at);
                next
            });
        });
        let uses = places.iter().filter_map(|at| all.uses.get(*at).cloned());
        let shown = Shown {
            uses: uses.collect(),
        };
        (shown, node)
    }

    /// A figure as the formula takes it: per cent are hundredths.
    pub(super) fn exact(&self, at: usize) -> f64 {
        self.uses.get(at).map_or(f64::NAN, Used::share)
    }

    /// What a part comes to on this boat.
    pub(super) fn value(&self, node: &Node) -> f64 {
        node.value(&|at| self.exact(at))
    }

    /// Puts a term in its place.
    pub(super) fn term(&mut self, term: &Term, symbol: &str) -> Node {
        match term {
            Term::Number(number) => Node::Number(*number),
            Term::Figure(used) => self.figure(used, symbol),
            Term::Formula { body, arguments } => {
                let given: Vec<Node> = arguments
                    .iter()
                    .zip(body.arguments)
                    .map(|(term, Argument { symbol, .. })| self.term(term, symbol))
                    .collect();
                self.expression(&body.expression, &given)
            }
            Term::Sum(terms) => {
                let mut all = terms.iter().map(|term| self.term(term, symbol));
                let first = all.next().unwrap_or(Node::Number(0.0));
                all.fold(first, Node::sum)
            }
            Term::Difference(a, b) => {
                let (a, b) = (self.term(a, symbol), self.term(b, symbol));
                Node::difference(a, b)
            }
            Term::Least(terms) => {
                let mut all: Vec<Node> = terms.iter().map(|term| self.term(term, symbol)).collect();
                if all.len() == 1 {
                    all.swap_remove(0)
                } else {
                    Node::Least(all)
                }
            }
        }
    }

    /// A figure by its place; one that was used before stands once.
    fn figure(&mut self, used: &Used, symbol: &str) -> Node {
        let mut used = used.clone();
        if used.symbol.is_empty() {
            used.symbol = symbol.to_string();
        }
        if used.of_second {
            used.symbol.push('′');
        }
        let at = self.uses.iter().position(|other| *other == used);
        Node::Figure(at.unwrap_or_else(|| {
            self.uses.push(used);
            self.uses.len() - 1
        }))
    }

    fn expression(&mut self, expression: &Expr, given: &[Node]) -> Node {
        let two = |a: &Expr, b: &Expr, this: &mut Shown| {
            (this.expression(a, given), this.expression(b, given))
        };
        match expression {
            Expr::Number(number) => Node::Number(*number),
            Expr::Constant(constant) => self.figure(&Used::constant(constant), constant.symbol),
            Expr::Argument(at) => given.get(*at).cloned().unwrap_or(Node::Number(f64::NAN)),
            Expr::Negative(a) => Node::Negative(Box::new(self.expression(a, given))),
            Expr::Sum(a, b) => {
                let (a, b) = two(a, b, self);
                Node::sum(a, b)
            }
            Expr::Difference(a, b) => {
                let (a, b) = two(a, b, self);
                Node::difference(a, b)
            }
            Expr::Product(a, b) => {
                let (a, b) = two(a, b, self);
                Node::product(a, b)
            }
            Expr::Quotient(a, b) => {
                let (a, b) = two(a, b, self);
                Node::quotient(a, b)
            }
            Expr::Power(a, b) => {
                let (a, b) = two(a, b, self);
                Node::Power(Box::new(a), Box::new(b))
            }
            Expr::Root(a) => Node::Root(Box::new(self.expression(a, given))),
            Expr::Exponential(a) => Node::Exponential(Box::new(self.expression(a, given))),
            Expr::Logarithm(a) => Node::Logarithm(Box::new(self.expression(a, given))),
            Expr::Function(function, a) => {
                Node::Function(*function, Box::new(self.expression(a, given)))
            }
            Expr::Least(a, b) => {
                let (a, b) = two(a, b, self);
                Node::least(a, b, &|at| self.exact(at))
            }
            Expr::Greatest(a, b) => {
                let (a, b) = two(a, b, self);
                Node::greatest(a, b, &|at| self.exact(at))
            }
            Expr::Call(body, arguments) => {
                let given: Vec<Node> = arguments
                    .iter()
                    .map(|argument| self.expression(argument, given))
                    .collect();
                self.expression(&body.expression, &given)
            }
            Expr::Case(when, then, otherwise) => {
                let case = if self.holds(when, given) {
                    then
                } else {
                    otherwise
                };
                self.expression(case, given)
            }
        }
    }

    /// Whether a condition holds on this boat; what decides is not shown.
    fn holds(&self, condition: &Condition, given: &[Node]) -> bool {
        let given: Vec<f64> = given.iter().map(|node| self.value(node)).collect();
        condition.holds(&given)
    }
}

/// A figure described in words.
pub(super) fn described(name: &str, unit: &'static str, value: f64) -> Term {
    Term::Figure(Used::described(name, unit, value))
}

/// A figure described in words that may not be there.
pub(super) fn maybe(name: &str, unit: &'static str, value: Option<f64>) -> Term {
    described(name, unit, value.unwrap_or(f64::NAN))
}
