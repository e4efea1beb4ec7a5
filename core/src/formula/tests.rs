//! A formula's data come to what its function gives.

use crate::formula::{Source, formula};

const SOURCE: Source = Source("own reasoning");
const TWO: f64 = 2.0;

#[formula(symbol = "h", unit = "m", source = SOURCE)]
fn half(#[symbol("x")] x: f64) -> f64 {
    x / TWO
}

#[allow(clippy::neg_cmp_op_on_partial_ord, reason = "what is tested")]
#[formula(symbol = "y", unit = "", source = SOURCE, constants(TWO("k", "two", "")))]
fn everything(#[symbol("a")] a: f64, #[symbol("b")] b: f64) -> f64 {
    if a > 3.0 && !(b <= 0.5) {
        return half(a) + half(b);
    }
    let step = (a.powi(2) + b).sqrt().max(0.5) * TWO;
    let step = step - (-a).exp() + (b + 1.0).ln();
    if step < 1.0 || a == b {
        step.clamp(-1.0, 1.0)
    } else if b >= 2.0 {
        a.powf(1.5) / b.powi(-2)
    } else {
        step.min(a)
    }
}

#[test]
fn data_and_function_agree() {
    let formula = everything::FORMULA;
    for a in 0..50 {
        for b in 0..50 {
            let given = [0.13 * f64::from(a), 0.09 * f64::from(b)];
            let (one, two) = (formula.body.value(&given), (formula.value)(given));
            assert!(
                (one - two).abs() <= 1e-12 * two.abs(),
                "{given:?}: {one} {two}"
            );
            assert_eq!(two, everything(given[0], given[1]));
        }
    }
}

#[test]
fn symbols_are_kept() {
    let body = everything::FORMULA.body;
    assert_eq!((body.name, body.symbol, body.unit), ("everything", "y", ""));
    let symbols: Vec<&str> = body.arguments.iter().map(|one| one.symbol).collect();
    assert_eq!(symbols, ["a", "b"]);
}
