//! Numbers short enough to agree on every platform.

use serde_json::{Number, Value as Json};

/// The same with every number at four significant digits.
pub fn rounded(json: Json) -> Json {
    match json {
        Json::Number(number) => number.as_f64().map_or(Json::Number(number), short),
        Json::Array(rows) => rows.into_iter().map(rounded).collect(),
        Json::Object(parts) => parts
            .into_iter()
            .map(|(name, part)| (name, rounded(part)))
            .collect(),
        other => other,
    }
}

fn short(number: f64) -> Json {
    // Nothing below a millionth of any unit is worth keeping.
    let number = if number.abs() < 1e-6 { 0.0 } else { number };
    let short: f64 = format!("{number:.3e}").parse().expect("a number");
    Number::from_f64(short).map_or(Json::Null, Json::Number)
}

#[test]
fn four_digits() {
    for (long, short) in [
        (123.456_78, 123.5),
        (0.012_345_678, 0.01235),
        (-98_765.4, -98_770.0),
        (1e-17, 0.0),
        (-0.0, 0.0),
    ] {
        assert_eq!(rounded(Json::from(long)), Json::from(short));
    }
}
