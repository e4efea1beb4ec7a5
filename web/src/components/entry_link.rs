//! A link that leads to an entry of the page.

use leptos::prelude::*;

use crate::state::AppState;

/// Leads to the entry of an id, opens what lies over it and puts the cursor
/// there; the address stays as it is.
#[component]
pub fn EntryLink(#[prop(into)] to: String, children: Children) -> impl IntoView {
    let state = AppState::expect();
    view! {
        <a
            href=format!("#{to}")
            data-entry=to.clone()
            on:click=move |event| {
                event.prevent_default();
                state.go_to_entry(&to);
            }
        >
            {children()}
        </a>
    }
}
