//! Parts of the page that come to life after the first screen.

use leptos::prelude::*;

use crate::state::AppState;

/// A part that shows its printed copy until the first screen can be used: a slow
/// phone would else wait for all of the page before it takes a letter.
#[component]
pub fn Later(
    /// Its turn among these parts, from 0, in the order of the page.
    turn: usize,
    /// What the style knows it by.
    class: &'static str,
    children: ChildrenFn,
) -> impl IntoView {
    let state = AppState::expect();
    let is_live = Memo::new(move |_| state.live_parts.get() > turn);
    view! {
        <div class=class data-later="">
            {move || is_live.get().then(|| children())}
        </div>
    }
}
