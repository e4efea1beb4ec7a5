//! The panel of an explanation.

use ampwright_core::explain::name;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use super::Explain;
use super::steps::steps;
use crate::state::{AppState, ExplainedAt, PANEL};

/// What a figure is, how it came about, and the ways back and on. Escape
/// closes it.
#[component]
pub fn Panel(at: ExplainedAt, explain: Explain) -> impl IntoView {
    let state = AppState::expect();
    let open = state.explanations;
    let made = Memo::new(move |_| open.shown().and_then(|id| explain.run(id)));
    let title = move || {
        let reader = state.reader.get();
        made.with(|made| match made {
            Some(made) => {
                let figure = made.shown(&reader).unwrap_or_else(|| "this".to_string());
                format!("How {figure} came about")
            }
            None => "There is no such figure now".to_string(),
        })
    };
    let close_at_escape = move |event: KeyboardEvent| {
        if event.key() == "Escape" {
            open.close();
        }
    };
    let back = move |before: &'static str| {
        let name = name(before);
        view! {
            <button
                type="button"
                class="plain"
                id="working-back"
                aria-label=format!("Back to: {name}")
                on:click=move |_| open.back()
            >
                {format!("‹ {name}")}
            </button>
        }
    };
    view! {
        <div
            class="working"
            id=PANEL
            role="region"
            aria-labelledby="working-title"
            tabindex="-1"
            on:keydown=close_at_escape
        >
            <div class="trail">
                {move || open.before().map(back)}
                <button
                    type="button"
                    class="plain"
                    id="working-close"
                    aria-label="Close the working"
                    on:click=move |_| open.close()
                >
                    "close"
                </button>
            </div>
            <p class="what">{move || open.shown().map(name)}</p>
            <p class="title" id="working-title">
                {title}
            </p>
            {move || made.get().map(|made| steps(state, made, Some(at)))}
        </div>
    }
}
