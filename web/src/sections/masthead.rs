//! The head of the page: whose boat it is, the way to the glossary, and the
//! switch between day mode and night mode.

use leptos::prelude::*;

use crate::browser::{page, printing, storage};
use crate::sections::glossary;
use crate::state::AppState;
use crate::state::saved_boats::whose;

const KEPT: &str = "ampwright.look";

/// The section. `look.js` sets the look before the first paint.
#[component]
pub fn Masthead() -> impl IntoView {
    let state = AppState::expect();
    let night = RwSignal::new(false);
    Effect::new(move || night.set(is_night()));
    let switch = move |_| {
        night.update(|night| *night = !*night);
        set_look(night.get_untracked());
    };
    view! {
        <header class="masthead">
            <div>
                <h1>"Ampwright"</h1>
                <p id="title">{Signal::derive(move || state.now(|sheet, _| whose(sheet).to_string()))}</p>
                <p class="printed-on">{move || state.printing.get().then(printing::today)}</p>
            </div>
            <button
                type="button"
                class="plain"
                id="to-words"
                data-to=glossary::ID
                on:click=move |_| state.ask_from("to-words", glossary::ID)
            >
                "Glossary"
            </button>
            <button
                type="button"
                class="plain"
                id="look"
                aria-pressed=Signal::derive(move || night.get().to_string())
                on:click=switch
            >
                {Signal::derive(move || if night.get() { "Day mode" } else { "Night mode" }.to_string())}
            </button>
        </header>
    }
}

fn is_night() -> bool {
    page::marked("look").as_deref() == Some("night")
}

fn set_look(night: bool) {
    let look = if night { "night" } else { "day" };
    page::mark("look", look);
    // look.js reads the bare word.
    storage::remember(KEPT, look);
}
