//! Every figure explains itself: the formula, the same with this boat's
//! numbers in it, what it used and how sure that is, and the source.
//!
//! A figure itself is always the report's own; the formula beside it is held
//! to it by tests. What comes out of stepping through time has no formula: its
//! working says so and gives a balance that the figure has to meet.

mod day;
mod engine;
mod expr;
#[cfg(test)]
mod expr_tests;
mod fill;
mod machine;
mod moment;
mod run;
mod scene;
mod symbols;
mod table;
#[cfg(test)]
mod table_tests;
mod text;
mod uses;

use serde::Serialize;

use crate::boat::Worksheet;
use crate::report::Report;
use crate::schema::Confidence;
use expr::{come_to, printed, replaced};
use fill::{DIGITS, Made, figures, make};
use scene::{Boat, Scene};
use table::{Own, cut, row};
use uses::beside;

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
    /// How well it is known, if it is an input that is a fact.
    pub known: Option<Confidence>,
    /// The input it is.
    pub key: Option<String>,
    /// The working that explains it.
    pub working: Option<&'static str>,
}

/// The name of every working there is.
pub fn ids() -> impl Iterator<Item = &'static str> {
    table::every(false).into_iter()
}

/// How one figure of a worksheet's report came about; none for an unknown
/// name, and for a second alternator or lead bank that is not there.
pub fn working(sheet: &Worksheet, report: &Report, id: &str) -> Option<Working> {
    working_at(sheet, report, 0.0, id)
}

/// The same for any figure, with those the run shows at a minute.
pub fn working_at(sheet: &Worksheet, report: &Report, minute: f64, id: &str) -> Option<Working> {
    row(id)?;
    explain(&boat_at(sheet, report, minute), id)
}

/// What the page calls a figure, in a line that stands alone.
pub fn name(id: &str) -> String {
    row(id).map_or_else(String::new, |(entry, _)| entry.words())
}

/// How each figure of a worksheet's report came about.
pub fn workings(sheet: &Worksheet, report: &Report) -> Vec<Working> {
    all(sheet, report, 0.0, false)
}

/// How what the run shows at a minute came about.
pub fn workings_at(sheet: &Worksheet, report: &Report, minute: f64) -> Vec<Working> {
    all(sheet, report, minute, true)
}

fn all(sheet: &Worksheet, report: &Report, minute: f64, moment: bool) -> Vec<Working> {
    let boat = boat_at(sheet, report, minute);
    let mut all = Vec::new();
    for id in table::every(moment) {
        all.extend(explain(&boat, id));
    }
    all
}

fn boat_at<'a>(sheet: &'a Worksheet, report: &'a Report, minute: f64) -> Boat<'a> {
    let mut boat = Boat::new(sheet, report);
    boat.minute = minute.clamp(0.0, report.analyses.run.minutes);
    boat
}

#[inline(never)]
fn explain(boat: &Boat, id: &str) -> Option<Working> {
    let (entry, at) = row(id)?;
    let report = boat.report;
    let absent = (at == "second_peak" && report.analyses.run.second_peak.is_none())
        || (id.starts_with("lead.") && report.analyses.lead.is_none());
    if absent {
        return None;
    }
    let scene = boat.scene(at, id);
    let mut made = make(&scene, &entry);
    let decimals = entry.field(2).as_bytes().first();
    let decimals = decimals.map_or(0, |digit| usize::from(digit & 15));
    let (symbols, figures) = written(&scene, entry.id, &mut made, decimals);
    let mut source = "@".to_string();
    source.push_str(entry.field(3).get(..1).unwrap_or_default());
    let mut also = made.also.as_str();
    while !also.is_empty() {
        let (name, _, rest) = cut(also, b" ");
        if let Some(used) = beside(&scene, name) {
            made.uses.push(used);
        }
        also = rest;
    }
    Some(Working {
        id: entry.id,
        what: entry.field(0),
        value: Some(made.value).filter(|value| !value.is_nan()),
        decimals,
        unit: entry.field(1),
        symbols,
        figures,
        uses: made.uses,
        note: made.note,
        source: table::find(&source).map_or("", |entry| entry.rest),
    })
}

/// A formula in print, with symbols, and with figures in as many digits as
/// give its value to so many decimals.
fn written(s: &Scene, id: &'static str, made: &mut Made, decimals: usize) -> (String, String) {
    let own = Own {
        id,
        value: made.value,
    };
    if own.value.is_nan() {
        made.formula.clear();
    }
    let near = 0.2 * 10f64.powi(-(decimals as i32));
    let (mut digits, many) = DIGITS;
    let mut text = figures(s, &own, made, digits);
    let meets = |text: &str| (come_to(text) - own.value).abs() <= near;
    while digits < many && !meets(&text) {
        digits += 1;
        text = figures(s, &own, made, digits);
    }
    // What stands behind a colon is for the tables alone; the second machine's
    // symbols have a dash.
    let dash = if s.number == 1 { "′" } else { "" };
    let sign = |name: &str, out: &mut String| {
        out.push_str(cut(name, b":").0);
        out.push_str(dash);
    };
    let symbols = replaced(&made.formula, &mut |name, out| sign(name, out));
    for used in &mut made.uses {
        let mut symbol = String::new();
        sign(&used.symbol, &mut symbol);
        used.symbol = symbol;
    }
    (printed(&symbols), printed(&text))
}
