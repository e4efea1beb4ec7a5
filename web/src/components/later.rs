//! Parts of the page that come to life after the first screen.

use leptos::prelude::*;

use crate::state::{AppState, Rest};

/// A part that shows its printed copy until the first screen can be used: a slow
/// phone would else wait for all of the page before it takes a letter. What is in
/// it says [`crate::app::LATER`].
#[component]
pub fn Later(
    /// Its turn among these parts, from 0, in the order of the page.
    turn: usize,
    /// What the style knows it by.
    class: &'static str,
) -> impl IntoView {
    let state = AppState::expect();
    let is_live = Memo::new(move |_| state.live_parts.get() > turn);
    let part = move || match state.rest.get() {
        Rest::Here(later) => is_live.get().then(|| (later.part)(turn)),
        Rest::Coming | Rest::Missing => None,
    };
    view! {
        <div class=class data-later="">
            {part}
        </div>
    }
}
