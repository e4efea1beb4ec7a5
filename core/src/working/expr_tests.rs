//! How formulas are written and what they come to, by hand.

use super::expr::{self, Expr, From, Leaf, least, num, power, root, significant, square};

fn leaf(symbol: &str, value: f64, unit: &'static str) -> Expr {
    expr::leaf(Leaf {
        symbol: symbol.to_string(),
        name: String::new(),
        value,
        unit,
        from: From::Given,
    })
}

#[test]
fn symbols_and_figures_have_one_shape() {
    // By hand: 120·√(1 − (1500/3000)²) is 103.92.
    let (i, n0, n) = (
        leaf("I∞", 120.0, "A"),
        leaf("n₀", 1500.0, "rpm"),
        leaf("n", 3000.0, "rpm"),
    );
    let curve = i * root(num(1.0) - square(n0 / n));
    assert_eq!(curve.symbols(), "I∞ · √(1 − (n₀/n)²)");
    assert_eq!(curve.figures(103.923, 0), "120 · √(1 − (1500/3000)²)");
    assert!((curve.exact() - 103.923_048_454_132_64).abs() < 1e-9);
}

#[test]
fn brackets_only_where_they_are_needed() {
    let [a, b, c] = ["a", "b", "c"].map(|name| leaf(name, 1.0, ""));
    let [a, b, c] = [&a, &b, &c].map(|part| || part.clone());
    for (expr, text) in [
        (a() - (b() - c()), "a − (b − c)"),
        (a() - b() - c(), "a − b − c"),
        (a() / (b() * c()), "a/(b · c)"),
        (a() / b() * c(), "a/b · c"),
        (a() * (b() + c()), "a · (b + c)"),
        (power(a() / b(), c()), "(a/b)^c"),
        (power(a(), num(-2.0)), "a^(−2)"),
        (power(a(), b() * c()), "a^(b · c)"),
        (square(square(a())), "(a²)²"),
        (least(vec![a() - b(), c()]), "min(a − b, c)"),
    ] {
        assert_eq!(expr.symbols(), text);
    }
}

#[test]
fn shares_and_minus_signs() {
    let frost = leaf("T", -5.0, "°C");
    let share = leaf("η", 57.0, "%");
    let expr = num(10.0) - frost * share;
    assert_eq!(expr.figures(12.85, 2), "10 − (−5) · 57 %");
    assert!((expr.exact() - 12.85).abs() < 1e-12);
}

#[test]
fn digits_follow_the_result() {
    // A third needs as many digits as the result shows.
    let third = leaf("a", 1.0 / 3.0, "");
    let expr = num(3000.0) * third;
    assert_eq!(expr.figures(1000.0, 0), "3000 · 0.3333");
    assert_eq!(expr.figures(1000.0, 2), "3000 · 0.333333");
}

#[test]
fn numbers() {
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
