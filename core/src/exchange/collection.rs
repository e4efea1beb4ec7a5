//! A file of one worksheet or of many:
//!
//! ```json
//! {"type": "ampwright-worksheets", "version": 2, "worksheets": [{"type": "ampwright-worksheet", …}, …]}
//! ```

use serde_json::{Map, Value as Json};

use crate::boat::Worksheet;
use crate::boat::reading::{Listed, ReadError, Remark, TextKind};
use crate::exchange::file::{
    Reading, check_version, dropped, is_worksheet, parsed, read_value, to_json,
};
use crate::exchange::remarks::Remarks;
use crate::exchange::version1::NEWEST;

/// Most worksheets that are taken from one file.
pub const MOST_SHEETS: usize = 1000;
/// What the envelope of many calls itself.
const TYPE: &str = "ampwright-worksheets";

/// Writes worksheets as one JSON file.
pub fn to_collection(sheets: &[Worksheet]) -> Json {
    envelope(sheets.iter().map(to_json).collect())
}

/// Kept texts as one JSON file.
#[derive(Debug, Clone, PartialEq)]
pub struct Collected {
    /// The file.
    pub file: Json,
    /// How many of the texts are no worksheet, and so not in it.
    pub left_out: usize,
}

/// Puts worksheets together that were written before, each as it was written:
/// what a reader of today does not understand of one stays in it. A text that
/// is no worksheet is left out.
pub fn collect_texts<'a>(texts: impl IntoIterator<Item = &'a str>) -> Collected {
    let mut sheets = Vec::new();
    let mut left_out = 0;
    for text in texts {
        match parsed(text) {
            Ok(json) if is_worksheet(&json) => sheets.push(json),
            _ => left_out += 1,
        }
    }
    Collected {
        file: envelope(sheets),
        left_out,
    }
}

fn envelope(sheets: Vec<Json>) -> Json {
    let mut envelope = Map::new();
    envelope.insert("type".into(), TYPE.into());
    envelope.insert("version".into(), NEWEST.into());
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

#[cfg(test)]
mod tests {
    use crate::boat::{Worksheet, demo};
    use crate::exchange::{collect_texts, read_file, to_json};

    #[test]
    fn what_was_kept_is_collected_as_it_was_written() {
        let demo = to_json(&demo()).to_string();
        let newer = r#"{"sails":1.50,"type":"ampwright-worksheet","version":9}"#;
        let spoilt = r#"{"type":"ampwright-worksheet","vers"#;
        let collected = collect_texts([demo.as_str(), spoilt, newer, "7", "{}"]);
        assert_eq!(collected.left_out, 3);
        let file = collected.file.to_string();
        assert!(file.contains(newer) && file.contains(&demo), "{file}");
        // The newer one is remarked on; the other comes back.
        let readings = read_file(&file).expect("a file of ours");
        assert_eq!(readings.len(), 1);
        assert_ne!(readings[0].sheet, Worksheet::default());
        assert_eq!(readings[0].remarks.len(), 1);
    }
}
