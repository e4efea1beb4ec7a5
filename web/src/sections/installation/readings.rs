//! The sheet for the readings of the hot run: empty cells, and small in them
//! what is calculated.

use ampwright_core::guidance::commissioning::{COLUMNS, FormRow, form};
use ampwright_core::units::quantity::{amperes, celsius, count, rpm, volts};
use ampwright_core::units::{Quantity, Reader};
use leptos::prelude::*;

use crate::state::AppState;

/// The table, and the way to where its figures are typed.
#[component]
pub fn ReadingsForm() -> impl IntoView {
    let state = AppState::expect();
    let speed = move || {
        let speed = rpm(state.settled(|sheet, report| form(sheet, report).engine_rpm));
        format!(
            "Readings of the hot run, engine held at {}",
            state.show(speed)
        )
    };
    let rows = Memo::new(move |_| {
        // In the units of the headings, which are those the sea trial reads.
        let reader = Reader::METRIC.with_decimal_comma(state.preferences.has_decimal_comma());
        state.settled(|sheet, report| {
            let rows = form(sheet, report).rows;
            rows.iter()
                .map(|row| cells(row, &reader))
                .collect::<Vec<_>>()
        })
    });
    let row = |(minute, cells): (String, [Option<String>; 5])| {
        view! {
            <tr>
                <th scope="row">{minute}</th>
                {cells.map(|cell| view! { <td>{cell}</td> }).collect_view()}
            </tr>
        }
    };
    view! {
        <table class="form" id="first-form">
            <caption>{speed}</caption>
            <thead>
                <tr>
                    {COLUMNS.map(|column| view! { <th scope="col">{column}</th> }).collect_view()}
                </tr>
            </thead>
            <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
        </table>
        <p class="margin">"The small figures are calculated; write yours beside them."</p>
        <p class="buttons">
            <button
                type="button"
                class="plain"
                id="to-trial"
                on:click=move |_| state.go_to_entry("trial-log")
            >
                "Type the readings into the sea trial"
            </button>
        </p>
    }
}

/// The minute, and what is calculated for it.
fn cells(row: &FormRow, reader: &Reader) -> (String, [Option<String>; 5]) {
    let number = |figure: Option<Quantity>| figure.map(|figure| reader.number(figure));
    let cells = [
        row.alternator_a.map(amperes),
        row.case_c.map(celsius),
        row.air_c.map(celsius),
        // The speed is held, and read off.
        None,
        row.volts.map(|value| volts(value).to(1)),
    ];
    (reader.number(count(row.minute)), cells.map(number))
}
