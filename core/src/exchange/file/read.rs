//! Reading the envelope: whatever is not understood is remarked on, together with
//! what stands in its place.

use serde_json::error::Category;
use serde_json::{Map, Value as Json};

use crate::boat::Section;
use crate::boat::reading::{ReadError, Remark, TextKind};
use crate::boat::{Arrangement, Key, Leg, LegRow, Load, LoadRow, Month, MonthRow, Worksheet};
use crate::exchange::file::TYPE;
use crate::exchange::limits::{LONGEST_FILE, bounded, not_endless};
use crate::exchange::remarks::Remarks;
use crate::exchange::ticks::ticks_from_json;
use crate::exchange::version1::{NEWEST, OLDEST, keep_meaning};
use crate::schema::{Confidence, Excerpt, FieldSpec, InputError, Kind, Value};

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

/// A part of a file that no worksheet has, or not like this.
pub(in crate::exchange) fn dropped(part: &str) -> Remark {
    Remark::UnknownPart {
        part: Excerpt::of(part),
    }
}

/// A name that no input has.
fn unknown(name: &str) -> Remark {
    Remark::UnknownKey {
        name: Excerpt::of(name),
    }
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

fn name_from_json(json: &Json, remarks: &mut Remarks) -> String {
    json.as_str().map(str::to_string).unwrap_or_else(|| {
        remarks.push(Remark::NameNotText);
        String::new()
    })
}

fn read_inputs(inputs: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Remarks) {
    for (name, value) in inputs {
        let Some(key) = Key::named(name) else {
            remarks.push(unknown(name));
            continue;
        };
        let spec = key.spec();
        let stated = value_of(spec, value).and_then(|value| sheet.state(key, value));
        if let Err(error) = stated {
            remarks.push(Remark::ValueRefused {
                key,
                error,
                kept: spec.kept(sheet.inputs.get(key)),
            });
        }
    }
}

fn read_known(known: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Remarks) {
    for (name, value) in known {
        let word = value.as_str().unwrap_or_default();
        let knowledge = Confidence::ALL.into_iter().find(|k| k.word() == word);
        match (Key::named(name), knowledge) {
            (Some(key), Some(knowledge)) => {
                sheet.known.insert(key, knowledge);
            }
            (Some(key), None) => remarks.push(Remark::UnknownConfidence {
                key,
                word: Excerpt::of(word),
                counts_as: sheet.knowledge(key),
            }),
            (None, _) => remarks.push(unknown(name)),
        }
    }
}

fn value_of(spec: &FieldSpec, json: &Json) -> Result<Value, InputError> {
    match json {
        Json::Number(number) => match (spec.kind, number.as_str().parse().ok()) {
            (Kind::Choice { .. }, _) => spec.read(&number.to_string()),
            (_, Some(number)) => spec.accept(Value::Number(number)),
            (_, None) => spec.read(&number.to_string()),
        },
        Json::String(text) => spec.read(text),
        Json::Null => spec.read(""),
        other => spec.read(&other.to_string()),
    }
}

fn arrangement_from_json(json: &Json, remarks: &mut Remarks) -> Option<Arrangement> {
    let mut arrangement = Arrangement::default();
    let Some(one) = json.as_object() else {
        remarks.push(Remark::ArrangementNotUnderstood);
        return None;
    };
    for (part, json) in one {
        match (part.as_str(), json) {
            ("name", json) => arrangement.name = name_from_json(json, remarks),
            ("changes", Json::Object(changes)) => {
                for (name, value) in changes {
                    let Some(key) = Key::named(name) else {
                        remarks.push(Remark::UnknownChange {
                            arrangement: named(one),
                            name: Excerpt::of(name),
                        });
                        continue;
                    };
                    match value_of(key.spec(), value) {
                        Ok(value) => arrangement.put(key, Some(value)),
                        Err(error) => remarks.push(Remark::ChangeRefused {
                            arrangement: named(one),
                            key,
                            error,
                        }),
                    }
                }
            }
            (part, _) => remarks.push(dropped(part)),
        }
    }
    Some(arrangement)
}

/// What a load or an arrangement calls itself.
fn named(one: &Map<String, Json>) -> Excerpt {
    Excerpt::of(one.get("name").and_then(Json::as_str).unwrap_or_default())
}

fn read_year(year: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Remarks) {
    for (part, json) in year {
        match (part.as_str(), json) {
            ("months", Json::Array(months)) => {
                for month in months {
                    read_month(month, sheet, remarks);
                }
            }
            (part, _) => remarks.push(dropped(part)),
        }
    }
}

fn read_month(json: &Json, sheet: &mut Worksheet, remarks: &mut Remarks) {
    let number = json.get("month");
    let month = number
        .and_then(Json::as_u64)
        .and_then(|number| Month::numbered(usize::try_from(number).ok()?));
    let (Some(month), Some(told)) = (month, json.as_object()) else {
        let month = number.map_or(String::new(), Json::to_string);
        remarks.push(Remark::UnknownMonth {
            month: Excerpt::of(&month),
        });
        return;
    };
    let row = sheet.months.row_mut(month);
    if *row != MonthRow::default() {
        remarks.push(Remark::MonthTwice { month });
    }
    for (name, value) in told.iter().filter(|(name, _)| *name != "month") {
        let Some(field) = MonthRow::FIELDS.iter().find(|field| field.name == name) else {
            remarks.push(Remark::UnknownMonthFigure {
                name: Excerpt::of(name),
            });
            continue;
        };
        match value_of(&field.spec, value) {
            Ok(value) => field.set(row, value),
            Err(error) => remarks.push(Remark::MonthValueRefused {
                month,
                error,
                kept: field.spec.kept(field.get(row)),
            }),
        }
    }
}

fn load_from_json(json: &Json, remarks: &mut Remarks) -> Option<Load> {
    let mut load = Load::default();
    let Some(row) = json.as_object() else {
        remarks.push(Remark::LoadNotUnderstood);
        return None;
    };
    for (name, value) in row {
        if name == "name" {
            load.name = name_from_json(value, remarks);
        } else if let Some(field) = LoadRow::FIELDS.iter().find(|field| field.name == name) {
            match value_of(&field.spec, value) {
                Ok(value) => field.set(&mut load.row, value),
                Err(error) => remarks.push(Remark::LoadValueRefused {
                    load: named(row),
                    error,
                    kept: field.spec.kept(field.get(&load.row)),
                }),
            }
        } else {
            remarks.push(Remark::UnknownLoadFigure {
                name: Excerpt::of(name),
            });
        }
    }
    Some(load)
}

fn leg_from_json(json: &Json, remarks: &mut Remarks) -> Option<Leg> {
    let mut leg = Leg::default();
    let Some(row) = json.as_object() else {
        remarks.push(Remark::LegNotUnderstood);
        return None;
    };
    for (name, value) in row {
        if name == "name" {
            leg.name = name_from_json(value, remarks);
        } else if let Some(field) = LegRow::FIELDS.iter().find(|field| field.name == name) {
            match value_of(&field.spec, value) {
                Ok(value) => field.set(&mut leg.row, value),
                Err(error) => remarks.push(Remark::LegValueRefused {
                    leg: named(row),
                    error,
                    kept: field.spec.kept(field.get(&leg.row)),
                }),
            }
        } else {
            remarks.push(Remark::UnknownLegFigure {
                name: Excerpt::of(name),
            });
        }
    }
    Some(leg)
}
