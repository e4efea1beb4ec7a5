//! Belts, cables, load dump and the year as JSON: their figures and
//! codes, and what is said of them as `text`.

use serde_json::{Value, json};

use crate::analysis::belt::BeltReport;
use crate::analysis::cable::Cables;
use crate::analysis::legs::LegsReport;
use crate::analysis::load_dump::LoadDump;
use crate::analysis::year::Year;
use crate::text;
use crate::units::Reader;

/// The belts as a JSON list; each has its sentences as `text`.
pub fn belts_json(belts: &[BeltReport], reader: &Reader) -> Value {
    let mut json = json!(belts);
    for (at, belt) in belts.iter().enumerate() {
        json[at]["text"] = json!(text::belt::sentences(belt, reader));
    }
    json
}

/// The cables as a JSON object. Each run has as `text` what is asked of its
/// cable, its fuse, where that goes and what else to know; `text` beside the runs
/// has the rule, the sources and how the figures differ from the tables'.
pub fn cables_json(cables: &Cables, reader: &Reader) -> Value {
    let mut json = json!(cables);
    for (at, run) in cables.runs.iter().enumerate() {
        let notes = run.notes.iter().map(|note| text::cable::note(note, reader));
        json["runs"][at]["text"] = json!({
            "asks": text::cable::asks(run, reader),
            "fuse": text::cable::fuse(run, reader),
            "fuse_place": text::cable::fuse_place(run, reader),
            "notes": notes.collect::<Vec<_>>(),
        });
    }
    let remarks = cables
        .remarks
        .iter()
        .map(|remark| text::cable::remark(remark, reader));
    json["text"] = json!({
        "rule": text::cable::rule(cables.flag),
        "sources": text::cable::SOURCES,
        "remarks": remarks.collect::<Vec<_>>(),
    });
    json
}

/// What happens when the batteries disconnect as a JSON object. Each alternator
/// has its sentences as `text`, and so has each thing that protects it.
pub fn load_dump_json(load_dump: &LoadDump, reader: &Reader) -> Value {
    let mut json = json!(load_dump);
    for (at, dump) in load_dump.alternators.iter().enumerate() {
        let machine = &mut json["alternators"][at];
        machine["text"] = json!(text::load_dump::sentences(dump, reader));
        for (at, mitigation) in dump.mitigations.iter().enumerate() {
            machine["mitigations"][at]["text"] = json!({
                "what": text::load_dump::mitigation(mitigation.code),
                "advice": text::load_dump::advice(dump, mitigation, reader),
            });
        }
    }
    json
}

/// The day as legs as a JSON object, its totals in sentences as `text`; each leg
/// has as `text` a line of its own.
pub fn legs_json(legs: &LegsReport, reader: &Reader) -> Value {
    let mut json = json!(legs);
    for (at, leg) in legs.legs.iter().enumerate() {
        json["legs"][at]["text"] = text::legs::line(at + 1, leg, reader).into();
    }
    json["text"] = json!(text::legs::totals(legs, reader));
    json
}

/// The year as a JSON object, its sentences as `text`; each month has as `text`
/// what its settled day is like.
pub fn year_json(year: &Year, reader: &Reader) -> Value {
    let mut json = json!(year);
    for (at, month) in year.months.iter().enumerate() {
        json["months"][at]["text"] = text::year::settled_day(month, reader).into();
    }
    json["text"] = json!(text::year::sentences(year, reader));
    json
}
