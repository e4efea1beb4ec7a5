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

/// Takes over what was printed.
#[cfg(target_arch = "wasm32")]
fn main() {
    use wasm_bindgen::JsCast;

    let place = leptos::prelude::document().get_element_by_id("app");
    if let Some(place) = place {
        leptos::mount::hydrate_from(place.unchecked_into(), app::App).forget();
    }
}
