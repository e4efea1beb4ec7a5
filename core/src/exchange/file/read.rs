//! Reading the envelope: whatever is not understood is remarked on, together with
//! what stands in its place. Uses the readers of its parts.

use serde_json::error::Category;
use serde_json::{Map, Value as Json};

use crate::boat::Worksheet;
use crate::boat::reading::{ReadError, Remark, TextKind};
use crate::exchange::file::TYPE;
use crate::exchange::file::inputs::{read_inputs, read_known};
use crate::exchange::file::lists::{arrangement_from_json, leg_from_json, load_from_json};
use crate::exchange::file::parts::{dropped, name_from_json};
use crate::exchange::file::year::read_year;
use crate::exchange::limits::{LONGEST_FILE, bounded, not_endless};
use crate::exchange::remarks::Remarks;
use crate::exchange::ticks::ticks_from_json;
use crate::exchange::version1::{NEWEST, OLDEST, keep_meaning};

/// A worksheet that was read, with a remark for everything that was not understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// What was understood; the rest is at its default.
    pub sheet: Worksheet,
    /// What was not.
    pub remarks: Vec<Remark>,
}

/// Reads a worksheet from JSON text.
///
/// # Errors
/// When the text is no worksheet at all. Anything less is a remark.
pub fn read_json(text: &str) -> Result<Reading, ReadError> {
    read_value(&parsed(text)?)
}

/// JSON, with or without the mark that some editors put in front.
pub(in crate::exchange) fn parsed(text: &str) -> Result<Json, ReadError> {
    not_endless(text, TextKind::File, LONGEST_FILE)?;
    let text = text.trim_start_matches('\u{feff}');
    serde_json::from_str(text).map_err(|fault| match fault.classify() {
        _ if text.trim().is_empty() => ReadError::Empty,
        Category::Eof => ReadError::BreaksOff { line: fault.line() },
        _ => ReadError::NotJson {
            line: fault.line(),
            column: fault.column(),
        },
    })
}

/// Whether parsed JSON says that it is a worksheet, of whatever version.
pub(in crate::exchange) fn is_worksheet(json: &Json) -> bool {
    json.get("type").and_then(Json::as_str) == Some(TYPE)
}

/// Reads a worksheet from parsed JSON.
///
/// # Errors
/// When it is no worksheet at all, or one of a later version.
pub fn read_value(json: &Json) -> Result<Reading, ReadError> {
    let Some(envelope) = json.as_object() else {
        return Err(ReadError::NotAWorksheet);
    };
    if !is_worksheet(json) {
        return Err(ReadError::WrongType { expected: TYPE });
    }
    let version = check_version(envelope, TextKind::Worksheet)?;
    let mut sheet = Worksheet::default();
    let mut remarks = Remarks::default();
    for (part, json) in envelope {
        match (part.as_str(), json) {
            ("type" | "version", _) => {}
            ("name", json) => sheet.name = name_from_json(json, &mut remarks),
            ("inputs", Json::Object(inputs)) => read_inputs(inputs, &mut sheet, &mut remarks),
            ("known", Json::Object(known)) => read_known(known, &mut sheet, &mut remarks),
            ("loads", Json::Array(rows)) => {
                let rows = rows
                    .iter()
                    .filter_map(|row| load_from_json(row, &mut remarks));
                sheet.loads = rows.collect();
            }
            ("legs", Json::Array(rows)) => {
                let rows = rows
                    .iter()
                    .filter_map(|row| leg_from_json(row, &mut remarks));
                sheet.legs = rows.collect();
            }
            ("year", Json::Object(year)) => read_year(year, &mut sheet, &mut remarks),
            ("arrangements", Json::Array(all)) => {
                let all = all
                    .iter()
                    .filter_map(|one| arrangement_from_json(one, &mut remarks));
                sheet.arrangements = all.collect();
            }
            ("done", Json::Array(ids)) => ticks_from_json(ids, &mut sheet, &mut remarks),
            (part, _) => remarks.push(dropped(part)),
        }
    }
    // First, as a worksheet is looked at once for each of its arrangements.
    bounded(&mut sheet, &mut remarks);
    if version == OLDEST {
        keep_meaning(&mut sheet);
    }
    Ok(Reading {
        sheet,
        remarks: remarks.finish(),
    })
}

/// The version of an envelope, if it can be read.
pub(in crate::exchange) fn check_version(
    envelope: &Map<String, Json>,
    what: TextKind,
) -> Result<u64, ReadError> {
    match envelope.get("version").and_then(Json::as_u64) {
        Some(version) if (OLDEST..=NEWEST).contains(&version) => Ok(version),
        Some(version) if version > NEWEST => Err(ReadError::LaterVersion {
            what,
            version,
            newest: NEWEST,
        }),
        _ => Err(ReadError::NoVersion { what }),
    }
}
