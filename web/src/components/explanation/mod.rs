//! How a figure came about, opened at the figure itself: one at a time, with a
//! way along the figures it used and back. Worked out only while it lies open.

mod appendix;
mod formula;
mod lines;
mod panel;
mod steps;
mod uses;

use leptos::prelude::*;

use crate::state::{AppState, Explain, ExplainedAt, Rest};
pub use appendix::{Appendix, PrintExplanations};
pub use panel::panel;

/// A figure that opens its explanation.
#[component]
pub fn Opener(
    at: ExplainedAt,
    /// Its name in the report.
    id: &'static str,
    /// The figure as it stands there.
    #[prop(into)]
    words: Signal<String>,
    /// Its unit, where that stands elsewhere.
    #[prop(optional, into)]
    unit: MaybeProp<String>,
) -> impl IntoView {
    let open = AppState::expect().explanations;
    let label = Signal::derive(move || {
        let unit = unit.get().filter(|unit| !unit.is_empty());
        let unit = unit.map_or(String::new(), |unit| format!(" {unit}"));
        words.with(|words| format!("How {words}{unit} came about"))
    });
    view! {
        <button
            type="button"
            class="how"
            id=format!("{at}.{id}")
            aria-expanded=Signal::derive(move || open.is_open(at, id).to_string())
            aria-label=label
            on:click=move |_| open.toggle(at, id)
        >
            {words}
        </button>
    }
}

/// Where the explanations of a place's figures open: of figures of the open
/// boat, where it is not said otherwise. What makes them is in the second part
/// of the program.
#[component]
pub fn Explanation(at: ExplainedAt, #[prop(optional)] explain: Option<Explain>) -> impl IntoView {
    let state = AppState::expect();
    let wanted = Memo::new(move |_| state.explanations.is_at(at));
    let panel = move || {
        match state.rest.get() {
        Rest::Here(later) => (later.panel)(at, explain),
        Rest::Coming | Rest::Missing => view! {
            <p class="margin">"How it came about is in the rest of the page, which is not here yet."</p>
        }
        .into_any(),
    }
    };
    move || wanted.get().then(panel)
}
