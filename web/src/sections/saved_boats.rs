//! The name of the open boat, and the list of those kept in this browser.

use crate::components::Button;
use leptos::prelude::*;

use crate::browser::files;
use crate::state::AppState;
use crate::state::saved_boats::{Keeping, KeptTexts, SavedBoat};

/// The section.
#[component]
pub fn SavedBoatsSection() -> impl IntoView {
    let state = AppState::expect();
    let name = Memo::new(move |_| state.sheet.with(|sheet| sheet.name.clone()));
    let keeping = Signal::derive(move || match state.saved.keeping.get() {
        Keeping::Fresh => "Kept in this browser as soon as something is entered.".to_string(),
        Keeping::Kept => {
            "Kept in this browser only. A file or a link of it, kept elsewhere, is the true backup."
                .to_string()
        }
        Keeping::MemoryOnly(why) => why.to_string(),
    });
    let boats = move || state.saved.list.get();
    view! {
        <section class="shelf" aria-labelledby="shelf-title">
            <h2 id="shelf-title">"Saved boats"</h2>
            <label for="sheet-name">"Name of this boat"</label>
            <input
                id="sheet-name"
                type="text"
                autocomplete="off"
                maxlength="80"
                prop:value=name
                on:input:target=move |event| {
                    let name = event.target().value();
                    state.edit(|sheet| sheet.name = name);
                }
            />
            <p class="keeping" id="keeping">
                {keeping}
            </p>
            <ul class="sheets" id="sheets">
                <For each=boats key=SavedBoat::clone let:boat>
                    <Row boat />
                </For>
            </ul>
            <p class="buttons">
                <Button says="New boat" id="new-sheet" press=move |()| state.open_new() />
                <Button says="Copy this one" id="copy-sheet" press=move |()| state.open_copy() />
                <Button says="See an example boat" press=move |()| state.open_example() />
            </p>
        </section>
    }
}

/// A boat of the list: opened by its name, saved as a file, or deleted.
#[component]
fn Row(boat: SavedBoat) -> impl IntoView {
    let state = AppState::expect();
    let number = boat.number;
    let title = boat.title();
    let is_open = Memo::new(move |_| state.saved.number.get() == Some(number));
    let file_name = format!("{title}.json");
    let save = move |_| {
        state.save_waiting();
        // As it is kept, even if it cannot be read.
        if let Some(text) = KeptTexts::open().ok().and_then(|kept| kept.text(number)) {
            files::save_text(&file_name, &text);
        }
    };
    view! {
        <li class:here=is_open>
            <button
                type="button"
                class="plain title"
                id=format!("open-{number}")
                aria-current=Signal::derive(move || is_open.get().then(|| "true".to_string()))
                on:click=move |_| state.open_saved(number)
            >
                {title.clone()}
            </button>
            <Button
                says="File"
                id=format!("file-{number}")
                class="plain"
                name=format!("{title}: save as a file")
                press=save
            />
            <Button
                says="Delete"
                id=format!("delete-{number}")
                class="plain"
                name=format!("{title}: delete")
                press=move |()| state.delete_saved(number)
            />
        </li>
    }
}
