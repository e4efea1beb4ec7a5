//! A part of the page that is made only while it is asked for.

use leptos::html::Div;
use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Holds its children while they are wanted, and nothing otherwise. They are
/// mounted by hand: what is never printed needs no code to be taken over, and
/// that code is large.
#[component]
pub fn OnDemand<C>(
    #[prop(into)] wanted: Signal<bool>,
    children: TypedChildrenFn<C>,
) -> impl IntoView
where
    C: IntoView + 'static,
{
    let children = children.into_inner();
    let place = NodeRef::<Div>::new();
    // What the effect holds leaves the page when it runs again.
    Effect::new(move |_| {
        let place = place.get().filter(|_| wanted.get())?;
        let children = children.clone();
        Some(mount_to(place.unchecked_into(), move || children()))
    });
    view! { <div node_ref=place></div> }
}
