//! All explanations, for print.

use ampwright_core::explain::{name, workings};
use leptos::prelude::*;

use super::steps::steps;
use crate::state::AppState;

/// Asks for them.
#[component]
pub fn PrintExplanations() -> impl IntoView {
    let wanted = AppState::expect().explanations.in_print;
    view! {
        <label class="tick">
            <input
                type="checkbox"
                id="print-workings"
                prop:checked=wanted
                on:change:target=move |event| wanted.set(event.target().checked())
            />
            "Print the workings as well"
        </label>
    }
}

/// The section at the end of the page, which is there in print only.
#[component]
pub fn Appendix() -> impl IntoView {
    let state = AppState::expect();
    let wanted = Memo::new(move |_| state.printing.get() && state.explanations.in_print.get());
    view! {
        <section class="appendix" id="appendix">
            <Show when=move || wanted.get()>
                <h2>"The workings"</h2>
                <Workings />
            </Show>
        </section>
    }
}

#[component]
fn Workings() -> impl IntoView {
    let state = AppState::expect();
    let reader = state.reader.get_untracked();
    state
        .glance(workings)
        .into_iter()
        .map(|made| {
            let figure = made.shown(&reader).unwrap_or_else(|| "–".to_string());
            view! {
                <div class="working">
                    <h3>{format!("{}: {figure}", name(made.id))}</h3>
                    {steps(state, made, None)}
                </div>
            }
        })
        .collect_view()
}
