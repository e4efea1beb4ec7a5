//! The tables of workings, symbols and conditions, and how they are searched.
//!
//! A table is lines of text, and beside each line, where there is one, the
//! figure that belongs to it. A line begins with its name; behind it stands
//! - for a working: what the page calls it, unit, decimals, the letter of its
//!   source and its moment, formula, note, and what it used besides;
//! - for a symbol: the input it is; or its words, unit and the working that
//!   explains it, from which it takes what is left out;
//! - for a condition: nothing; for a piece of text: the text.

use crate::working::scene::Scene;
use crate::working::{day, engine, machine, moment, run, symbols};

/// Lines and their figures.
pub(super) struct Table {
    pub(super) text: &'static str,
    pub(super) value: fn(&Scene, &Own, usize) -> f64,
}

/// The working that is asked for: its name, and its figure as far as it is known.
#[derive(Clone, Copy)]
pub(super) struct Own {
    pub(super) id: &'static str,
    pub(super) value: f64,
}

/// A line of a table.
#[derive(Clone, Copy)]
pub(super) struct Entry {
    table: usize,
    line: usize,
    /// What stands behind the name.
    pub(super) rest: &'static str,
    /// The last line above it that does not go on from another.
    above: &'static str,
    /// Its name, or that of the working it is looked up for.
    pub(super) id: &'static str,
}

/// Declares a table; no figure is "not a number".
macro_rules! table {
    ($table:ident |$s:ident, $own:ident, $b:ident, $r:ident, $p:ident, $i:ident|
        $($id:literal $rest:literal $(=> $value:expr)?;)+) => {
        pub(super) const $table: super::table::Table = super::table::Table {
            text: concat!($($id, "|", $rest, "\n"),+),
            value: |$s, $own, line| {
                let $b = $s.boat;
                let ($r, $p, $i) = ($b.report, &$b.plant, &$b.sheet.inputs);
                let _ = ($own, $r, $p, $i, line);
                let mut at = 0;
                $(
                    $(if line == at {
                        return f64::from($value);
                    })?
                    at += 1;
                )+
                let _ = at;
                f64::NAN
            },
        };
    };
}
pub(super) use table;

pub(super) const TABLES: &[Table] = &[
    day::DAY,
    machine::MACHINE,
    run::RUN,
    engine::ENGINE,
    moment::MOMENT,
    symbols::INPUTS,
];

macro_rules! steps {
    ($($moment:literal)+) => {
        concat!($(
            "inner.", $moment, ".can_a\ninner.", $moment, ".full_a\ninner.", $moment, ".field_x\ninner.",
            $moment, ".allowed\ninner.", $moment, ".volt_a\ninner.", $moment, ".bank_ohm\ninner.",
            $moment, ".flux_square\ninner.", $moment, ".copper_w\ninner.", $moment, ".diode_w\ninner.",
            $moment, ".field_w\ninner.", $moment, ".iron_w\ninner.", $moment, ".fan_w\ninner.",
            $moment, ".losses_w\n"
        ),+)
    };
}

/// The steps on the way to a moment's currents, and to its losses: their lines
/// have the end of the name.
const STEPS: &str = steps!("hot" "start" "mid" "hardest" "moment");

/// Every working there is, those of a moment or the others.
pub(super) fn every(moment: bool) -> Vec<&'static str> {
    let mut found = Vec::new();
    for text in TABLES.iter().map(|table| table.text).chain([STEPS]) {
        let mut rest = text;
        while !rest.is_empty() {
            let (line, _, tail) = cut(rest, b"\n");
            let (id, ..) = cut(line, b"|");
            let (first, dot, last) = cut(id, b".");
            let of_moment = first == "moment" || last.starts_with("moment");
            if dot > 0 && !first.is_empty() && of_moment == moment {
                found.push(id);
            }
            rest = tail;
        }
    }
    found
}

/// The line of a name.
#[inline(never)]
pub(super) fn find(name: &str) -> Option<Entry> {
    for (table, Table { text, .. }) in TABLES.iter().enumerate() {
        let (mut above, mut rest, mut line) = ("", *text, 0);
        while !rest.is_empty() {
            let (whole, tail) = rest.split_once('\n').unwrap_or((rest, ""));
            let (id, _, fields) = cut(whole, b"|");
            if id == name {
                return Some(Entry {
                    table,
                    line,
                    rest: fields,
                    above,
                    id,
                });
            }
            if !fields.starts_with('…') {
                above = fields;
            }
            (rest, line) = (tail, line + 1);
        }
    }
    None
}

/// The line of a working, and the moment it is of.
pub(super) fn row(id: &str) -> Option<(Entry, &'static str)> {
    if let Some(entry) = find(id) {
        let at = entry.field(3).get(1..).unwrap_or_default();
        return id.contains('.').then_some((entry, at));
    }
    let (_, _, rest) = cut(id, b".");
    let (at, ..) = cut(rest, b".");
    let tail = rest.get(at.len()..)?;
    let id = step(at, tail)?;
    let at = id.get(6..6 + at.len())?;
    Some((Entry { id, ..find(tail)? }, at))
}

/// The step of a moment, by the end of its name.
#[inline(never)]
pub(super) fn step(at: &str, tail: &str) -> Option<&'static str> {
    let mut rest = STEPS;
    while !rest.is_empty() {
        let (id, _, next) = cut(rest, b"\n");
        let of = id.strip_prefix("inner.").and_then(|of| of.strip_prefix(at));
        if of == Some(tail) {
            return Some(id);
        }
        rest = next;
    }
    None
}

/// The text before the first of some signs, that sign (0 for none), and what
/// follows it.
#[inline(never)]
pub(super) fn cut<'a>(text: &'a str, signs: &[u8]) -> (&'a str, u8, &'a str) {
    for (at, sign) in text.bytes().enumerate() {
        if signs.contains(&sign) {
            let part = |from, to| text.get(from..to).unwrap_or_default();
            return (part(0, at), sign, part(at + 1, text.len()));
        }
    }
    (text, 0, "")
}

impl Entry {
    /// One of the fields behind the name.
    #[inline(never)]
    pub(super) fn field(&self, at: usize) -> &'static str {
        let (mut field, _, mut rest) = cut(self.rest, b"|");
        for _ in 0..at {
            (field, _, rest) = cut(rest, b"|");
        }
        field
    }

    /// Its figure, before any formula.
    pub(super) fn value(&self, s: &Scene, own: &Own) -> f64 {
        TABLES
            .get(self.table)
            .map_or(f64::NAN, |table| (table.value)(s, own, self.line))
    }

    /// What it is, in a line that stands alone.
    pub(super) fn words(&self) -> String {
        continued(self.field(0), cut(self.above, b"|").0)
    }
}

/// A label in a line that stands alone: one that goes on from the one above is
/// put together.
#[inline(never)]
pub(super) fn continued(own: &str, above: &str) -> String {
    let mut text = String::new();
    let rest = own.strip_prefix('…');
    if rest.is_some() {
        text.push_str(cut(above, b":").0);
        text.push(',');
    }
    text.push_str(rest.unwrap_or(own));
    text
}
