//! Reading the envelope: whatever is not understood is said in a sentence,
//! together with what stands in its place.

use serde_json::error::Category;
use serde_json::{Map, Value as Json};

use crate::boat::Section;
use crate::boat::{Arrangement, Key, Load, LoadRow, Worksheet};
use crate::exchange::file::TYPE;
use crate::exchange::limits::{LONGEST_FILE, bounded, not_endless, shortened};
use crate::exchange::ticks::ticks_from_json;
use crate::exchange::version1::{NEWEST, OLDEST, keep_meaning};
use crate::schema::{Confidence, FieldSpec, InputError, Kind, Value, no_input, quoted};

/// A worksheet that was read, with a sentence for everything that was not understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// What was understood; the rest is at its default.
    pub sheet: Worksheet,
    /// What was not, one sentence each.
    pub remarks: Vec<String>,
}

/// Reads a worksheet from JSON text.
///
/// # Errors
/// A sentence when the text is no worksheet at all. Anything less is a remark.
pub fn read_json(text: &str) -> Result<Reading, InputError> {
    read_value(&parsed(text)?)
}

/// JSON, with or without the mark that some editors put in front.
pub(in crate::exchange) fn parsed(text: &str) -> Result<Json, InputError> {
    not_endless(text, "This file", LONGEST_FILE)?;
    let text = text.trim_start_matches('\u{feff}');
    serde_json::from_str(text).map_err(|fault| {
        InputError(match fault.classify() {
            _ if text.trim().is_empty() => "There is nothing in it.".into(),
            Category::Eof => format!(
                "The worksheet breaks off in line {}: its end is missing. Nothing was taken from it.",
                fault.line()
            ),
            _ => format!(
                "This is not a worksheet: line {} is not understood at its character {}. Nothing was taken from it.",
                fault.line(),
                fault.column()
            ),
        })
    })
}

/// Reads a worksheet from parsed JSON.
///
/// # Errors
/// A sentence when it is no worksheet at all, or one of a later version.
pub fn read_value(json: &Json) -> Result<Reading, InputError> {
    let Some(envelope) = json.as_object() else {
        return Err(InputError("This is not a worksheet.".into()));
    };
    if envelope.get("type").and_then(Json::as_str) != Some(TYPE) {
        return Err(InputError(format!(
            "This is not a worksheet: its “type” is not “{TYPE}”."
        )));
    }
    let version = check_version(envelope, "This worksheet")?;
    let mut sheet = Worksheet::default();
    let mut remarks = Vec::new();
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
    shortened(&mut remarks);
    Ok(Reading { sheet, remarks })
}

/// What is said of a part of a file that no worksheet has, or not like this.
pub(in crate::exchange) fn dropped(part: &str) -> String {
    format!("The part {} is not understood and left out.", quoted(part))
}

/// The version of an envelope, if it can be read.
pub(in crate::exchange) fn check_version(
    envelope: &Map<String, Json>,
    what: &str,
) -> Result<u64, InputError> {
    match envelope.get("version").and_then(Json::as_u64) {
        Some(version) if (OLDEST..=NEWEST).contains(&version) => Ok(version),
        Some(later) if later > NEWEST => Err(InputError(format!(
            "{what} is of version {later}, later than this program reads ({NEWEST}). Nothing was taken from it: a newer program opens it."
        ))),
        _ => Err(InputError(format!(
            "{what} does not say its version. Nothing was taken from it."
        ))),
    }
}

fn name_from_json(json: &Json, remarks: &mut Vec<String>) -> String {
    json.as_str().map(str::to_string).unwrap_or_else(|| {
        remarks.push("A name that is not a text is left out.".into());
        String::new()
    })
}

fn read_inputs(inputs: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Vec<String>) {
    for (name, value) in inputs {
        let Some(key) = Key::named(name) else {
            remarks.push(no_input(name));
            continue;
        };
        let spec = key.spec();
        let stated = value_of(spec, value).and_then(|value| sheet.state(key, value));
        if let Err(complaint) = stated {
            let stays = spec.stays(sheet.inputs.get(key));
            remarks.push(format!("{complaint} {stays}"));
        }
    }
}

fn read_known(known: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Vec<String>) {
    for (name, value) in known {
        let word = value.as_str().unwrap_or_default();
        let knowledge = Confidence::ALL.into_iter().find(|k| k.word() == word);
        match (Key::named(name), knowledge) {
            (Some(key), Some(knowledge)) => {
                sheet.known.insert(key, knowledge);
            }
            (Some(key), None) => remarks.push(format!(
                "{} cannot be known as {}; it counts as “{}”.",
                key.spec().label,
                quoted(word),
                sheet.knowledge(key).word()
            )),
            (None, _) => remarks.push(no_input(name)),
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

fn arrangement_from_json(json: &Json, remarks: &mut Vec<String>) -> Option<Arrangement> {
    let mut arrangement = Arrangement::default();
    let Some(one) = json.as_object() else {
        remarks.push("An arrangement that is not understood is left out.".into());
        return None;
    };
    for (part, json) in one {
        match (part.as_str(), json) {
            ("name", json) => arrangement.name = name_from_json(json, remarks),
            ("changes", Json::Object(changes)) => {
                for (name, value) in changes {
                    let read = match Key::named(name) {
                        Some(key) => value_of(key.spec(), value)
                            .map(|value| arrangement.put(key, Some(value))),
                        None => Err(InputError(format!("No input is called {}.", quoted(name)))),
                    };
                    if let Err(complaint) = read {
                        remarks.push(format!(
                            "In the arrangement {}: {complaint} It is left out.",
                            named(one)
                        ));
                    }
                }
            }
            (part, _) => remarks.push(dropped(part)),
        }
    }
    Some(arrangement)
}

/// What a load or an arrangement calls itself.
fn named(one: &Map<String, Json>) -> String {
    quoted(one.get("name").and_then(Json::as_str).unwrap_or_default())
}

fn load_from_json(json: &Json, remarks: &mut Vec<String>) -> Option<Load> {
    let mut load = Load::default();
    let Some(row) = json.as_object() else {
        remarks.push("A load that is not understood is left out.".into());
        return None;
    };
    for (name, value) in row {
        if name == "name" {
            load.name = name_from_json(value, remarks);
        } else if let Some(field) = LoadRow::FIELDS.iter().find(|field| field.name == name) {
            match value_of(&field.spec, value) {
                Ok(value) => field.set(&mut load.row, value),
                Err(complaint) => remarks.push(format!(
                    "In the load {}: {complaint} {}",
                    named(row),
                    field.spec.stays(field.get(&load.row))
                )),
            }
        } else {
            remarks.push(format!(
                "A load has no figure {}; it is left out.",
                quoted(name)
            ));
        }
    }
    Some(load)
}
