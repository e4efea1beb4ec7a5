//! How formulas are written, by hand; that figures hold together is asked of
//! whole boats by `tests/properties/workings/`.

use crate::explain::digits::significant;
use crate::explain::figures;
use crate::explain::mathml::MathMl;
use crate::explain::node::Node;
use crate::explain::term::{Shown, Term};
use crate::explain::text;
use crate::explain::used::Used;
use crate::formula::{Source, formula};

const SOURCE: Source = Source("own reasoning");

#[formula(symbol = "I", unit = "A", source = SOURCE)]
fn curve(
    #[symbol("I∞")] infinite: f64,
    #[symbol("n₀")] zero: f64,
    #[symbol("n")] speed: f64,
    #[symbol("f")] share: f64,
) -> f64 {
    let bend = 1.0 - (zero / speed).powi(2);
    infinite * bend.max(0.0).sqrt() - (infinite - zero) / (speed * 2.0) * share.powf(0.5)
}

fn described(name: &str, unit: &'static str, value: f64) -> Term {
    Term::Figure(Used::described(name, unit, value))
}

fn given() -> [Term; 4] {
    [
        described("output", "A", 120.0),
        described("begins", "rpm", 1500.0),
        described("speed", "rpm", 3000.0),
        described("share", "%", 25.0),
    ]
}

#[test]
fn a_formula_with_symbols_and_with_figures() {
    let (shown, node) = Shown::of(&Term::of(curve::FORMULA, given()));
    assert_eq!(
        text::symbols(&shown, &node),
        "I∞ · √(1 − (n₀/n)²) − (I∞ − n₀)/(n · 2) · f^0.5"
    );
    assert_eq!(
        text::figures(&shown, &node, 4),
        "120 · √(1 − (1500/3000)²) − (120 − 1500)/(3000 · 2) · 25 %^0.5"
    );
    // By hand: 103.923… + 0.23 · 0.5.
    assert!((shown.value(&node) - 104.038_048_454).abs() < 1e-9);
}

#[test]
fn a_bound_is_shown_where_it_acts() {
    let [infinite, zero, _, share] = given();
    let slow = described("speed", "rpm", 1000.0);
    let (shown, node) = Shown::of(&Term::of(curve::FORMULA, [infinite, zero, slow, share]));
    let text = text::symbols(&shown, &node);
    assert!(text.starts_with("I∞ · √(max(0, 1 − (n₀/n)²))"), "{text}");
}

#[test]
fn the_second_alternators_symbols_have_a_dash() {
    let term = Term::Sum(vec![
        described("one", "A", 1.0).symbol("I"),
        described("two", "A", 2.0).symbol("I").of_second(),
    ]);
    let (shown, node) = Shown::of(&term);
    assert_eq!(text::symbols(&shown, &node), "I + I′");
    let symbols = MathMl::of(&shown, &node, 4).symbols.unwrap().to_string();
    assert!(symbols.contains("<msup><mi>I</mi><mo>′</mo></msup>"));
}

#[test]
fn brackets_stand_where_they_are_needed() {
    let n = |number: f64| Box::new(Node::Number(number));
    let sum = || Box::new(Node::Sum(n(1.0), n(2.0)));
    for (node, text) in [
        (Node::Difference(n(3.0), sum()), "3 − (1 + 2)"),
        (Node::Sum(sum(), sum()), "1 + 2 + 1 + 2"),
        (Node::Product(n(3.0), sum()), "3 · (1 + 2)"),
        (
            Node::Quotient(n(3.0), Box::new(Node::Product(n(1.0), n(2.0)))),
            "3/(1 · 2)",
        ),
        (
            Node::Quotient(n(3.0), Box::new(Node::Quotient(n(1.0), n(2.0)))),
            "3/(1/2)",
        ),
        (Node::Power(sum(), n(2.0)), "(1 + 2)²"),
        (
            Node::Power(Box::new(Node::Power(n(2.0), n(2.0))), n(-2.0)),
            "(2²)^(−2)",
        ),
        (
            Node::Exponential(Box::new(Node::Negative(Box::new(Node::Quotient(
                n(1.0),
                n(2.0),
            ))))),
            "exp(−(1/2))",
        ),
        (
            Node::Sum(n(1.0), Box::new(Node::Negative(n(2.0)))),
            "1 + (−2)",
        ),
        (Node::Least(vec![*n(1.0), *sum()]), "min(1, 1 + 2)"),
    ] {
        assert_eq!(text::symbols(&Shown::default(), &node), text);
    }
}

#[test]
fn mathml_draws_fractions_roots_and_indices() {
    let (shown, node) = Shown::of(&Term::of(curve::FORMULA, given()));
    let MathMl { symbols, figures } = MathMl::of(&shown, &node, 4);
    let [symbols, figures] = [symbols, figures].map(|formula| formula.unwrap().to_string());
    for part in [
        "<mfrac><msub><mi>n</mi><mtext>0</mtext></msub><mi>n</mi></mfrac>",
        "<msqrt>",
        "<msup><mi>f</mi><mn>0.5</mn></msup>",
    ] {
        assert!(symbols.contains(part), "{part} in {symbols}");
    }
    assert!(figures.contains("<mfrac><mn>1500</mn><mn>3000</mn></mfrac>"));
    assert!(figures.contains("<mrow><mn>25</mn><mo>%</mo></mrow>"));
}

#[test]
fn numbers_are_as_short_as_their_digits_allow() {
    for (number, digits, text) in [
        (0.0, 4, "0"),
        (-0.0, 4, "0"),
        (1234.56, 4, "1235"),
        (123_456.0, 4, "123456"),
        (0.003_93, 4, "0.00393"),
        (0.1, 17, "0.1"),
        (99.996, 4, "100"),
        (-2.5, 4, "-2.5"),
    ] {
        assert_eq!(significant(number, digits), text);
    }
}

#[test]
fn every_figure_has_one_id_and_a_name_that_stands_alone() {
    let mut ids: Vec<&str> = figures::all().map(|figure| figure.id).collect();
    let count = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), count);
    for figure in figures::all() {
        assert!(!figure.name.is_empty(), "{}", figure.id);
        assert!(!figure.name.starts_with('…'), "{}", figure.id);
    }
}
