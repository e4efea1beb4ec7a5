//! How well a figure is known.

use ampwright_core::boat::Key;
use ampwright_core::schema::Confidence;
use leptos::prelude::*;

use crate::state::AppState;

/// A list of how well an input may be known.
#[component]
pub fn ConfidenceChoice(key: Key, known: Memo<Confidence>) -> impl IntoView {
    let state = AppState::expect();
    let first = known.get_untracked();
    let choose = move |word: String| {
        let known = Confidence::ALL
            .into_iter()
            .find(|known| known.word() == word);
        if let Some(known) = known {
            state.edit(|sheet| sheet.know(key, known));
        }
    };
    view! {
        <select
            class="mark"
            class:guess=Signal::derive(move || !known.get().is_read())
            aria-label=format!("{}: how well it is known", key.spec().label)
            prop:value=Signal::derive(move || known.get().word().to_string())
            on:change:target=move |event| choose(event.target().value())
        >
            {Confidence::ALL
                .map(|option| {
                    let word = option.word();
                    view! { <option value=word selected=option == first>{word}</option> }
                })
                .collect_view()}
        </select>
    }
}
