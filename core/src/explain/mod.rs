//! How a figure came about: the formula that ran, the same with this boat's
//! numbers in it, what it used and how sure that is, and the source.
//!
//! The formulas are those of [`crate::physics`], kept as data by `#[formula]`;
//! a figure of `figures` says which of them ran and what it was given. What
//! comes out of stepping through time has no formula: its working says so and
//! shows the balance that the figure has to meet, built of the same formulas.
//!
//! It may use everything that computes (worksheet, report, charging run,
//! arrangements), and nothing of it may use this. It computes no result of its
//! own and holds no second text of a formula.

mod boat;
mod digits;
mod figure;
mod figures;
mod instant;
mod mathml;
mod node;
mod reader;
mod term;
#[cfg(test)]
mod tests;
mod text;
mod used;

use serde::Serialize;

use crate::boat::Worksheet;
use crate::decision::arrangements::Outcome;
use crate::report::Report;
use boat::Boat;
use figure::{Beside, Figure};
use instant::When;
pub use mathml::{MathMl, MathNode};
use term::Shown;
pub use used::Used;

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
    /// The formula with this boat's numbers in it; empty where there is none.
    pub figures: String,
    /// Both for a page that sets formulas.
    pub mathml: MathMl,
    /// What it used.
    pub uses: Vec<Used>,
    /// Why this formula holds here, or what was stepped through.
    pub note: String,
    /// Who says so.
    pub source: &'static str,
}

/// The name of every working that does not hang on a minute of the run.
pub fn ids() -> impl Iterator<Item = &'static str> {
    figures::all()
        .filter(|figure| figure.when != When::Moment)
        .map(|figure| figure.id)
}

/// How one figure of a worksheet's report came about; none for an unknown
/// name, and for a second alternator or lead bank that is not there.
pub fn working(sheet: &Worksheet, report: &Report, id: &str) -> Option<Working> {
    working_at(sheet, report, 0.0, id)
}

/// How any figure came about, with those the run shows at a minute.
pub fn working_at(sheet: &Worksheet, report: &Report, minute: f64, id: &str) -> Option<Working> {
    let figure = figures::all().find(|figure| figure.id == id)?;
    explain(&Boat::new(sheet, report, minute), figure)
}

/// What a figure is called in a table: "…" goes on from the line above. Nothing
/// for an unknown name. Every table takes its labels from here.
pub fn label(id: &str) -> &'static str {
    figures::all()
        .find(|figure| figure.id == id)
        .map_or("", |figure| figure.what)
}

/// What a figure is called in a line that stands alone.
pub fn name(id: &str) -> String {
    figures::all()
        .chain(figures::of_arrangement())
        .find(|figure| figure.id == id)
        .map_or_else(String::new, |figure| figure.name.to_string())
}

/// How each figure of a worksheet's report came about.
pub fn workings(sheet: &Worksheet, report: &Report) -> Vec<Working> {
    all(sheet, report, 0.0, false)
}

/// How what the run shows at a minute came about.
pub fn workings_at(sheet: &Worksheet, report: &Report, minute: f64) -> Vec<Working> {
    all(sheet, report, minute, true)
}

/// The name of every working of an arrangement.
pub fn arrangement_ids() -> impl Iterator<Item = &'static str> {
    figures::of_arrangement().map(|figure| figure.id)
}

/// How the figures of an arrangement came about: what it costs, and what a year
/// with it does.
///
/// `with` and `report` are the boat set up like that, `outcome` what comes of
/// it and `today` what comes of the worksheet as it stands. The workings that
/// these lead to are those of `with` and `report`.
pub fn arrangement_workings(
    with: &Worksheet,
    report: &Report,
    outcome: &Outcome,
    today: &Outcome,
) -> Vec<Working> {
    let boat = Boat::new(with, report, 0.0).costing(outcome, today);
    figures::of_arrangement()
        .filter_map(|figure| explain(&boat, figure))
        .collect()
}

/// How one figure of an arrangement came about, or of the boat set up like that;
/// see [`arrangement_workings`].
pub fn arrangement_working(
    with: &Worksheet,
    report: &Report,
    outcome: &Outcome,
    today: &Outcome,
    id: &str,
) -> Option<Working> {
    let mut known = figures::of_arrangement().chain(figures::all());
    let figure = known.find(|figure| figure.id == id)?;
    let boat = Boat::new(with, report, 0.0).costing(outcome, today);
    explain(&boat, figure)
}

fn all(sheet: &Worksheet, report: &Report, minute: f64, of_moment: bool) -> Vec<Working> {
    let boat = Boat::new(sheet, report, minute);
    figures::all()
        .filter(|figure| (figure.when == When::Moment) == of_moment)
        .filter_map(|figure| explain(&boat, figure))
        .collect()
}

fn explain(boat: &Boat, figure: &'static Figure) -> Option<Working> {
    if !figure.is_there(boat) {
        return None;
    }
    let instant = boat.instant(figure.when, figure.part).nth(figure.place);
    let explanation = figure.explained(&instant);
    let value = figure.value_of(&instant, &explanation);
    let term = explanation.term.as_ref().filter(|_| value.is_some());
    let mut working = Working {
        id: figure.id,
        what: figure.what,
        value,
        decimals: figure.decimals,
        unit: figure.unit,
        symbols: String::new(),
        figures: String::new(),
        mathml: MathMl::default(),
        uses: Vec::new(),
        source: figure.source_of(&explanation).0,
        note: explanation.note,
    };
    if let (Some(term), Some(value)) = (term, value) {
        let (shown, node) = Shown::of(term);
        let digits = digits::enough(&shown, &node, value, figure.decimals);
        working.symbols = text::symbols(&shown, &node);
        working.figures = text::figures(&shown, &node, digits);
        working.mathml = MathMl::of(&shown, &node, digits);
        working.uses = shown.uses;
    }
    for beside in explanation.beside {
        working.uses.push(match beside {
            Beside::Input(key) => Used::input(boat.sheet, key),
            Beside::Figure(other) => other.used(&instant),
        });
    }
    Some(working)
}
