//! The sheet for the readings of the hot run: empty cells, and small in them
//! what is calculated.

use crate::components::{Button, TextRow, TextTable, texts};
use ampwright_core::guidance::commissioning::{FormRow, form};
use ampwright_core::text::headings::READINGS;
use ampwright_core::units::quantity::{amperes, celsius, count, rpm, volts};
use ampwright_core::units::{Quantity, Reader};
use leptos::prelude::*;

use crate::state::AppState;

/// The table, and the way to where its figures are typed.
#[component]
pub fn ReadingsForm() -> impl IntoView {
    let state = AppState::expect();
    let speed = Signal::derive(move || {
        let speed = rpm(state.settled(|sheet, report| form(sheet, report).engine_rpm));
        format!(
            "Readings of the hot run, engine held at {}",
            state.show(speed)
        )
    });
    let rows = Memo::new(move |_| {
        // In the units of the headings, which are those the sea trial reads.
        let reader = Reader::METRIC.with_decimal_comma(state.preferences.has_decimal_comma());
        state.settled(|sheet, report| {
            let rows = form(sheet, report).rows;
            rows.iter()
                .map(|form| row(form, &reader))
                .collect::<Vec<_>>()
        })
    });
    view! {
        <TextTable class="form" id="first-form" caption=speed heads=texts(READINGS) rows />
        <p class="margin">"The small figures are calculated; write yours beside them."</p>
        <p class="buttons">
            <Button
                says="Type the readings into the sea trial"
                id="to-trial"
                class="plain"
                press=move |()| state.go_to_entry("trial-amps")
            />
        </p>
    }
}

/// The minute, and what is calculated for it.
fn row(row: &FormRow, reader: &Reader) -> TextRow {
    let number = |figure: Option<Quantity>| {
        let figure = figure.map(|figure| reader.number(figure));
        figure.unwrap_or_default()
    };
    let cells = [
        row.alternator_a.map(amperes),
        row.case_c.map(celsius),
        row.air_c.map(celsius),
        // The speed is held, and read off.
        None,
        row.volts.map(|value| volts(value).to(1)),
    ];
    TextRow {
        head: reader.number(count(row.minute)),
        cells: cells.map(number).into(),
    }
}
