//! The run as a table: the figures of the drawing, some twenty rows of them.

use ampwright_core::analysis::{Moment, RunReport};
use ampwright_core::text::words;
use ampwright_core::units::quantity::{amperes, celsius, minutes, percent};
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::{ScrollingTable, TextRow};
use crate::state::AppState;

/// A column: what stands over it, the kind of its figures, and the figure.
type Column = (&'static str, QuantityKind, fn(&Moment) -> Quantity);

static COLUMNS: [Column; 6] = [
    ("Alt.", QuantityKind::Current, |m| amperes(m.alternator_a)),
    ("Bank", QuantityKind::Current, |m| amperes(m.bank_a)),
    ("Full", QuantityKind::Percent, |m| percent(m.charge_pct)),
    ("Wind.", QuantityKind::Temperature, |m| {
        celsius(m.alternators[0].winding_c)
    }),
    ("Case", QuantityKind::Temperature, |m| {
        celsius(m.alternators[0].case_c)
    }),
    ("Air", QuantityKind::Temperature, |m| celsius(m.air_c)),
];

/// The table.
#[component]
pub fn RunTable() -> impl IntoView {
    let state = AppState::expect();
    let heads = Signal::derive(move || {
        let reader = state.reader.get();
        let head = |(what, kind, _): &Column| format!("{what} {}", reader.unit(*kind));
        let figures = COLUMNS.iter().map(head);
        let limit = "Limited by".to_string();
        ["After".to_string()]
            .into_iter()
            .chain(figures)
            .chain([limit])
            .collect()
    });
    let rows = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|_, report| rows(&report.analyses.run, &reader))
    });
    view! { <ScrollingTable id="run-table" name="The run as a table" heads rows /> }
}

fn rows(run: &RunReport, reader: &Reader) -> Vec<TextRow> {
    let every = (run.series.len() / 20).max(1);
    let last = run.series.len().saturating_sub(1);
    let moments = run.series.iter().enumerate();
    let row = |moment: &Moment| {
        let figures = COLUMNS
            .iter()
            .map(|(_, _, figure)| reader.number(figure(moment)));
        TextRow {
            head: reader.show(minutes(moment.minute)),
            cells: figures
                .chain([words::limit(moment.limit).to_string()])
                .collect(),
        }
    };
    moments
        .filter(|(at, _)| at % every == 0 || *at == last)
        .map(|(_, moment)| row(moment))
        .collect()
}
