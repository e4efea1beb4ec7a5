//! The year, month by month, and the hours of a settled day: worked out only
//! while the fold lies open, and only once typing rests.

mod day;
mod months;
mod table;

use std::time::Duration;

use ampwright_core::analysis::year;
use ampwright_core::boat::Month;
use leptos::prelude::*;

use crate::components::Fold;
use crate::state::AppState;
use day::SettledDay;
use months::MonthTable;
use table::MonthEntries;

/// How long typing must rest before the year is worked out again.
const REST: Duration = Duration::from_millis(250);

/// The section.
#[component]
pub fn ThroughTheYear() -> impl IntoView {
    view! {
        <section class="year" aria-labelledby="year-title">
            <h2 id="year-title">"Through the year"</h2>
            <Fold id="year" title="Engine, shore power, bank and solar month by month">
                <Months />
            </Fold>
        </section>
    }
}

/// All that is told of the year.
#[component]
fn Months() -> impl IntoView {
    let state = AppState::expect();
    let year = state.at_rest(REST, year);
    let chosen = RwSignal::new(None::<usize>);
    let month = Memo::new(move |_| {
        let asked = state.sheet.with(|sheet| sheet.inputs.sun.month as usize);
        chosen.get().unwrap_or(asked)
    });
    view! {
        <MonthEntries />
        <div id="year-table">
            {move || {
                let reader = state.reader.get();
                year.get().map(|year| view! { <MonthTable year reader /> })
            }}
        </div>
        <div class="row">
            <label for="year-month">"A settled day in"</label>
            <select
                id="year-month"
                on:change:target=move |event| chosen.set(event.target().value().parse().ok())
            >
                {Month::OPTIONS
                    .iter()
                    .enumerate()
                    .map(|(at, option)| {
                        let selected = move || month.get() == at;
                        view! {
                            <option value=at.to_string() prop:selected=selected>
                                {option.label}
                            </option>
                        }
                    })
                    .collect_view()}
            </select>
        </div>
        <div id="year-drawn">
            {move || {
                let (reader, at) = (state.reader.get(), month.get());
                year.get().map(|year| view! { <SettledDay year at reader /> })
            }}
        </div>
        <p class="about">
            "There are no clouds in it: every day has its month's mean sun, and a grey week needs more. Engine hours are those of each month's days aboard, motoring not counted; arrangements and their costs rest on the same year. When charging starts and stops is set under Engine start/stop rule in the worksheet; full is the daily charge target. Hours are solar time: at 12 the sun stands highest."
        </p>
    }
}
