//! Reading the inputs of a file, and how well they are known.

use serde_json::{Map, Value as Json};

use crate::boat::reading::Remark;
use crate::boat::{Key, Worksheet};
use crate::exchange::file::parts::{unknown, value_of};
use crate::exchange::remarks::Remarks;
use crate::schema::{Confidence, Excerpt};

pub(super) fn read_inputs(
    inputs: &Map<String, Json>,
    sheet: &mut Worksheet,
    remarks: &mut Remarks,
) {
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

pub(super) fn read_known(known: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Remarks) {
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
