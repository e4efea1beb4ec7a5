//! The run as a table: the figures of the drawing, some twenty rows of them.

use ampwright_core::analysis::{Moment, RunReport};
use ampwright_core::text::words;
use ampwright_core::units::quantity::{amperes, celsius, minutes, percent};
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

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
    let heads = move || {
        let reader = state.reader.get();
        let head = |(what, kind, _): &Column| {
            let head = format!("{what} {}", reader.unit(*kind));
            view! { <th scope="col">{head}</th> }
        };
        COLUMNS.iter().map(head).collect_view()
    };
    let rows = move || {
        let reader = state.reader.get();
        state.settled(|_, report| rows(&report.analyses.run, &reader))
    };
    view! {
        <div
            class="scroll"
            tabindex="0"
            role="region"
            aria-label="The run as a table"
            id="run-table"
        >
            <table class="run">
                <thead>
                    <tr>
                        <th scope="col">"After"</th>
                        {heads}
                        <th scope="col">"Limited by"</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
}

fn rows(run: &RunReport, reader: &Reader) -> impl IntoView + use<> {
    let every = (run.series.len() / 20).max(1);
    let last = run.series.len().saturating_sub(1);
    let moments = run.series.iter().enumerate();
    moments
        .filter(|(at, _)| at % every == 0 || *at == last)
        .map(|(_, moment)| {
            let cell = |(_, _, figure): &Column| {
                let figure = reader.number(figure(moment));
                view! { <td>{figure}</td> }
            };
            view! {
                <tr>
                    <th scope="row">{reader.show(minutes(moment.minute))}</th>
                    {COLUMNS.iter().map(cell).collect_view()}
                    <td>{words::limit(moment.limit)}</td>
                </tr>
            }
        })
        .collect_view()
}
