//! Reading a worksheet: from a file, standard input or a link; one of several
//! boats; with some inputs changed.

use std::fs::File;
use std::io::{self, Read, Write as _};

use ampwright_core::boat::{Key, Worksheet, demo};
use ampwright_core::exchange::{ReadError, Reading, open_link, read_file};
use ampwright_core::text::remarks::remark;

use crate::arguments::{BoatOptions, Change, Source};
use crate::error::Error;

/// Most that is read \[bytes\]; the readers of the core refuse less than that.
const MOST: u64 = 64_000_000;

impl BoatOptions {
    /// The boat asked for. What was not understood of it goes to standard
    /// error, a sentence a line.
    pub fn read(&self) -> Result<Worksheet, Error> {
        let readings = self.source.readings()?;
        let Reading { mut sheet, remarks } = chosen(readings, self.boat.as_deref())?;
        for one in &remarks {
            // Nobody may be reading; the answer counts.
            let _ = writeln!(io::stderr(), "{}", remark(one));
        }
        for change in &self.set {
            apply(&mut sheet, change)?;
        }
        Ok(sheet)
    }
}

impl Source {
    /// Every worksheet in it, each with what was not understood.
    pub fn readings(&self) -> Result<Vec<Reading>, Error> {
        let Some(from) = self.from.as_deref() else {
            return Ok(vec![Reading {
                sheet: demo(),
                remarks: Vec::new(),
            }]);
        };
        if let Some(fragment) = link_in(from) {
            return opened("The link", fragment);
        }
        let from_name = if from == "-" { "Standard input" } else { from };
        let text = text_of(from).map_err(|source| Error::Unreadable {
            from: from_name.to_string(),
            source,
        })?;
        match link_in(&text) {
            Some(fragment) => opened(from_name, fragment),
            None => read_file(&text).map_err(|reason| not_a_worksheet(from_name, reason)),
        }
    }
}

/// The part of a link that holds the worksheet, if the text is a link.
fn link_in(text: &str) -> Option<&str> {
    let text = text.trim_start_matches('\u{feff}').trim();
    let is_address = text.starts_with("https://") || text.starts_with("http://");
    match text.split_once('#') {
        Some((before, fragment)) if before.is_empty() || is_address => Some(fragment),
        _ if text.starts_with("v=") => Some(text),
        _ => None,
    }
}

fn opened(from: &str, fragment: &str) -> Result<Vec<Reading>, Error> {
    let opened = open_link(fragment).map_err(|reason| not_a_worksheet(from, reason))?;
    Ok(vec![Reading {
        sheet: opened.sheet,
        remarks: opened.remarks,
    }])
}

fn not_a_worksheet(from: &str, reason: ReadError) -> Error {
    Error::NotAWorksheet {
        from: from.to_string(),
        reason,
    }
}

fn text_of(from: &str) -> io::Result<String> {
    let mut text = String::new();
    if from == "-" {
        io::stdin().lock().take(MOST).read_to_string(&mut text)?;
    } else {
        File::open(from)?.take(MOST).read_to_string(&mut text)?;
    }
    Ok(text)
}

/// The boat of that name, or else of that number.
fn chosen(mut readings: Vec<Reading>, wanted: Option<&str>) -> Result<Reading, Error> {
    let names: Vec<String> = readings
        .iter()
        .map(|reading| reading.sheet.name.clone())
        .collect();
    let at = match wanted {
        None if names.len() == 1 => 0,
        None => return Err(Error::SeveralBoats(names)),
        Some(wanted) => place(&names, wanted)?,
    };
    Ok(readings.swap_remove(at))
}

fn place(names: &[String], wanted: &str) -> Result<usize, Error> {
    let called: Vec<usize> = (0..names.len())
        .filter(|at| names[*at].trim() == wanted.trim())
        .collect();
    match called[..] {
        [at] => return Ok(at),
        [] => {}
        _ => {
            return Err(Error::SameName {
                name: wanted.to_string(),
                numbers: called.iter().map(|at| at + 1).collect(),
            });
        }
    }
    wanted
        .trim()
        .parse::<usize>()
        .ok()
        .and_then(|number| number.checked_sub(1))
        .filter(|at| *at < names.len())
        .ok_or_else(|| Error::NoSuchBoat {
            wanted: wanted.to_string(),
            there: names.to_vec(),
        })
}

fn apply(sheet: &mut Worksheet, Change { key, value }: &Change) -> Result<(), Error> {
    let input = Key::named(key).ok_or_else(|| Error::NoSuchInput(key.clone()))?;
    input
        .spec()
        .read(value)
        .and_then(|value| sheet.state(input, value))
        .map_err(|reason| Error::BadValue {
            key: key.clone(),
            reason,
        })
}
