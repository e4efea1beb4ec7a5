//! The charging run as a chart: a finger, the mouse or the keyboard reads off
//! a moment, and the same figures stand in a table behind it.

mod day_legs;
mod drawing;
mod limits;
mod reading;
mod table;
#[cfg(test)]
mod tests;

use ampwright_core::analysis::RunReport;
use ampwright_core::text::{legs, words};
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::{percent, seconds};
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
        state.settled(|_, report| limited_by(&report.analyses.run, &reader))
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

/// "Limited by alternator temperature 78 %, alternator output 22 %."
fn limited_by(run: &RunReport, reader: &Reader) -> String {
    if run.limit_shares.is_empty() {
        return "There is nothing to charge.".to_string();
    }
    let shares = run.limit_shares.iter();
    let shares: Vec<String> = shares
        .map(|share| {
            let share_pct = reader.show(percent(share.share_pct));
            format!("{} {share_pct}", words::limited_by(share.limit))
        })
        .collect();
    let disconnects = run.opening.map_or(String::new(), |opening| {
        let after = reader.show(seconds(opening.after_s));
        format!(
            " After {after} the battery management system stops the charging; from there on the chart shows what would flow if it did not."
        )
    });
    let drawn = legs::engine_loads(run, reader).map_or(String::new(), |drawn| format!(" {drawn}"));
    format!("Limited by {}.{drawn}{disconnects}", shares.join(", "))
}
