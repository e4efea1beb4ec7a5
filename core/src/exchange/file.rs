//! A worksheet as JSON: the file, the browser's storage and the scripts all
//! use this one envelope and this one reader.
//!
//! ```json
//! {"type": "ampwright-worksheet", "version": 2, "name": "…",
//!  "inputs": {"bank_capacity_ah": 400, "reg_kind": "external"},
//!  "known": {"bank_capacity_ah": "measured"},
//!  "loads": [{"name": "Refrigerator", "draw": 45, "hours": 24, "duty_pct": 45}],
//!  "legs": [{"name": "Home", "rpm": 2000, "minutes": 40, "purpose": "anyway"}],
//!  "year": {"months": [{"month": 6, "air_c": 24, "use_pct": 80, "days": 30}]},
//!  "arrangements": [{"name": "Larger converter", "changes": {"way_converter_a": 60}}],
//!  "done": ["isolate", "fuses"]}
//! ```
//!
//! `inputs` holds field keys; an input that is not there keeps its default and
//! counts as a guess. A number may be given as text; `null` leaves a field
//! empty where it may be. `known` is only needed where an input is better or
//! worse known than usual. `year` holds what is said of months. `done` names the ticked steps of the commissioning
//! list; a link does not carry them.

mod inputs;
mod lists;
mod parts;
mod read;
mod year;

use serde_json::{Map, Number, Value as Json};

use crate::boat::Section;
use crate::boat::{Arrangement, Key, Leg, LegRow, Load, LoadRow, Month, MonthRow, Worksheet};
use crate::exchange::ticks::ticks_to_json;
use crate::exchange::version1::NEWEST;
use crate::schema::{FieldSpec, Value};

pub(super) use parts::dropped;
pub use read::{Reading, read_json, read_value};
pub(super) use read::{check_version, is_worksheet, parsed};

/// What the envelope calls itself.
const TYPE: &str = "ampwright-worksheet";

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
    envelope.insert("version".into(), NEWEST.into());
    envelope.insert("name".into(), sheet.name.as_str().into());
    envelope.insert("inputs".into(), Json::Object(inputs));
    if !known.is_empty() {
        envelope.insert("known".into(), Json::Object(known));
    }
    if !loads.is_empty() {
        envelope.insert("loads".into(), Json::Array(loads));
    }
    let legs: Vec<Json> = sheet.legs.iter().map(leg_to_json).collect();
    if !legs.is_empty() {
        envelope.insert("legs".into(), Json::Array(legs));
    }
    let months: Vec<Json> = sheet.months.said().map(month_to_json).collect();
    if !months.is_empty() {
        let mut year = Map::new();
        year.insert("months".into(), Json::Array(months));
        envelope.insert("year".into(), Json::Object(year));
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

/// A value as JSON; [`FieldSpec::accept`] let no number in that JSON cannot hold.
fn plain(spec: &FieldSpec, value: Value) -> Json {
    match value {
        Value::Number(number) => Number::from_f64(number).map_or(Json::Null, Json::Number),
        Value::Absent => Json::Null,
        Value::Choice(_) => spec.write(value).into(),
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

fn month_to_json((month, row): (Month, &MonthRow)) -> Json {
    row_to_json("month", month.number().into(), row)
}

fn load_to_json(load: &Load) -> Json {
    row_to_json::<LoadRow>("name", load.name.as_str().into(), &load.row)
}

fn leg_to_json(leg: &Leg) -> Json {
    row_to_json::<LegRow>("name", leg.name.as_str().into(), &leg.row)
}

/// What a row is called, and its figures as far as they are not the usual.
fn row_to_json<S: Section>(called: &str, name: Json, row: &S) -> Json {
    let mut told = Map::new();
    told.insert(called.into(), name);
    for field in S::FIELDS {
        let value = field.get(row);
        if value != field.spec.default() {
            told.insert(field.name.into(), plain(&field.spec, value));
        }
    }
    Json::Object(told)
}
