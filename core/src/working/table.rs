//! The tables of workings, symbols and conditions, and how they are searched.
//!
//! A table is lines of text, and beside each line, where there is one, the
//! figure that belongs to it. A line begins with its name; behind it stands
//! - for a working: what the page calls it, unit, decimals, the letter of its
//!   source and its moment, formula, note, and what it used besides;
//! - for a symbol: the input it is; or its words, unit and the working that
//!   explains it, from which it takes what is left out;
//! - for a condition: nothing; for a piece of text: the text.

use super::scene::Scene;
use super::{day, engine, machine, moment, run, symbols};

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

const TABLES: &[Table] = &[
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

/// The name of every working there is.
pub(super) fn every() -> impl Iterator<Item = &'static str> {
    let lines = TABLES.iter().flat_map(|table| table.text.lines());
    lines
        .map(name)
        .filter(|id| id.contains('.') && !id.starts_with('.'))
        .chain(STEPS.lines())
}

fn name(line: &'static str) -> &'static str {
    line.split('|').next().unwrap_or_default()
}

/// The line of a name.
#[inline(never)]
pub(super) fn find(name: &str) -> Option<Entry> {
    for (table, Table { text, .. }) in TABLES.iter().enumerate() {
        let mut above = "";
        for (line, whole) in text.lines().enumerate() {
            let (id, rest) = whole.split_once('|').unwrap_or_default();
            if id == name {
                return Some(Entry {
                    table,
                    line,
                    rest,
                    above,
                    id,
                });
            }
            if !rest.starts_with('…') {
                above = rest;
            }
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
    let id = STEPS.lines().find(|line| *line == id)?;
    let (_, step) = id.split_once('.')?;
    let (at, _) = step.split_once('.')?;
    let entry = find(step.get(at.len()..)?)?;
    Some((Entry { id, ..entry }, at))
}

/// The step of a moment, by the end of its name.
pub(super) fn step(at: &str, tail: &str) -> Option<&'static str> {
    STEPS.lines().find(|line| {
        let rest = line.strip_prefix("inner.");
        rest.and_then(|rest| rest.strip_prefix(at)) == Some(tail)
    })
}

impl Entry {
    /// One of the fields behind the name.
    #[inline(never)]
    pub(super) fn field(&self, at: usize) -> &'static str {
        self.rest.split('|').nth(at).unwrap_or_default()
    }

    /// Its figure, before any formula.
    pub(super) fn value(&self, s: &Scene, own: &Own) -> f64 {
        TABLES
            .get(self.table)
            .map_or(f64::NAN, |table| (table.value)(s, own, self.line))
    }

    /// What it is, in a line that stands alone.
    pub(super) fn words(&self) -> String {
        continued(self.field(0), name(self.above))
    }
}

/// A label in a line that stands alone: one that goes on from the one above is
/// put together.
#[inline(never)]
pub(super) fn continued(own: &str, above: &str) -> String {
    let Some(rest) = own.strip_prefix('…') else {
        return own.to_string();
    };
    let above = above.split(": ").next().unwrap_or_default();
    [above, ",", rest].concat()
}
