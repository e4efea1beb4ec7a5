//! A link that leads to an entry of the page.

use leptos::prelude::*;

use crate::state::AppState;

/// Leads to the entry of an id, opens what lies over it and puts the cursor
/// there; the address stays as it is.
#[component]
pub fn EntryLink<C>(#[prop(into)] to: String, children: TypedChildren<C>) -> impl IntoView
where
    C: IntoView + 'static,
{
    let words = children.into_inner();
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
            {words()}
        </a>
    }
}
