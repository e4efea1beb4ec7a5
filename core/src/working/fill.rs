//! Fills a line of the tables with what holds for a boat at a moment.
//!
//! `{when?text}` stays where the condition holds, `{!when?text}` where it does
//! not, and `{name}` is a text of its own.

use crate::analysis::engine_day::DayTrouble;
use crate::units::clock;
use crate::working::Used;
use crate::working::expr::{come_to, replaced, significant};
use crate::working::scene::Scene;
use crate::working::table::{Entry, Own, cut, find};
use crate::working::uses::used;

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
        if s.at == "hot" && !s.boat.hot.stable {
            template = "{unsettled}";
            if own.id != "machine.hot_a" {
                own.value = f64::NAN;
            }
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
        if own.value > 0.0 {
            continue;
        }
        made.value = own.value;
        return made;
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
        "trouble" => out.push_str(trouble(s)),
        "limit" => out.push_str(s.moment.flow.limit.words()),
        "clock" => out.push_str(&clock(s.seconds / 60.0)),
        "rows" | "nights" => {
            let from = out.len();
            for (at, load) in s.boat.report.analyses.energy.rows.iter().enumerate() {
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

/// Why there is no daily run.
fn trouble(s: &Scene) -> &'static str {
    let trouble = s.boat.report.analyses.day.trouble;
    trouble.map_or("", DayTrouble::sentence)
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
