//! A part of the page that is made only while it is asked for.

use leptos::html::Div;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use super::lazy_children::LazyChildren;

/// Holds its children while they are wanted, and nothing otherwise.
#[component]
pub fn OnDemand(
    #[prop(into)] wanted: Signal<bool>,
    #[prop(optional)] class: Option<&'static str>,
    children: LazyChildren,
) -> impl IntoView {
    let place = NodeRef::<Div>::new();
    // What the effect holds leaves the page when it runs again.
    Effect::new(move |_| {
        let place = place.get().filter(|_| wanted.get())?;
        Some(children.mount(place.unchecked_into()))
    });
    view! { <div class=class node_ref=place></div> }
}
