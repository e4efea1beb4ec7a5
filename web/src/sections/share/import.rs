//! Boats that others have sent, or that were saved before.

use crate::components::Button;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;

use crate::browser::files;
use crate::state::AppState;

/// Opens a link or a text, or adds the boats of a file.
#[component]
pub fn Import() -> impl IntoView {
    let state = AppState::expect();
    let text = RwSignal::new(String::new());
    let open = move |_| {
        state.open_text(&text.get_untracked());
        text.set(String::new());
    };
    let add = move |entry: HtmlInputElement| {
        let file = entry.files().and_then(|files| files.get(0));
        let Some(file) = file else { return };
        spawn_local(async move {
            match files::read(&file).await {
                Ok(text) => state.add_file(&text),
                Err(why) => state.refuse_file(why.to_string()),
            }
            // The same file may be chosen again.
            entry.set_value("");
        });
    };
    view! {
        <h3>"Import"</h3>
        <label for="open-link">"Open a link, or the text of a file"</label>
        <textarea
            id="open-link"
            rows="2"
            prop:value=text
            on:input:target=move |event| text.set(event.target().value())
        ></textarea>
        <p class="buttons">
            <Button
                says="Open as a copy"
                id="take-link"
                disabled=Signal::derive(move || text.read().trim().is_empty())
                press=open
            />
        </p>
        <label for="import">"Add boats from a file"</label>
        <input
            type="file"
            id="import"
            accept=".json,application/json"
            on:change:target=move |event| add(event.target())
        />
    }
}
