//! A worksheet as JSON: the file, the browser's storage and the scripts all
//! use this one envelope and this one reader.
//!
//! ```json
//! {"type": "ampwright-worksheet", "version": 1, "name": "…",
//!  "inputs": {"bank_capacity_ah": 400, "reg_kind": "external"},
//!  "known": {"bank_capacity_ah": "measured"},
//!  "loads": [{"name": "Refrigerator", "draw": 45, "hours": 24, "duty_pct": 45}],
//!  "arrangements": [{"name": "Larger converter", "changes": {"way_converter_a": 60}}],
//!  "done": ["isolate", "fuses"]}
//! ```
//!
//! `inputs` holds field keys; an input that is not there keeps its default and
//! counts as a guess. A number may be given as text; `null` leaves a field
//! empty where it may be. `known` is only needed where an input is better or
//! worse known than usual. `done` names the ticked steps of the commissioning
//! list; a link does not carry them.

use serde_json::{Map, Number, Value as Json};

use super::done::{ticks_from_json, ticks_to_json};
use super::{Arrangement, Key, Load, LoadRow, Worksheet};
use crate::fields::{Complaint, Kind, Knowledge, Section, Spec, Value};

/// What the envelope calls itself.
const TYPE: &str = "ampwright-worksheet";
/// The version this reader writes.
const VERSION: u64 = 1;

/// A worksheet that was read, with a sentence for everything that was not understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// What was understood; the rest is at its default.
    pub sheet: Worksheet,
    /// What was not, one sentence each.
    pub remarks: Vec<String>,
}

/// Writes a worksheet as JSON; only what was said stands in it.
pub fn to_json(sheet: &Worksheet) -> Json {
    let mut inputs = Map::new();
    let mut known = Map::new();
    for key in Key::all().filter(|key| sheet.is_said(*key)) {
        inputs.insert(key.name(), plain(key.spec(), sheet.inputs.get(key)));
        if sheet.knowledge(key) != key.spec().usual {
            known.insert(key.name(), sheet.knowledge(key).word().into());
        }
    }
    let loads: Vec<Json> = sheet.loads.iter().map(load_to_json).collect();
    let mut envelope = Map::new();
    envelope.insert("type".into(), TYPE.into());
    envelope.insert("version".into(), VERSION.into());
    envelope.insert("name".into(), sheet.name.as_str().into());
    envelope.insert("inputs".into(), Json::Object(inputs));
    if !known.is_empty() {
        envelope.insert("known".into(), Json::Object(known));
    }
    if !loads.is_empty() {
        envelope.insert("loads".into(), Json::Array(loads));
    }
    if !sheet.arrangements.is_empty() {
        let all = sheet.arrangements.iter().map(arrangement_to_json);
        envelope.insert("arrangements".into(), Json::Array(all.collect()));
    }
    if let Some(done) = ticks_to_json(sheet) {
        envelope.insert("done".into(), done);
    }
    Json::Object(envelope)
}

/// Reads a worksheet from JSON text.
///
/// # Errors
/// A sentence when the text is no worksheet at all. Anything less is a remark.
pub fn read_json(text: &str) -> Result<Reading, Complaint> {
    let json: Json = serde_json::from_str(text)
        .map_err(|fault| Complaint(format!("This is not a whole JSON text: {fault}.")))?;
    read_value(&json)
}

