//! The worksheet as a file and as a link, and what a reader did not understand.

use ampwright_core::boat::Worksheet;
use ampwright_core::exchange::{to_json, to_link};
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
    /// What was not understood, a sentence each.
    not_understood: Vec<String>,
}

pub fn check(source: &Source) -> Result<Outcome, Error> {
    let boats: Vec<CheckedBoat> = source
        .readings()?
        .into_iter()
        .map(|reading| CheckedBoat {
            contents: reading.sheet.contents(),
            name: reading.sheet.name,
            not_understood: reading.remarks,
        })
        .collect();
    let understood = boats.iter().all(|boat| boat.not_understood.is_empty());
    print_json(&Check { understood, boats })?;
    Ok(match understood {
        true => Outcome::Fine,
        false => Outcome::NotUnderstood,
    })
}
