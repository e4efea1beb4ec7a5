//! The readings that were taken, the latest first; each can be corrected or
//! deleted.

use ampwright_core::text::sea_trial::{reading, reading_time};
use leptos::prelude::*;

use crate::browser::page;
use crate::components::{Button, Fold};
use crate::state::{AppState, Trial};

/// So many stand below the form; those before are in a fold.
const IN_SIGHT: usize = 3;

/// The list.
#[component]
pub fn Readings() -> impl IntoView {
    let trial = Trial::expect();
    let count = Memo::new(move |_| trial.count());
    let title = Signal::derive(move || {
        format!("Earlier readings, {}", count.get().saturating_sub(IN_SIGHT))
    });
    view! {
        <div id="trial-readings">
            <Listed from=0 to=IN_SIGHT />
            <Fold
                id="trial-earlier"
                title
                applies=Signal::derive(move || count.get() > IN_SIGHT)
            >
                <Listed from=IN_SIGHT to=usize::MAX />
            </Fold>
        </div>
    }
}

/// Some of them, counted from the latest.
#[component]
fn Listed(from: usize, to: usize) -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let lines = Memo::new(move |_| {
        let reader = state.reader.get();
        trial.with_log(|log| {
            let line = |(at, row): (usize, &ampwright_core::decision::calibration::log::Row)| {
                (
                    at,
                    reading_time(row.minute, &reader),
                    reading(log, at, &reader),
                )
            };
            let rows = log.rows.iter().enumerate().rev();
            rows.skip(from)
                .take(to - from)
                .map(line)
                .collect::<Vec<_>>()
        })
    });
    let line = move |(at, time, figures): (usize, String, String)| {
        let correct = move |()| {
            trial.correct(at);
            page::focus("trial-amps");
        };
        view! {
            <li>
                <span class="when">{time.clone()}</span>
                <span class="what">{figures}</span>
                <Button
                    says="Correct"
                    class="plain"
                    name=format!("Correct {time}")
                    press=correct
                />
                <Button
                    says="Delete"
                    class="plain"
                    name=format!("Delete {time}")
                    press=move |()| trial.delete(at)
                />
            </li>
        }
    };
    view! { <ol class="taken">{move || lines.get().into_iter().map(line).collect_view()}</ol> }
}
