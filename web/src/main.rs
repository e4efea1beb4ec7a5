#![forbid(unsafe_code)]
//! The worksheet on screen. All figures come from `ampwright_core`; this crate
//! shows inputs, shows results, and keeps worksheets in the browser. Built for
//! this computer instead of the browser, it prints the page's markup.

mod answer;
mod app;
mod arrange;
mod arrive;
mod chart;
mod come;
mod contents;
mod desk;
mod draft;
mod field;
mod figures;
mod findings;
mod fit;
mod form;
mod glossary;
mod goal;
mod loads;
mod look;
mod money;
mod of;
mod own;
mod paper;
mod print;
mod questions;
mod share;
mod shelf;
mod store;
mod sure;
mod trial;
mod units;
mod words;
mod working;
mod year;

use leptos::{mount::mount_to, prelude::*, web_sys::HtmlElement};
use wasm_bindgen::JsCast;

fn main() {
    if cfg!(not(target_arch = "wasm32")) {
        println!("{}", print::page());
        return;
    }
    let place = document()
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into::<HtmlElement>().ok());
    if let Some(place) = place {
        mount_to(place, app::App).forget();
    }
}
