//! Fills a line of the tables with what holds for a boat at a moment.
//!
//! `{when?text}` stays where the condition holds, `{!when?text}` where it does
//! not, and `{name}` is a text of its own.

use super::Used;
use super::expr::{come_to, replaced, significant};
use super::scene::Scene;
use super::table::{Entry, Own, continued, cut, find, row, step};
use crate::fields::{Kind, Value};
use crate::report::clock;
use crate::worksheet::Key;

/// Fewest and most significant digits a figure is written with.
pub(super) const DIGITS: (usize, usize) = (4, 17);
/// An input is written this much finer: as typed, in all but odd cases.
const AS_TYPED: usize = 3;

/// A line of a table, filled.
pub(super) struct Made {
    pub(super) value: f64,
    pub(super) formula: String,
    pub(super) note: String,
    /// Inputs that decide without being in the formula, and workings beside it.
    pub(super) also: String,
    /// What the formula uses.
    pub(super) uses: Vec<Used>,
}

/// Fills a working's line; its figure is the report's, or what its formula
/// comes to.
#[inline(never)]
pub(super) fn make(s: &Scene, entry: &Entry) -> Made {
    let mut own = Own {
        id: entry.id,
        value: f64::NAN,
    };
    own.value = entry.value(s, &own);
    loop {
        let mut text = String::new();
        let mut template = entry.rest;
        for _ in 0..4 {
            (_, _, template) = cut(template, b"|");
        }
        fill(s, &own, template, &mut text);
        let (formula, _, rest) = cut(&text, b"|");
        let (note, _, also) = cut(rest, b"|");
        let mut made = Made {
            value: own.value,
            formula: formula.to_string(),
            note: note.to_string(),
            also: also.to_string(),
            uses: Vec::new(),
        };
        if !own.value.is_nan() || made.formula.is_empty() {
            return made;
        }
        own.value = come_to(&figures(s, &own, &mut made, DIGITS.1));
        // A figure above nothing needs no bound below it.
        if own.value.is_nan() || own.value <= 0.0 {
            made.value = own.value;
            return made;
        }
    }
}

#[inline(never)]
fn fill(s: &Scene, own: &Own, template: &str, out: &mut String) {
    let (mut rest, mut depth, mut hidden) = (template, 0, 0);
    while !rest.is_empty() {
        let (plain, brace, tail) = cut(rest, b"{}");
        rest = tail;
        if hidden == 0 {
            out.push_str(plain);
        }
        if brace == b'}' {
            if hidden == depth {
                hidden = 0;
            }
            depth -= 1;
        } else if brace > 0 {
            let (name, sign, tail) = cut(rest, b"?}");
            rest = tail;
            if sign == b'?' {
                depth += 1;
                if hidden == 0 && !holds(s, own, name) {
                    hidden = depth;
                }
            } else if hidden == 0 {
                piece(s, own, name, out);
            }
        }
    }
}

fn holds(s: &Scene, own: &Own, name: &str) -> bool {
    let bare = name.strip_prefix('!');
    let value = find(bare.unwrap_or(name)).map_or(0.0, |entry| entry.value(s, own));
    (value == 1.0) != bare.is_some()
}

/// A text of its own.
fn piece(s: &Scene, own: &Own, name: &str, out: &mut String) {
    match name {
        "limit" => out.push_str(s.moment.flow.limit.words()),
        "clock" => out.push_str(&clock(s.seconds / 60.0)),
        "rows" | "nights" => {
            let from = out.len();
            for (at, load) in s.boat.report.energy.rows.iter().enumerate() {
                if load.anchor_wh != 0.0 {
                    let number = (at + 1).to_string();
                    let plus = if out.len() > from { "+E_" } else { "E_" };
                    for text in [plus, &number] {
                        out.push_str(text);
                    }
                    if name == "nights" {
                        for text in ["*f_", &number] {
                            out.push_str(text);
                        }
                    }
                }
            }
            if out.len() == from {
                out.push('0');
            }
        }
        _ => fill(s, own, find(name).map_or("", |entry| entry.rest), out),
    }
}

/// A formula with its figures in so many digits; gathers what it uses.
#[inline(never)]
pub(super) fn figures(s: &Scene, own: &Own, made: &mut Made, digits: usize) -> String {
    let Made { formula, uses, .. } = made;
    replaced(formula, &mut |name, out| {
        let at = uses.iter().position(|used| used.symbol == name);
        let at = at.unwrap_or_else(|| {
            uses.push(used(s, own, name));
            uses.len() - 1
        });
        let Some(used) = uses.get(at) else { return };
        let value = used.value.unwrap_or(0.0);
        let finer = if used.key.is_some() { AS_TYPED } else { 0 };
        let number = significant(value, digits + finer);
        let share = if used.unit == "%" { "%" } else { "" };
        let [open, close] = if value < 0.0 { ["(", ")"] } else { ["", ""] };
        for text in [open, &number, share, close] {
            out.push_str(text);
        }
    })
}

/// What a name in a formula stands for.
#[inline(never)]
fn used(s: &Scene, own: &Own, symbol: &str) -> Used {
    let mut used = Used {
        symbol: String::new(),
        name: String::new(),
        value: None,
        unit: "",
        says: "",
        known: None,
        key: None,
        working: None,
    };
    if let Some(entry) = find(symbol) {
        if let Some(key) = Key::named(entry.rest) {
            used = input(s, key);
        } else {
            let link = entry.field(2);
            used.working = linked(s, link);
            let target = find(link);
            let value = entry.value(s, own);
            used.value = Some(value);
            (used.name, used.unit) = (entry.words(), entry.field(1));
            if let Some(target) = target {
                if value.is_nan() {
                    used.value = Some(make(s, &target).value);
                }
                if used.name.is_empty() {
                    used.name = target.words();
                }
                used.unit = target.field(1);
            }
        }
    } else {
        load(s, symbol, &mut used);
    }
    used.symbol = symbol.to_string();
    used
}

/// A row of the list of loads: its energy, or its share at night.
fn load(s: &Scene, symbol: &str, used: &mut Used) {
    let (of, _, number) = cut(symbol, b"_");
    let number = number.parse().unwrap_or(0_usize).wrapping_sub(1);
    let Some(load) = s.boat.report.energy.rows.get(number) else {
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
    let (entry, _) = row(name)?;
    Some(Used {
        symbol: String::new(),
        name: entry.words(),
        value: Some(make(s, &entry).value).filter(|value| !value.is_nan()),
        unit: entry.field(1),
        says: "",
        known: None,
        key: None,
        working: Some(entry.id),
    })
}

#[inline(never)]
fn input(s: &Scene, key: Key) -> Used {
    let (sheet, spec) = (s.boat.sheet, key.spec());
    let says = match (sheet.inputs.get(key), spec.kind) {
        (Value::Choice(at), Kind::Choice { options, .. }) => {
            options.get(at).map_or("", |option| option.label)
        }
        (Value::Absent, Kind::Maybe { absent, .. }) => absent.says,
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
        symbol: String::new(),
        name: continued(spec.label, above),
        value: sheet.figure(key),
        unit: spec.unit().map_or("", |unit| unit.symbol),
        says,
        known: Some(sheet.knowledge(key)),
        key: Some(key.name()),
        working: None,
    }
}
