//! Numbers as people type them.

use ampwright_core::fields::{Value, parse_number};
use ampwright_core::worksheet::Key;

/// What is typed, and what it means.
const TYPED: &[(&str, Option<f64>)] = &[
    ("12", Some(12.0)),
    ("12.5", Some(12.5)),
    ("12,5", Some(12.5)),
    ("  7 ", Some(7.0)),
    ("1 000", Some(1000.0)),
    ("1\u{a0}000,5", Some(1000.5)),
    ("1\u{202f}000", Some(1000.0)),
    ("1.", Some(1.0)),
    ("1,", Some(1.0)),
    (".5", Some(0.5)),
    (",5", Some(0.5)),
    ("-5", Some(-5.0)),
    ("\u{2212}5", Some(-5.0)),
    ("+5", Some(5.0)),
    ("1e3", Some(1000.0)),
    ("1E-3", Some(0.001)),
    ("1e99", Some(1e99)),
    ("1e999", Some(f64::INFINITY)),
    ("007", Some(7.0)),
    ("", None),
    ("   ", None),
    (".", None),
    ("-", None),
    ("e5", None),
    ("1e", None),
    ("--5", None),
    ("1-2", None),
    ("1.2.3", None),
    ("1.234,5", None),
    ("abc", None),
    ("12 A", None),
    ("12%", None),
    ("0x10", None),
    ("1_000", None),
    ("1'000", None),
    ("NaN", None),
    ("inf", None),
    ("\u{661}\u{662}", None),
    ("\u{ff11}\u{ff12}", None),
    ("½", None),
];

#[test]
fn typed_numbers() {
    for (text, meant) in TYPED {
        assert_eq!(parse_number(text), *meant, "“{text}”");
    }
}

/// What can be parsed but not worked with is refused with a sentence.
#[test]
fn refused_numbers() {
    let capacity = Key::named("bank_capacity_ah").expect("a key");
    for text in [
        "1e99", "1e999", "-1e999", "-5", "0", "9.999", "5000.001", "", "abc",
    ] {
        let complaint = capacity.spec().read(text).expect_err(text);
        assert!(complaint.0.contains("10 to 5000"), "{complaint}");
        assert!(complaint.0.ends_with('.'), "{complaint}");
    }
    for (text, meant) in [("10", 10.0), ("5000", 5000.0), (" 460,5 ", 460.5)] {
        assert_eq!(capacity.spec().read(text), Ok(Value::Number(meant)));
    }
}
