//! Day look and night look.

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::*;

use crate::store::Store;

const LOOK: &str = "ampwright.look";

/// The switch between them; `look.js` sets the look before the first paint.
#[component]
pub fn LookSwitch() -> impl IntoView {
    let root = document().document_element();
    let night = RwSignal::new(
        root.as_ref()
            .and_then(|root| root.get_attribute("data-look"))
            .as_deref()
            == Some("night"),
    );
    let turn = move |_| {
        night.update(|night| *night = !*night);
        let look = if night.get_untracked() {
            "night"
        } else {
            "day"
        };
        if let Some(root) = document().document_element() {
            let _ = root.set_attribute("data-look", look);
        }
        if Store::open().is_ok() {
            // look.js reads the bare word.
            let _ = LocalStorage::raw().set_item(LOOK, look);
        }
    };
    view! {
        <button type="button" class="plain" id="look" aria-pressed=move || night.get().to_string() on:click=turn>
            {move || if night.get() { "Day look" } else { "Night look" }}
        </button>
    }
}
