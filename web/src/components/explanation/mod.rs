//! How a figure came about, opened at the figure itself: one at a time, with a
//! way along the figures it used and back. Worked out only while it lies open.

mod appendix;
mod formula;
mod lines;
mod panel;
mod steps;
mod uses;

use ampwright_core::explain::{Working, working_at};
use leptos::prelude::*;

use crate::state::{AppState, ExplainedAt};
pub use appendix::{Appendix, PrintExplanations};
use panel::Panel;

/// Explains a figure by its name in the report.
pub type Explain = Callback<&'static str, Option<Working>>;

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
/// boat, where it is not said otherwise.
#[component]
pub fn Explanation(at: ExplainedAt, #[prop(optional)] explain: Option<Explain>) -> impl IntoView {
    let state = AppState::expect();
    let explain = explain.unwrap_or_else(|| {
        Callback::new(move |id: &'static str| {
            let minute = state.moment().map_or(0.0, |moment| moment.minute);
            state.settled(|sheet, report| working_at(sheet, report, minute, id))
        })
    });
    let wanted = Memo::new(move |_| state.explanations.is_at(at));
    view! {
        <Show when=move || wanted.get()>
            <Panel at explain />
        </Show>
    }
}
