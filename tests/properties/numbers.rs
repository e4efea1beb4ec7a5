//! Numbers as people type them.

use ampwright_core::boat::Key;
use ampwright_core::schema::{Value, parse_number};
use ampwright_core::text::errors::input_error;
use ampwright_core::units::Reader;
use proptest::prelude::*;

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
        let complaint = input_error(
            &capacity.spec().read(text).expect_err(text),
            &Reader::METRIC,
        );
        assert!(complaint.contains("10 to 5000"), "{complaint}");
        assert!(complaint.ends_with('.'), "{complaint}");
    }
    for (text, meant) in [("10", 10.0), ("5000", 5000.0), (" 460,5 ", 460.5)] {
        assert_eq!(capacity.spec().read(text), Ok(Value::Number(meant)));
    }
}

/// A decimal as somebody might write it, or half-way between two numbers.
fn decimals() -> impl Strategy<Value = String> {
    prop_oneof![
        "[-+]?[0-9]{1,30}([.,][0-9]{0,40})?([eE][-+]?[0-9]{1,4})?",
        "[-+]?[.][0-9]{1,40}([eE][-+]?[0-9]{1,3})?",
        "[-+]?0{0,20}[0-9]{15,19}e-?[0-9]{1,2}",
        any::<f64>().prop_map(|number| number.to_string()),
        any::<f64>().prop_map(|number| format!("{number:e}")),
        // All its digits, and what lies half-way between two numbers.
        any::<f32>().prop_map(|number| format!("{number:.160}")),
        (any::<u64>(), -60..60_i32).prop_map(|(whole, power)| {
            format!("{:.70}", whole as f64 * f64::from(power).exp2())
        }),
        any::<u64>().prop_map(|whole| {
            let odd = u128::from(whole | 1 << 63) >> 10 << 1 | 1;
            (odd << 40).to_string()
        }),
    ]
}

proptest! {
    #![proptest_config(crate::cases(20_000))]

    /// The nearest number, to the last bit: the standard library reads the same.
    #[test]
    fn nearest_number(text in decimals()) {
        let standard: Option<f64> = text.replace(',', ".").parse().ok();
        prop_assert_eq!(parse_number(&text).map(f64::to_bits), standard.map(f64::to_bits), "{}", text);
    }
}