/// Reads a worksheet from parsed JSON.
///
/// # Errors
/// A sentence when it is no worksheet at all, or one of a later version.
pub fn read_value(json: &Json) -> Result<Reading, Complaint> {
    let Some(envelope) = json.as_object() else {
        return Err(Complaint("This is not a worksheet.".into()));
    };
    match envelope.get("type").and_then(Json::as_str) {
        Some(TYPE) => {}
        _ => {
            return Err(Complaint(format!(
                "This is not a worksheet: its “type” is not “{TYPE}”."
            )));
        }
    }
    match envelope.get("version").and_then(Json::as_u64) {
        Some(VERSION) => {}
        Some(later) if later > VERSION => {
            return Err(Complaint(format!(
                "This worksheet is of version {later}, later than this program reads ({VERSION})."
            )));
        }
        _ => {
            return Err(Complaint("This worksheet does not say its version.".into()));
        }
    }
    let mut reading = Reading {
        sheet: Worksheet::default(),
        remarks: Vec::new(),
    };
    if let Some(name) = envelope.get("name").and_then(Json::as_str) {
        reading.sheet.name = name.to_string();
    }
    for (name, value) in entries(envelope, "inputs") {
        match Key::named(name) {
            Some(key) => match value_of(key.spec(), value) {
                Ok(value) => {
                    if let Err(complaint) = reading.sheet.state(key, value) {
                        reading.remarks.push(complaint.0);
                    }
                }
                Err(complaint) => reading.remarks.push(complaint.0),
            },
            None => reading
                .remarks
                .push(format!("No input is called “{name}”.")),
        }
    }
    for (name, value) in entries(envelope, "known") {
        let word = value.as_str().unwrap_or_default();
        let knowledge = Knowledge::ALL.into_iter().find(|k| k.word() == word);
        match (Key::named(name), knowledge) {
            (Some(key), Some(knowledge)) => {
                reading.sheet.known.insert(key, knowledge);
            }
            _ => reading
                .remarks
                .push(format!("“{name}” cannot be known as “{word}”.")),
        }
    }
    for row in envelope
        .get("loads")
        .and_then(Json::as_array)
        .into_iter()
        .flatten()
    {
        let load = load_from_json(row, &mut reading.remarks);
        reading.sheet.loads.push(load);
    }
    for one in envelope
        .get("arrangements")
        .and_then(Json::as_array)
        .into_iter()
        .flatten()
    {
        let arrangement = arrangement_from_json(one, &mut reading.remarks);
        reading.sheet.arrangements.push(arrangement);
    }
    if let Some(done) = envelope.get("done") {
        ticks_from_json(done, &mut reading);
    }
    Ok(reading)
}

fn entries<'a>(
    envelope: &'a Map<String, Json>,
    part: &str,
) -> impl Iterator<Item = (&'a String, &'a Json)> {
    envelope
        .get(part)
        .and_then(Json::as_object)
        .into_iter()
        .flatten()
}

/// A value as JSON; [`Spec::accept`] let no number in that JSON cannot hold.
fn plain(spec: &Spec, value: Value) -> Json {
    match value {
        Value::Number(number) => Number::from_f64(number).map_or(Json::Null, Json::Number),
        Value::Absent => Json::Null,
        Value::Choice(_) => spec.write(value).into(),
    }
}

fn value_of(spec: &Spec, json: &Json) -> Result<Value, Complaint> {
    match json {
        Json::Number(number) => match (spec.kind, number.as_f64()) {
            (Kind::Choice { .. }, _) => spec.read(&number.to_string()),
            (_, Some(number)) => spec.accept(Value::Number(number)),
            (_, None) => spec.read(&number.to_string()),
        },
        Json::String(text) => spec.read(text),
        Json::Null => spec.read(""),
        other => spec.read(&other.to_string()),
    }
}

fn arrangement_to_json(arrangement: &Arrangement) -> Json {
    let mut changes = Map::new();
    for (key, value) in &arrangement.changes {
        changes.insert(key.name(), plain(key.spec(), *value));
    }
    let mut one = Map::new();
    one.insert("name".into(), arrangement.name.as_str().into());
    one.insert("changes".into(), Json::Object(changes));
    Json::Object(one)
}

fn arrangement_from_json(json: &Json, remarks: &mut Vec<String>) -> Arrangement {
    let mut arrangement = Arrangement::default();
    let Some(one) = json.as_object() else {
        remarks.push("An arrangement is not understood.".into());
        return arrangement;
    };
    if let Some(name) = one.get("name").and_then(Json::as_str) {
        arrangement.name = name.to_string();
    }
    for (name, value) in entries(one, "changes") {
        match Key::named(name) {
            Some(key) => match value_of(key.spec(), value) {
                Ok(value) => arrangement.put(key, Some(value)),
                Err(complaint) => remarks.push(complaint.0),
            },
            None => remarks.push(format!("No input is called “{name}”.")),
        }
    }
    arrangement
}

fn load_to_json(load: &Load) -> Json {
    let mut row = Map::new();
    row.insert("name".into(), load.name.as_str().into());
    for field in LoadRow::FIELDS {
        let value = field.get(&load.row);
        if value != field.spec.default() {
            row.insert(field.name.into(), plain(&field.spec, value));
        }
    }
    Json::Object(row)
}

fn load_from_json(json: &Json, remarks: &mut Vec<String>) -> Load {
    let mut load = Load::default();
    for (name, value) in json.as_object().into_iter().flatten() {
        if name == "name" {
            load.name = value.as_str().unwrap_or_default().to_string();
        } else if let Some(at) = LoadRow::column(name) {
            let field = &LoadRow::FIELDS[at];
            match value_of(&field.spec, value) {
                Ok(value) => field.set(&mut load.row, value),
                Err(complaint) => remarks.push(format!("In the list of loads: {complaint}")),
            }
        } else {
            remarks.push(format!("A load has no column “{name}”."));
        }
    }
    load
}
