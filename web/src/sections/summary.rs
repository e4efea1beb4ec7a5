//! The answer in words, before any figure: whose boat it is about, how long the
//! engine runs, whether the alternator survives, and what to do first.

use ampwright_core::text;
use leptos::prelude::*;

use crate::state::AppState;
use crate::state::saved_boats::{is_fresh, whose};

/// The section.
#[component]
pub fn Summary() -> impl IntoView {
    let state = AppState::expect();
    let whose = Signal::derive(move || state.now(|sheet, _| whose(sheet).to_string()));
    let words = Memo::new(move |_| {
        let reader = state.reader.get();
        state.now(|sheet, report| text::in_short(sheet, report, &reader))
    });
    let first = Signal::derive(move || match state.now(|sheet, _| is_fresh(sheet)) {
        true => text::EXAMPLE_FIRST.to_string(),
        false => words.get().first,
    });
    let harmed = Signal::derive(move || state.now(|_, report| !report.verdict.survives()));
    view! {
        <section class="summary" id="summary" aria-label="In short">
            <p class="boat">
                <b id="summary-whose">{whose}</b>
                ": "
                {Signal::derive(move || words.get().boat)}
                "."
            </p>
            <p>{Signal::derive(move || words.get().engine)}</p>
            <p class:harmed=harmed>{Signal::derive(move || words.get().alternator)}</p>
            <p>
                <b>"First: "</b>
                {first}
            </p>
        </section>
    }
}
