//! Reading the loads and the legs of a file and the user's own arrangements.

use serde_json::{Map, Value as Json};

use crate::boat::reading::Remark;
use crate::boat::{Arrangement, Key, Leg, Load};
use crate::exchange::file::parts::{dropped, name_from_json, named, read_figures, value_of};
use crate::exchange::remarks::Remarks;
use crate::schema::Excerpt;

/// A load; none where it is none at all.
pub(super) fn load_from_json(json: &Json, remarks: &mut Remarks) -> Option<Load> {
    let Some(told) = json.as_object() else {
        remarks.push(Remark::LoadNotUnderstood);
        return None;
    };
    let mut load = Load {
        name: name_of(told, remarks),
        ..Load::default()
    };
    let unknown = |name| Remark::UnknownLoadFigure { name };
    let refused = |error, kept| Remark::LoadValueRefused {
        load: named(told),
        error,
        kept,
    };
    read_figures(&mut load.row, figures_of(told), remarks, unknown, refused);
    Some(load)
}

/// A leg of the day; none where it is none at all.
pub(super) fn leg_from_json(json: &Json, remarks: &mut Remarks) -> Option<Leg> {
    let Some(told) = json.as_object() else {
        remarks.push(Remark::LegNotUnderstood);
        return None;
    };
    let mut leg = Leg {
        name: name_of(told, remarks),
        ..Leg::default()
    };
    let unknown = |name| Remark::UnknownLegFigure { name };
    let refused = |error, kept| Remark::LegValueRefused {
        leg: named(told),
        error,
        kept,
    };
    read_figures(&mut leg.row, figures_of(told), remarks, unknown, refused);
    Some(leg)
}

/// What a row calls itself; empty where it does not.
fn name_of(told: &Map<String, Json>, remarks: &mut Remarks) -> String {
    let name = told.get("name").map(|name| name_from_json(name, remarks));
    name.unwrap_or_default()
}

/// All that a row tells of itself but its name.
fn figures_of(told: &Map<String, Json>) -> impl Iterator<Item = (&String, &Json)> {
    told.iter().filter(|(name, _)| *name != "name")
}

/// One of the user's own arrangements; none where it is none at all.
pub(super) fn arrangement_from_json(json: &Json, remarks: &mut Remarks) -> Option<Arrangement> {
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
