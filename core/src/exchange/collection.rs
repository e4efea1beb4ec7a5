//! A file of one worksheet or of many:
//!
//! ```json
//! {"type": "ampwright-worksheets", "version": 2, "worksheets": [{"type": "ampwright-worksheet", …}, …]}
//! ```

use serde_json::{Map, Value as Json};

use crate::boat::Worksheet;
use crate::boat::reading::{Listed, ReadError, Remark, TextKind};
use crate::exchange::file::{Reading, check_version, dropped, parsed, read_value, to_json};
use crate::exchange::remarks::Remarks;
use crate::exchange::version1::NEWEST;

/// Most worksheets that are taken from one file.
pub const MOST_SHEETS: usize = 1000;
/// What the envelope of many calls itself.
const TYPE: &str = "ampwright-worksheets";

/// Writes worksheets as one JSON file.
pub fn to_collection(sheets: &[Worksheet]) -> Json {
    let mut envelope = Map::new();
    envelope.insert("type".into(), TYPE.into());
    envelope.insert("version".into(), NEWEST.into());
    let sheets: Vec<Json> = sheets.iter().map(to_json).collect();
    envelope.insert("worksheets".into(), Json::Array(sheets));
    Json::Object(envelope)
}

/// Reads a file of one worksheet or of many. One among many that cannot be
/// read is remarked on with the first that can.
///
/// # Errors
/// When no worksheet can be read from it.
pub fn read_file(text: &str) -> Result<Vec<Reading>, ReadError> {
    let json = parsed(text)?;
    let Some(envelope) = json
        .as_object()
        .filter(|envelope| envelope.get("type").and_then(Json::as_str) == Some(TYPE))
    else {
        return read_value(&json).map(|reading| vec![reading]);
    };
    check_version(envelope, TextKind::Collection)?;
    let mut readings: Vec<Reading> = Vec::new();
    let mut remarks = Remarks::default();
    let mut count = 0;
    for (part, json) in envelope {
        match (part.as_str(), json) {
            ("type" | "version", _) => {}
            ("worksheets", Json::Array(sheets)) => {
                count = sheets.len();
                if count > MOST_SHEETS {
                    remarks.push(Remark::TooMany {
                        what: Listed::Worksheets,
                        count,
                        kept: MOST_SHEETS,
                    });
                }
                for (number, sheet) in (1..).zip(sheets).take(MOST_SHEETS) {
                    match read_value(sheet) {
                        Ok(reading) => readings.push(reading),
                        Err(error) => remarks.push(Remark::WorksheetNotRead {
                            number,
                            of: count,
                            error: Box::new(error),
                        }),
                    }
                }
            }
            (part, _) => remarks.push(dropped(part)),
        }
    }
    let mut remarks = remarks.finish();
    match readings.first_mut() {
        Some(first) => {
            remarks.append(&mut first.remarks);
            first.remarks = remarks;
            Ok(readings)
        }
        None if count == 0 => Err(ReadError::NoWorksheets),
        None => Err(ReadError::NoneRead { remarks }),
    }
}
