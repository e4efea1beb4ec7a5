//! Cautions that hold whatever the figures say.

use ampwright_core::guidance::CAUTIONS;
use ampwright_core::text::cautions;
use leptos::prelude::*;

use crate::state::AppState;

/// The section.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = AppState::expect();
    let caution = |code| {
        view! {
            <dt>{cautions::about(code)}</dt>
            <dd>{Signal::derive(move || state.reader.with(|reader| cautions::sentence(code, reader)))}</dd>
        }
    };
    view! {
        <section class="cautions" aria-labelledby="cautions-title">
            <h2 id="cautions-title">"Cautions"</h2>
            <dl>{CAUTIONS.iter().map(|one| caution(one.code)).collect_view()}</dl>
        </section>
    }
}
