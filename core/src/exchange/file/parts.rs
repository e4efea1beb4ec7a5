//! What every part of a file is read with: a name, a value, and remarks on what no
//! worksheet has. Uses the schema.

use serde_json::{Map, Value as Json};

use crate::boat::Section;
use crate::boat::reading::Remark;
use crate::exchange::remarks::Remarks;
use crate::schema::{Excerpt, FieldSpec, InputError, KeptValue, Kind, Value};

/// A part of a file that no worksheet has, or not like this.
pub(in crate::exchange) fn dropped(part: &str) -> Remark {
    Remark::UnknownPart {
        part: Excerpt::of(part),
    }
}

/// A name that no input has.
pub(super) fn unknown(name: &str) -> Remark {
    Remark::UnknownKey {
        name: Excerpt::of(name),
    }
}

/// A name; empty, with a remark, where it is no text.
pub(super) fn name_from_json(json: &Json, remarks: &mut Remarks) -> String {
    json.as_str().map(str::to_string).unwrap_or_else(|| {
        remarks.push(Remark::NameNotText);
        String::new()
    })
}

/// A value as an input takes it: a number, a word, or nothing for an empty field.
pub(super) fn value_of(spec: &FieldSpec, json: &Json) -> Result<Value, InputError> {
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

/// What a load or an arrangement calls itself.
pub(super) fn named(one: &Map<String, Json>) -> Excerpt {
    Excerpt::of(one.get("name").and_then(Json::as_str).unwrap_or_default())
}

/// Takes the figures of a row by their names, and remarks on those it does not have
/// or does not take.
pub(super) fn read_figures<'a, R: Section>(
    row: &mut R,
    told: impl Iterator<Item = (&'a String, &'a Json)>,
    remarks: &mut Remarks,
    unknown: fn(Excerpt) -> Remark,
    refused: impl Fn(InputError, KeptValue) -> Remark,
) {
    for (name, value) in told {
        let Some(field) = R::FIELDS.iter().find(|field| field.name == name) else {
            remarks.push(unknown(Excerpt::of(name)));
            continue;
        };
        match value_of(&field.spec, value) {
            Ok(value) => field.set(row, value),
            Err(error) => remarks.push(refused(error, field.spec.kept(field.get(row)))),
        }
    }
}
