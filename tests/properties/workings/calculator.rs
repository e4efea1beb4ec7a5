//! Somebody else's calculator, and a formula's text in its signs.

use proptest::prelude::*;

/// The text of a formula in the calculator's signs. Its least and greatest of two
/// stand between them: `min(a, b, c)` is `((a)min(b)min(c))` there, and “57 %”,
/// which is 57 hundredths and holds together, is `(57*0.01)`.
fn plain(figures: &str) -> String {
    let mut plain = String::new();
    // What each bracket that is open belongs to.
    let mut open: Vec<&str> = Vec::new();
    for sign in figures.replace("²", "^2").replace(" %", "%").chars() {
        match sign {
            '·' => plain.push('*'),
            '−' => plain.push('-'),
            '√' => plain.push_str("sqrt"),
            '%' => {
                let start = plain
                    .rfind(|c: char| !c.is_ascii_digit() && c != '.')
                    .map_or(0, |at| at + 1);
                plain.insert(start, '(');
                plain.push_str("*0.01)");
            }
            '(' => {
                let owner = ["min", "max"]
                    .into_iter()
                    .find(|name| plain.ends_with(name));
                if let Some(name) = owner {
                    plain.truncate(plain.len() - name.len());
                    plain.push('(');
                }
                open.push(owner.unwrap_or_default());
                plain.push('(');
            }
            ',' => {
                let owner = open.last().copied().unwrap_or_default();
                plain.push_str(&format!("){owner}("));
            }
            ')' => {
                let owner = open.pop().unwrap_or_default();
                plain.push_str(if owner.is_empty() { ")" } else { "))" });
            }
            other => plain.push(other),
        }
    }
    plain
}

/// What the numbers come to.
pub fn come_to(figures: &str) -> Result<f64, TestCaseError> {
    let text = plain(figures);
    exmex::eval_str::<f64>(&text)
        .map_err(|fault| TestCaseError::fail(format!("“{figures}” as “{text}”: {fault}")))
}

#[test]
fn the_calculators_signs() {
    for (figures, value) in [
        ("10 − (−5) · 57 %", 12.85),
        ("2 · √(1 − (3/5)²)", 1.6),
        ("min(3, max(1, 2) + 4/8, 7)", 2.5),
        ("0.25^(1/0.5) · 16", 1.0),
        ("100 · 1/(50 % · 4)", 50.0),
        ("(−2)² − 1 − 1", 2.0),
        ("12/2/3 · 4", 8.0),
        ("6/(4/2) + exp(−0/4)", 4.0),
    ] {
        let given = come_to(figures).expect("an expression");
        assert!((given - value).abs() < 1e-12, "{figures} gives {given}");
    }
}
