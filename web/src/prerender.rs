//! The page as the build writes it: what a fresh boat gives, so that there is
//! something to read before the wasm arrives. `cargo xtask stamp` puts it into
//! `index.html`.

use leptos::prelude::*;

use crate::app::{App, LATER};
use crate::state::{AppState, Rest};

/// Everything within `#app`.
pub fn page() -> String {
    let all_there = |state: AppState| state.rest.set(Rest::Here(LATER));
    part(all_there, || view! { <App /> })
}

/// A part of the page as it is printed when the state was prepared so.
pub fn part<V: IntoView>(prepare: impl FnOnce(AppState), make: impl FnOnce() -> V) -> String {
    Owner::new_root(None).with(|| {
        prepare(AppState::provide());
        make().to_html()
    })
}
