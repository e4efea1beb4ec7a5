//! Moving about on the page without touching its address, which is for links.

use std::time::Duration;

use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlElement};

/// Where on the page something was asked for, to come back to.
#[derive(Clone, PartialEq)]
pub struct PlaceOnPage {
    /// How far the page was scrolled.
    top: f64,
    /// The id of what had been pressed.
    pressed: &'static str,
}

impl PlaceOnPage {
    /// Where the page lies now, and what was pressed there.
    pub fn here(pressed: &'static str) -> PlaceOnPage {
        let top = window().scroll_y().unwrap_or_default();
        PlaceOnPage { top, pressed }
    }
}

/// The address of the page, without what a link adds to it.
pub fn address() -> String {
    let here = window().location().href().unwrap_or_default();
    let end = here.find(['?', '#']).unwrap_or(here.len());
    here[..end].to_string()
}

/// What a link added to the address; nothing if it is bare.
pub fn fragment() -> Option<String> {
    let hash = window().location().hash().ok()?;
    let fragment = hash.strip_prefix('#').unwrap_or(&hash);
    (!fragment.is_empty()).then(|| fragment.to_string())
}

/// Takes what a link added off the address, without a step back to it.
pub fn drop_fragment() {
    let bare = window().location().pathname().unwrap_or_default();
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&bare));
    }
}

/// Says something of the whole page where style and scripts look it up, as
/// `data-` and this name.
pub fn mark(name: &str, value: &str) {
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute(&format!("data-{name}"), value);
    }
}

/// What the build, the shell or [`mark`] says of the whole page under this name.
pub fn marked(name: &str) -> Option<String> {
    let root = document().document_element()?;
    root.get_attribute(&format!("data-{name}"))
}

/// The element of that id.
pub fn by_id(id: &str) -> Option<Element> {
    document().get_element_by_id(id)
}

/// Puts the cursor there, unless it is there already.
pub fn focus(id: &str) {
    let there = document()
        .active_element()
        .is_some_and(|focused| focused.id() == id);
    if !there && let Some(element) = by_id(id) {
        let _ = element.unchecked_ref::<HtmlElement>().focus();
    }
}

/// Puts the cursor there once it is on the page.
pub fn focus_soon(id: String) {
    set_timeout(move || focus(&id), Duration::ZERO);
}

/// Scrolls to a heading or a fold and puts the cursor there.
pub fn lead_to(id: &'static str) {
    let Some(place) = by_id(id) else { return };
    // What was out of sight is laid out on the way, and moves what follows.
    scroll_for(6, place.clone(), fragment());
    let start = place.query_selector("summary").ok().flatten();
    let start = start.unwrap_or_else(|| {
        // A heading takes the cursor only for this.
        let _ = place.set_attribute("tabindex", "-1");
        place
    });
    focus_in_place(&start);
}

/// Scrolls to an element in each of the next frames, until the reader goes to
/// another address.
fn scroll_for(frames: u32, place: Element, address: Option<String>) {
    if fragment() != address {
        return;
    }
    place.scroll_into_view();
    if frames > 1 {
        request_animation_frame(move || scroll_for(frames - 1, place, address));
    }
}

/// Comes back to a place.
pub fn return_to(place: &PlaceOnPage) {
    window().scroll_to_with_x_and_y(0.0, place.top);
    if let Some(pressed) = by_id(place.pressed) {
        focus_in_place(&pressed);
    }
}

/// Puts away what was laid over the page.
pub fn hide_popover(id: &str) {
    if let Some(element) = by_id(id) {
        // One that is not shown stays so.
        let _ = element.unchecked_ref::<HtmlElement>().hide_popover();
    }
}

/// Scrolls to the top.
pub fn to_top() {
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// Scrolls to an entry and puts the cursor there, once what is being opened
/// over it holds it.
pub fn lead_to_entry(id: String) {
    let lead = move || {
        let Some(entry) = by_id(&id) else { return };
        let row = entry.closest(".row").ok().flatten();
        row.unwrap_or(entry).scroll_into_view();
        focus(&id);
    };
    set_timeout(lead, Duration::ZERO);
}

/// Puts the cursor on an element without scrolling.
fn focus_in_place(element: &Element) {
    let options = web_sys::FocusOptions::new();
    options.set_prevent_scroll(true);
    let _ = element
        .unchecked_ref::<HtmlElement>()
        .focus_with_options(&options);
}

/// Whether figures may be entered with a thumb.
pub fn is_touched() -> bool {
    let coarse = window().match_media("(any-pointer: coarse)").ok().flatten();
    coarse.is_some_and(|query| query.matches())
}

/// Says that the first screen can be used: the style and the loader go by it.
pub fn say_ready() {
    mark("ready", "");
}

/// Says that all of the page can be used.
pub fn say_complete() {
    mark("complete", "");
}
