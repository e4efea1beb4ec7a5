//! What is said of a value that an input does not take.

use crate::schema::{Excerpt, FieldSpec, InputError, InputRange};
use crate::units::Reader;

/// Why an input does not take a value: what was typed, what is wrong with it and
/// what the input takes, in the unit that the reader types it in.
pub fn input_error(error: &InputError, reader: &Reader) -> String {
    let span = |range: &InputRange| reader.input_range(range.low, range.high, range.unit);
    match error {
        InputError::Empty { label, range } => {
            format!("{label} is empty; it takes {}.", span(range))
        }
        InputError::NotANumber {
            label,
            typed,
            range,
        } => {
            let span = span(range);
            format!("“{typed}” is not a number; {label} takes {span}.")
        }
        InputError::NotFinite {
            label,
            typed,
            range,
        } => {
            let span = span(range);
            format!("{typed} is not a number that can be worked with; {label} takes {span}.")
        }
        InputError::TooLow {
            label,
            typed,
            range,
        } => format!("{typed} is too little; {label} takes {}.", span(range)),
        InputError::TooHigh {
            label,
            typed,
            range,
        } => format!("{typed} is too much; {label} takes {}.", span(range)),
        InputError::NotAnOption {
            label,
            typed,
            options,
        } => {
            let keys: Vec<&str> = options.iter().map(|option| option.key).collect();
            format!("{label} takes one of {}, not “{typed}”.", keys.join(", "))
        }
        InputError::WrongKind { label } => format!("{label} does not take that kind of value."),
    }
}

/// The numbers an input takes: "20 to 4000 A·h"; nothing for a choice.
pub fn span(spec: &FieldSpec, reader: &Reader) -> String {
    spec.accepted().map_or(String::new(), |range| {
        reader.input_range(range.low, range.high, range.unit)
    })
}

/// The beginning of what somebody wrote, in quotes.
pub fn quoted(text: &str) -> String {
    format!("“{}”", Excerpt::of(text))
}
