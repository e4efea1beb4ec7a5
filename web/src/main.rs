#![forbid(unsafe_code)]
//! The worksheet on screen. All figures come from `ampwright_core`; this crate
//! shows inputs, shows results, and keeps worksheets in the browser. Built for
//! this computer it prints the page, for reading until the program is there;
//! built for the browser it makes the same page, alive.

// The type of a view in a view in a view is long.
#![recursion_limit = "256"]

mod app;
mod browser;
mod components;
#[cfg(not(target_arch = "wasm32"))]
mod prerender;
mod sections;
// What only the browser runs is checked everywhere.
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code))]
mod start;
mod state;

/// Prints the page as it stands before anything was filled in.
#[cfg(not(target_arch = "wasm32"))]
fn main() {
    println!("{}", prerender::page());
}

/// Brings the page to life.
#[cfg(target_arch = "wasm32")]
fn main() {
    start::start();
}
