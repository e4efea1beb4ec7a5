//! Every input there is.

use ampwright_core::boat::{Key, Worksheet};
use ampwright_core::schema::{Choice, Kind, Value};
use serde::Serialize;

use crate::document::print_json;
use crate::error::Error;

#[derive(Serialize)]
struct Inputs {
    inputs: Vec<Input>,
}

/// One input.
#[derive(Serialize)]
struct Input {
    /// Its name in files, links and `--set`.
    key: String,
    /// Heading of the section it stands in.
    section: &'static str,
    label: &'static str,
    #[serde(flatten)]
    takes: Takes,
    /// Where to read it on a boat, and what it does.
    help: &'static str,
}

/// What an input takes.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
enum Takes {
    /// A number from `low` to `high`.
    Number {
        unit: &'static str,
        low: f64,
        high: f64,
        default: f64,
    },
    /// A number, or null.
    OptionalNumber {
        unit: &'static str,
        low: f64,
        high: f64,
        default: Option<f64>,
        /// What null stands for.
        null_means: &'static str,
        /// The figure that null stands for on an otherwise empty worksheet.
        null_stands_for: Option<f64>,
    },
    /// One of some options.
    Choice {
        options: Vec<OfferedOption>,
        default: &'static str,
    },
}

/// An option of a choice.
#[derive(Serialize)]
struct OfferedOption {
    key: &'static str,
    label: &'static str,
}

impl Takes {
    fn of(key: Key, blank: &Worksheet) -> Takes {
        match key.spec().kind {
            Kind::Number {
                low,
                high,
                default,
                unit,
            } => Takes::Number {
                unit: unit.symbol,
                low,
                high,
                default,
            },
            Kind::Optional {
                low,
                high,
                empty_says,
                unit,
            } => Takes::OptionalNumber {
                unit: unit.symbol,
                low,
                high,
                default: match key.spec().default() {
                    Value::Number(number) => Some(number),
                    Value::Absent | Value::Choice(_) => None,
                },
                null_means: empty_says,
                null_stands_for: blank.figure(key),
            },
            Kind::Choice { options, default } => Takes::Choice {
                default: options.get(default).map_or("", |option| option.key),
                options: options.iter().map(OfferedOption::from).collect(),
            },
        }
    }
}

impl From<&Choice> for OfferedOption {
    fn from(choice: &Choice) -> OfferedOption {
        OfferedOption {
            key: choice.key,
            label: choice.label,
        }
    }
}

pub fn inputs() -> Result<(), Error> {
    let blank = Worksheet::default();
    let inputs = Key::all()
        .map(|key| Input {
            key: key.name(),
            section: key.section.title(),
            label: key.spec().label,
            takes: Takes::of(key, &blank),
            help: key.spec().help,
        })
        .collect();
    print_json(&Inputs { inputs })
}
