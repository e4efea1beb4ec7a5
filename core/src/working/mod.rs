//! Every figure explains itself: the formula, the same with this boat's
//! numbers in it, what it used and how sure that is, and the source.
//!
//! A figure itself is always the report's own; the formula beside it is held
//! to it by tests. What comes out of stepping through time has no formula: its
//! working says so and gives a balance that the figure has to meet.

mod air;
mod bank;
mod boat;
mod cooling;
mod curve;
mod day;
mod engine;
mod expr;
#[cfg(test)]
mod expr_tests;
mod heat;
mod held;
mod lead;
mod lines;
mod losses;
mod may;
mod run;
mod soak;
mod sun;
mod symbols;
mod temps;
mod text;

use serde::Serialize;

use crate::fields::{Kind, Knowledge, Value};
use crate::report::Report;
use crate::worksheet::{Key, Worksheet};
use boat::{At, Boat, label};
use expr::{Expr, From, Leaf};
use lines::Line;

/// How a figure came about.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Working {
    /// Its dotted name in the report, as `machine.hot_a`; names that begin
    /// with `inner.` are steps on the way.
    pub id: &'static str,
    /// What it is, as the page calls it.
    pub what: &'static str,
    /// The figure; none when it does not happen.
    pub value: Option<f64>,
    /// Decimals it is shown with.
    pub decimals: usize,
    /// Its unit.
    pub unit: &'static str,
    /// The formula; empty where there is none.
    pub symbols: String,
    /// The same with this boat's numbers in it.
    pub figures: String,
    /// What it used.
    pub uses: Vec<Used>,
    /// Why this formula holds here, or what was stepped through.
    pub note: String,
    /// Who says so.
    pub source: &'static str,
}

/// A figure that a working used.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Used {
    /// Its sign in the formula; empty when it is not in there itself.
    pub symbol: String,
    /// What it is.
    pub name: String,
    /// The figure in its unit; none for a choice and for "none".
    pub value: Option<f64>,
    /// Its unit.
    pub unit: &'static str,
    /// What was chosen, or what an empty field stands for.
    pub says: &'static str,
    /// How well it is known, if it is an input.
    pub known: Option<Knowledge>,
    /// The input it is.
    pub key: Option<String>,
    /// The working that explains it.
    pub working: Option<&'static str>,
}

/// What a file of this folder makes of a line. It lies in a box, as formulas do.
type Made = Box<Making>;

/// What is in it.
struct Making {
    value: Option<f64>,
    expr: Option<Expr>,
    note: String,
    /// Inputs that decide without being in the formula, and workings beside it.
    also: &'static [&'static str],
}

/// The name of every working there is.
pub fn ids() -> impl Iterator<Item = &'static str> {
    lines::all().map(|line| line.id)
}

/// How one figure of a worksheet's report came about; none for an unknown
/// name, and for a second alternator or lead bank that is not there.
pub fn working(sheet: &Worksheet, report: &Report, id: &str) -> Option<Working> {
    let line = lines::all().find(|line| line.id == id)?;
    explain(&Boat::new(sheet, report), line)
}

/// The same for any figure, with those the run shows at a minute.
pub fn working_at(sheet: &Worksheet, report: &Report, minute: f64, id: &str) -> Option<Working> {
    let line = lines::named(id)?;
    let mut boat = Boat::new(sheet, report);
    boat.minute = minute.clamp(0.0, report.run.minutes);
    explain(&boat, line)
}

/// What the page calls a figure, in a line that stands alone.
pub fn name(id: &str) -> String {
    lines::named(id).map_or_else(String::new, Line::name)
}

/// How each figure of a worksheet's report came about.
pub fn workings(sheet: &Worksheet, report: &Report) -> Vec<Working> {
    let boat = Boat::new(sheet, report);
    lines::all()
        .filter_map(|line| explain(&boat, line))
        .collect()
}

/// How what the run shows at a minute came about.
pub fn workings_at(sheet: &Worksheet, report: &Report, minute: f64) -> Vec<Working> {
    let mut boat = Boat::new(sheet, report);
    boat.minute = minute.clamp(0.0, report.run.minutes);
    lines::moment()
        .filter_map(|line| explain(&boat, line))
        .collect()
}

/// What a line says of a boat; nothing about a settled state that there is not.
fn make(boat: &Boat, line: &Line) -> Option<Made> {
    if line.at == At::Hot && !boat.hot.stable {
        return held::never_settles(boat, line.id);
    }
    (line.make)(boat, line.at)
}

fn explain(boat: &Boat, line: &Line) -> Option<Working> {
    let made = make(boat, line)?;
    let (mut symbols, mut figures) = (String::new(), String::new());
    let mut uses = Vec::new();
    if let (Some(expr), Some(value)) = (&made.expr, made.value) {
        symbols = expr.symbols();
        figures = expr.figures(value, line.decimals);
        let mut leaves = Vec::new();
        expr.leaves(&mut leaves);
        uses.extend(leaves.into_iter().map(|leaf| used(boat, leaf)));
    }
    for name in made.also {
        uses.extend(beside(boat, name));
    }
    Some(Working {
        id: line.id,
        what: line.what,
        value: made.value,
        decimals: line.decimals,
        unit: line.unit,
        symbols,
        figures,
        uses,
        note: made.note,
        source: line.source,
    })
}

fn used(boat: &Boat, leaf: &Leaf) -> Used {
    let (symbol, name) = (leaf.symbol.clone(), leaf.name.clone());
    let plain = Used {
        symbol,
        name,
        value: Some(leaf.value),
        unit: leaf.unit,
        says: "",
        known: None,
        key: None,
        working: None,
    };
    match leaf.from {
        From::Given => plain,
        From::Working(id) => Used {
            working: Some(id),
            ..plain
        },
        From::Input(key) => Used {
            symbol: plain.symbol,
            ..input(boat, key)
        },
    }
}

/// An input or a working that is not in the formula itself.
fn beside(boat: &Boat, name: &str) -> Option<Used> {
    if let Some(key) = Key::named(name) {
        return Some(input(boat, key));
    }
    let line = lines::named(name)?;
    let made = make(boat, line)?;
    Some(Used {
        symbol: String::new(),
        name: line.name(),
        value: made.value,
        unit: line.unit,
        says: "",
        known: None,
        key: None,
        working: Some(line.id),
    })
}

fn input(boat: &Boat, key: Key) -> Used {
    let spec = key.spec();
    let says = match (boat.sheet.inputs.get(key), spec.kind) {
        (Value::Choice(at), Kind::Choice { options, .. }) => {
            options.get(at).map_or("", |option| option.label)
        }
        (Value::Absent, Kind::Maybe { absent, .. }) => absent.says,
        _ => "",
    };
    Used {
        symbol: String::new(),
        name: label(key),
        value: boat.sheet.figure(key),
        unit: spec.unit().map_or("", |unit| unit.symbol),
        says,
        known: Some(boat.sheet.knowledge(key)),
        key: Some(key.name()),
        working: None,
    }
}
