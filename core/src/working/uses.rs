//! What a working used: inputs, other workings, figures of the run.

use crate::boat::Key;
use crate::schema::{Kind, Value};
use crate::working::Used;
use crate::working::fill::make;
use crate::working::scene::Scene;
use crate::working::table::{Entry, Own, continued, cut, find, row, step};

/// What a name in a formula stands for.
#[inline(never)]
pub(super) fn used(s: &Scene, own: &Own, symbol: &str) -> Used {
    let mut used = BLANK;
    if let Some(entry) = find(symbol) {
        if let Some(key) = Key::named(entry.rest) {
            used = input(s, key);
        } else {
            let (link, words) = (entry.field(2), entry.words());
            if let Some(target) = find(link) {
                used = explained(s, &target);
            } else {
                used.unit = entry.field(1);
            }
            used.working = linked(s, link);
            let value = entry.value(s, own);
            if !value.is_nan() {
                used.value = Some(value);
            }
            if !words.is_empty() {
                used.name = words;
            }
        }
    } else {
        load(s, symbol, &mut used);
    }
    used.symbol = symbol.to_string();
    used
}

/// A figure nothing is known of yet.
const BLANK: Used = Used {
    symbol: String::new(),
    name: String::new(),
    value: None,
    unit: "",
    says: "",
    known: None,
    key: None,
    working: None,
};

/// A figure that has a working.
#[inline(never)]
fn explained(s: &Scene, entry: &Entry) -> Used {
    let value = make(s, entry).value;
    Used {
        name: entry.words(),
        value: (!value.is_nan()).then_some(value),
        unit: entry.field(1),
        working: Some(entry.id),
        ..BLANK
    }
}

/// A row of the list of loads: its energy, or its share at night.
fn load(s: &Scene, symbol: &str, used: &mut Used) {
    let (of, _, number) = cut(symbol, b"_");
    let number = number.parse().unwrap_or(0_usize).wrapping_sub(1);
    let Some(load) = s.boat.report.analyses.energy.rows.get(number) else {
        return;
    };
    let name = if load.name.is_empty() {
        "A load"
    } else {
        &load.name
    };
    used.name = name.to_string();
    (used.value, used.unit) = (Some(load.anchor_wh), "W·h");
    if of == "f" {
        used.name.push_str(", at night");
        (used.value, used.unit) = (Some(load.night_share_pct), "%");
    }
}

/// The working that explains a figure, if it is of this moment and machine.
fn linked(s: &Scene, link: &'static str) -> Option<&'static str> {
    if link.is_empty() || s.number > 0 || !s.turning {
        None
    } else if link.starts_with('.') {
        step(s.at, link)
    } else {
        (s.at == "hot" || !(link.starts_with("machine.hot.") || link.starts_with("inner.hot.")))
            .then_some(link)
    }
}

/// An input or a working that is not in the formula itself.
pub(super) fn beside(s: &Scene, name: &str) -> Option<Used> {
    if let Some(key) = Key::named(name) {
        return Some(input(s, key));
    }
    row(name).map(|(entry, _)| explained(s, &entry))
}

#[inline(never)]
fn input(s: &Scene, key: Key) -> Used {
    let (sheet, spec) = (s.boat.sheet, key.spec());
    let says = match (sheet.inputs.get(key), spec.kind) {
        (Value::Choice(at), Kind::Choice { options, .. }) => {
            options.get(at).map_or("", |option| option.label)
        }
        (Value::Absent, Kind::Optional { empty_says, .. }) => empty_says,
        _ => "",
    };
    let mut above = "";
    for other in key.section.keys().take_while(|other| *other != key) {
        let label = other.spec().label;
        if !label.starts_with('…') {
            above = label;
        }
    }
    Used {
        name: continued(spec.label, above),
        value: sheet.figure(key),
        unit: spec.unit().map_or("", |unit| unit.symbol),
        says,
        known: spec.is_fact().then(|| sheet.knowledge(key)),
        key: Some(key.name()),
        ..BLANK
    }
}
