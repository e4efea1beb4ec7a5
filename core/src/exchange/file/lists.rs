//! Reading the loads and the legs of a file and the user's own arrangements.

use serde_json::Value as Json;

use crate::boat::reading::Remark;
use crate::boat::{Arrangement, Key, Leg, LegRow, Load, LoadRow, Section};
use crate::exchange::file::parts::{dropped, name_from_json, named, value_of};
use crate::exchange::remarks::Remarks;
use crate::schema::Excerpt;

/// A load; none where it is none at all.
pub(super) fn load_from_json(json: &Json, remarks: &mut Remarks) -> Option<Load> {
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

/// A leg of the day; none where it is none at all.
pub(super) fn leg_from_json(json: &Json, remarks: &mut Remarks) -> Option<Leg> {
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
