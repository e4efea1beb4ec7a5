//! How formulas are written and what they come to, by hand.

use crate::working::expr::{come_to, printed, replaced, significant};

#[test]
fn names_are_replaced_and_signs_printed() {
    let formula = "I∞*√(1-(n₀/n)^2)+max(0;-x)*0.85";
    let marked = replaced(formula, &mut |name, out| {
        out.push_str(name);
        out.push('′');
    });
    assert_eq!(
        printed(&marked),
        "I∞′ · √(1 − (n₀′/n′)²) + max(0, −x′) · 0.85"
    );
    assert_eq!(printed("10-(-5)*57%"), "10 − (−5) · 57 %");
}

#[test]
fn figures_come_to() {
    // By hand.
    for (figures, value) in [
        ("120*√(1-(1500/3000)^2)", 103.923_048_454_132_64),
        ("10-(-5)*57%", 12.85),
        ("min(3;max(1;2)+4/8;7)", 2.5),
        ("0.25^(1/0.5)*16", 1.0),
        ("100*1/(50%*4)", 50.0),
        ("(-2)^2-1-1", 2.0),
        ("12/2/3*4", 8.0),
    ] {
        assert!((come_to(figures) - value).abs() < 1e-12, "{figures}");
    }
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
