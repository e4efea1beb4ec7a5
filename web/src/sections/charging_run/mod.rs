//! The charging run as a chart: a finger, the mouse or the keyboard reads off
//! a moment, and the same figures stand in a table behind it.

mod day_legs;
mod drawing;
mod limits;
mod reading;
mod table;
#[cfg(test)]
mod tests;

use ampwright_core::text::charging_run;
use ampwright_core::units::quantity::percent;
use leptos::prelude::*;

use crate::components::Fold;
use crate::state::AppState;
use day_legs::Legs;
use drawing::RunDrawing;
use reading::{Reading, ReadingSlider};
use table::RunTable;

/// The section.
#[component]
pub fn ChargingRun() -> impl IntoView {
    let state = AppState::expect();
    let title = Signal::derive(move || {
        state.now(|sheet, _| {
            let run = &sheet.inputs.run;
            let [from, to] = [run.from_pct, run.to_pct].map(|share| percent(share).up_to(2));
            state
                .reader
                .with(|reader| format!("The charging run, {}", reader.range(from, to)))
        })
    });
    let lead = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|_, report| charging_run::limited_by(&report.analyses.run, &reader))
    });
    view! {
        <section class="chart run-chart" aria-labelledby="chart-title">
            <h2 id="chart-title">{title}</h2>
            <p class="lead" id="run-lead">
                {lead}
            </p>
            <RunDrawing />
            <ReadingSlider />
            <Reading />
            <Fold id="run-fold" title="The run as a table">
                <RunTable />
            </Fold>
            <Fold id="legs" title="A day of several legs">
                <Legs />
            </Fold>
        </section>
    }
}
