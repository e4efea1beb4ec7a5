//! What another tab did to the open boat.

use crate::components::Button;
use leptos::prelude::*;

use crate::state::AppState;

/// The notice: neither tab ever writes over the other.
#[component]
pub fn ElsewhereNotice() -> impl IntoView {
    let state = AppState::expect();
    let elsewhere = state.saved.elsewhere;
    let becomes = Signal::derive(move || {
        let becomes = match elsewhere.get() {
            Some(elsewhere) if elsewhere.is_copied => {
                "What you typed here is kept as a copy of its own."
            }
            Some(_) => "What you type here goes into a copy of its own.",
            None => "",
        };
        becomes.to_string()
    });
    let take_theirs = move |_| {
        if let Some(elsewhere) = elsewhere.get_untracked() {
            state.open_saved(elsewhere.number);
        }
    };
    view! {
        <div
            class="notice bad"
            class:hidden=Signal::derive(move || elsewhere.read().is_none())
            id="elsewhere"
            role="status"
        >
            <p>"This boat was changed in another tab. " <span>{becomes}</span></p>
            <p class="buttons">
                <Button says="Open that version" id="take-theirs" press=take_theirs />
                <Button says="Keep mine" id="keep-mine" press=move |()| state.keep_mine() />
            </p>
        </div>
    }
}
