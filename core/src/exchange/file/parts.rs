//! What every part of a file is read with: a name, a value, and remarks on what no
//! worksheet has. Uses the schema.

use serde_json::{Map, Value as Json};

use crate::boat::reading::Remark;
use crate::exchange::remarks::Remarks;
use crate::schema::{Excerpt, FieldSpec, InputError, Kind, Value};

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
