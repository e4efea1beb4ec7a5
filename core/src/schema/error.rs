//! Why an input does not take a value.

use std::fmt;

use serde::{Serialize, Serializer};

use crate::schema::value::symbol;
use crate::schema::{Choice, Excerpt};
use crate::units::UnitOfMeasure;

/// The numbers an input takes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct InputRange {
    /// Smallest accepted.
    pub low: f64,
    /// Largest accepted.
    pub high: f64,
    /// The unit of both.
    #[serde(serialize_with = "symbol")]
    pub unit: &'static UnitOfMeasure,
}

/// Why an input does not take a value. `label` is what the form calls the input,
/// `typed` the beginning of what was typed, in the unit it was typed in; `range`
/// is in the unit the input is kept in.
///
/// The sentence for the user is [`crate::text::errors::input_error`]; `Display`
/// gives a short line for logs and programs.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum InputError {
    /// Nothing was typed, and the input has to have a number.
    Empty {
        /// The input.
        label: &'static str,
        /// What it takes.
        range: InputRange,
    },
    /// Not a number.
    NotANumber {
        /// The input.
        label: &'static str,
        /// What was typed.
        typed: Excerpt,
        /// What it takes.
        range: InputRange,
    },
    /// Infinite, or too large for any number.
    NotFinite {
        /// The input.
        label: &'static str,
        /// What was typed.
        typed: Excerpt,
        /// What it takes.
        range: InputRange,
    },
    /// Below the range.
    TooLow {
        /// The input.
        label: &'static str,
        /// What was typed.
        typed: Excerpt,
        /// What it takes.
        range: InputRange,
    },
    /// Above the range.
    TooHigh {
        /// The input.
        label: &'static str,
        /// What was typed.
        typed: Excerpt,
        /// What it takes.
        range: InputRange,
    },
    /// Not one of a choice's options.
    NotAnOption {
        /// The input.
        label: &'static str,
        /// What was typed.
        typed: Excerpt,
        /// What it takes.
        #[serde(serialize_with = "keys")]
        options: &'static [Choice],
    },
    /// A number for a choice, an option for a number, or nothing for what may
    /// not be empty.
    WrongKind {
        /// The input.
        label: &'static str,
    },
}

impl InputError {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            InputError::Empty { .. } => "empty",
            InputError::NotANumber { .. } => "not_a_number",
            InputError::NotFinite { .. } => "not_finite",
            InputError::TooLow { .. } => "too_low",
            InputError::TooHigh { .. } => "too_high",
            InputError::NotAnOption { .. } => "not_an_option",
            InputError::WrongKind { .. } => "wrong_kind",
        }
    }
}

impl fmt::Display for InputError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            InputError::Empty { label, .. } => write!(f, "{label}: empty"),
            InputError::NotANumber { label, typed, .. } => {
                write!(f, "{label}: {typed:?} is not a number")
            }
            InputError::NotFinite { label, typed, .. } => {
                write!(f, "{label}: {typed} is not finite")
            }
            InputError::TooLow {
                label,
                typed,
                range,
            } => write!(
                f,
                "{label}: {typed} is below {} {}",
                range.low, range.unit.symbol
            ),
            InputError::TooHigh {
                label,
                typed,
                range,
            } => write!(
                f,
                "{label}: {typed} is above {} {}",
                range.high, range.unit.symbol
            ),
            InputError::NotAnOption { label, typed, .. } => {
                write!(f, "{label}: {typed:?} is not an option")
            }
            InputError::WrongKind { label } => write!(f, "{label}: wrong kind of value"),
        }
    }
}

impl std::error::Error for InputError {}

/// Writes options as their keys.
fn keys<S: Serializer>(options: &[Choice], to: S) -> Result<S::Ok, S::Error> {
    to.collect_seq(options.iter().map(|option| option.key))
}

#[cfg(test)]
mod tests {
    use crate::boat::{Key, key};
    use crate::schema::{InputError, Value};

    fn refused(name: &str, text: &str) -> InputError {
        let spec = Key::named(name).expect("a key").spec();
        spec.read(text).expect_err(text)
    }

    /// What a program is told: a code and figures, in full.
    #[test]
    fn as_json() {
        let too_low = refused("bank_capacity_ah", "5");
        let json = serde_json::json!({
            "code": "too_low",
            "label": "Capacity",
            "typed": "5",
            "range": {"low": 10.0, "high": 5000.0, "unit": "A·h"},
        });
        assert_eq!(serde_json::to_value(too_low).expect("JSON"), json);
        let option = serde_json::to_value(refused("reg_kind", "smart")).expect("JSON");
        assert_eq!(
            option["options"],
            serde_json::json!(["external", "internal"])
        );
    }

    #[test]
    fn codes_are_those_of_the_json() {
        let wrong_kind = key!(reg.kind)
            .spec()
            .accept(Value::Absent)
            .expect_err("refused");
        let errors = [
            (refused("bank_capacity_ah", ""), "empty"),
            (refused("bank_capacity_ah", "much"), "not_a_number"),
            (refused("bank_capacity_ah", "1e999"), "not_finite"),
            (refused("bank_capacity_ah", "9.9"), "too_low"),
            (refused("bank_capacity_ah", "5001"), "too_high"),
            (refused("reg_kind", "smart"), "not_an_option"),
            (wrong_kind, "wrong_kind"),
        ];
        for (error, code) in errors {
            assert_eq!(error.code(), code);
            assert_eq!(serde_json::to_value(error).expect("JSON")["code"], code);
        }
    }

    #[test]
    fn a_short_line() {
        let line = refused("bank_capacity_ah", "5").to_string();
        assert_eq!(line, "Capacity: 5 is below 10 A·h");
    }
}
