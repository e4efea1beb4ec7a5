//! The worksheet as a file and as a link, and what a reader did not understand.

use ampwright_core::boat::Worksheet;
use ampwright_core::exchange::{Remark, to_json, to_link};
use ampwright_core::text::remarks::remark;
use serde::Serialize;

use crate::Outcome;
use crate::arguments::Source;
use crate::document::{print_bare_json, print_json, print_text};
use crate::error::Error;

pub fn worksheet(sheet: &Worksheet) -> Result<(), Error> {
    print_bare_json(&to_json(sheet))
}

pub fn link(sheet: &Worksheet) -> Result<(), Error> {
    print_text(&format!("#{}\n", to_link(sheet)))
}

/// What was read.
#[derive(Serialize)]
struct Check {
    /// Whether everything was understood.
    understood: bool,
    boats: Vec<CheckedBoat>,
}

/// A boat that was read.
#[derive(Serialize)]
struct CheckedBoat {
    name: String,
    /// "18 inputs, 11 loads and 1 arrangement".
    contents: String,
    /// What was not understood.
    not_understood: Vec<Told>,
}

/// A remark: its code and figures, and its sentence.
#[derive(Serialize)]
struct Told {
    #[serde(flatten)]
    remark: Remark,
    text: String,
}

impl From<Remark> for Told {
    fn from(from: Remark) -> Told {
        Told {
            text: remark(&from),
            remark: from,
        }
    }
}

pub fn check(source: &Source) -> Result<Outcome, Error> {
    let boats: Vec<CheckedBoat> = source
        .readings()?
        .into_iter()
        .map(|reading| CheckedBoat {
            contents: reading.sheet.contents(),
            name: reading.sheet.name,
            not_understood: reading.remarks.into_iter().map(Told::from).collect(),
        })
        .collect();
    let understood = boats.iter().all(|boat| boat.not_understood.is_empty());
    print_json(&Check { understood, boats })?;
    Ok(match understood {
        true => Outcome::Fine,
        false => Outcome::NotUnderstood,
    })
}
