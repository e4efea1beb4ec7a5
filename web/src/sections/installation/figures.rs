//! Figures in two columns, and sentences under one another.

use ampwright_core::units::{Quantity, Reader};
use leptos::prelude::*;

use crate::components::{TextRow, TextTable, texts};

/// A figure, or two that it lies between.
#[derive(Clone, Copy)]
pub enum Cell {
    /// Not known, or there is no such figure.
    None,
    /// One figure.
    One(Quantity),
    /// From one to another.
    Range(Quantity, Quantity),
}

impl Cell {
    /// One figure, where there is one.
    pub fn of(figure: Option<Quantity>) -> Cell {
        figure.map_or(Cell::None, Cell::One)
    }

    /// A range, or the one figure of it that there is.
    pub fn between(low: Option<Quantity>, high: Option<Quantity>) -> Cell {
        match (low, high) {
            (Some(low), Some(high)) => Cell::Range(low, high),
            (one, other) => Cell::of(one.or(other)),
        }
    }

    /// With its unit; a dash for none.
    fn words(self, reader: &Reader) -> String {
        match self {
            Cell::None => "–".to_string(),
            Cell::One(figure) => reader.show(figure),
            Cell::Range(low, high) => reader.range(low, high),
        }
    }
}

/// A line of a table: what it is about, and its two figures.
pub struct Line(pub &'static str, pub [Cell; 2]);

/// A line of one figure for each column, by what makes a quantity of them.
pub fn line(
    what: &'static str,
    figures: [impl Into<Option<f64>>; 2],
    quantity: impl Fn(f64) -> Quantity,
) -> Line {
    Line(
        what,
        figures.map(|figure| Cell::of(figure.into().map(&quantity))),
    )
}

/// A table as a reader wants it.
#[derive(Clone, PartialEq)]
pub struct Figures {
    caption: String,
    columns: [&'static str; 2],
    rows: Vec<TextRow>,
}

impl Figures {
    /// The table, without the lines that have no figures.
    pub fn new(
        reader: &Reader,
        caption: impl Into<String>,
        columns: [&'static str; 2],
        lines: impl IntoIterator<Item = Line>,
    ) -> Figures {
        let rows = lines
            .into_iter()
            .filter(|Line(_, cells)| cells.iter().any(|cell| !matches!(cell, Cell::None)))
            .map(|Line(what, cells)| TextRow {
                head: what.to_string(),
                cells: cells.map(|cell| cell.words(reader)).into(),
            });
        Figures {
            caption: caption.into(),
            columns,
            rows: rows.collect(),
        }
    }
}

/// The table on the page.
#[component]
pub fn FigureTable(figures: Figures) -> impl IntoView {
    let [one, other] = figures.columns;
    view! {
        <TextTable caption=figures.caption heads=texts(["", one, other]) rows=figures.rows />
    }
}

/// Sentences under one another.
#[component]
pub fn Sentences(
    sentences: Vec<String>,
    #[prop(default = "remarks")] class: &'static str,
) -> impl IntoView {
    let item = |sentence| view! { <li>{sentence}</li> };
    view! { <ul class=class>{sentences.into_iter().map(item).collect_view()}</ul> }
}

#[cfg(test)]
mod tests {
    use super::*;
    use ampwright_core::units::quantity::{amperes, volts};

    #[test]
    fn a_line_without_figures_is_left_out() {
        let range = Cell::between(Some(volts(79.0).to(0)), Some(volts(101.0).to(0)));
        let lines = [
            line("gives", [Some(70.0), None], amperes),
            line("carries", [None::<f64>; 2], amperes),
            Line("peak", [range, Cell::None]),
        ];
        let figures = Figures::new(&Reader::METRIC, "", ["one", "other"], lines);
        let row = |head: &str, one: &str| TextRow {
            head: head.to_string(),
            cells: texts([one, "–"]),
        };
        assert_eq!(
            figures.rows,
            [row("gives", "70 A"), row("peak", "79 to 101 V")]
        );
    }
}
