//! A part of the page that is printed for reading, and made anew at the start.

use leptos::prelude::*;

/// Printed with its children; once the page comes to life they are made anew in
/// place of what was printed. That needs less code than taking it over. For
/// parts that nobody can fill in before.
#[cfg(not(target_arch = "wasm32"))]
#[component]
pub fn MadeAtStart(class: &'static str, children: Children) -> impl IntoView {
    view! { <div class=class>{children()}</div> }
}

/// See above: in the browser.
#[cfg(target_arch = "wasm32")]
#[component]
pub fn MadeAtStart(
    class: &'static str,
    children: super::lazy_children::LazyChildren,
) -> impl IntoView {
    use leptos::html::Div;
    use wasm_bindgen::JsCast;

    let place = NodeRef::<Div>::new();
    Effect::new(move |_| {
        let place = place.get()?;
        place.set_text_content(None);
        Some(children.mount(place.unchecked_into()))
    });
    view! { <div class=class node_ref=place></div> }
}
