#![forbid(unsafe_code)]
//! The worksheet on screen. All figures come from `ampwright_core`; this crate
//! shows inputs, shows results, and keeps worksheets in the browser. Built for
//! this computer it prints the page; built for the browser it takes over what
//! was printed.

// The type of a view in a view in a view is long.
#![recursion_limit = "256"]

mod app;
mod browser;
mod components;
#[cfg(not(target_arch = "wasm32"))]
mod prerender;
mod sections;
mod state;

/// Prints the page as it stands before anything was filled in.
#[cfg(not(target_arch = "wasm32"))]
fn main() {
    println!("{}", prerender::page());
}

/// How long the page waits for the journal of what is kept.
#[cfg(target_arch = "wasm32")]
const JOURNAL: std::time::Duration = std::time::Duration::from_millis(500);

/// Takes over what was printed, once the journal has given back what a killed
/// browser did not write to disk. One that is slow is not waited for.
#[cfg(target_arch = "wasm32")]
fn main() {
    use app::App;
    use leptos::prelude::*;
    use state::AppState;
    use std::{cell::Cell, rc::Rc};
    use wasm_bindgen::JsCast;

    // The state is there before the page, and lives as long.
    let owner = Owner::new();
    let state = owner.with(AppState::provide);
    std::mem::forget(owner);
    let is_taken_over = Rc::new(Cell::new(false));
    let is_late = is_taken_over.clone();
    let take_over = move || {
        let place = document().get_element_by_id("app");
        let Some(place) = place.filter(|_| !is_taken_over.replace(true)) else {
            return;
        };
        let page = move || {
            provide_context(state);
            view! { <App /> }
        };
        leptos::mount::hydrate_from(place.unchecked_into(), page).forget();
    };
    set_timeout(take_over.clone(), JOURNAL);
    wasm_bindgen_futures::spawn_local(async move {
        state.saved.recover(|| is_late.get()).await;
        take_over();
    });
}
