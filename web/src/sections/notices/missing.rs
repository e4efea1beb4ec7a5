//! That the second part of the program did not arrive.

use leptos::prelude::*;

use crate::browser::worker::reload;
use crate::components::Button;
use crate::state::{AppState, Rest};

/// The notice: the first screen works without what is below it.
#[component]
pub fn MissingNotice() -> impl IntoView {
    let state = AppState::expect();
    let is_missing = Memo::new(move |_| matches!(state.rest.get(), Rest::Missing));
    let start_again = move |()| {
        state.save_waiting();
        reload();
    };
    view! {
        <div
            class="notice bad"
            class:hidden=Signal::derive(move || !is_missing.get())
            id="missing"
            role="alert"
        >
            <p>
                "The rest of this page did not arrive. The questions and the answer work; findings, figures and the sections below need it."
            </p>
            <Button says="Reload the page" press=start_again />
        </div>
    }
}
