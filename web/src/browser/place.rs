//! A page asked for again lies where it lay: the browser cannot see to that, as
//! what is out of sight has no height yet, and what lies open is made only when
//! the worksheet has started.

use std::cell::Cell;
use std::rc::Rc;

use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, ScrollRestoration, Storage};

const KEPT: &str = "ampwright.place";
/// Where the eye rests below the strip \[px\].
const EYE: f64 = 150.0;
/// For how many frames the page is held in its place.
const FRAMES: u32 = 20;

fn storage() -> Option<Storage> {
    window().session_storage().ok().flatten()
}

fn top_of(mark: &Element) -> f64 {
    mark.get_bounding_client_rect().top()
}

/// The chapter or fold nearest to where one reads.
fn nearest() -> Option<Element> {
    let marks = document().query_selector_all("h2[id], details[id]").ok()?;
    let away = |mark: &Element| (top_of(mark) - EYE).abs();
    (0..marks.length())
        .filter_map(|at| marks.get(at)?.dyn_into::<Element>().ok())
        // What stands in a closed fold has no place.
        .filter(|mark| {
            mark.unchecked_ref::<HtmlElement>()
                .offset_parent()
                .is_some()
        })
        .min_by(|a, b| away(a).total_cmp(&away(b)))
}

/// Remembers where the page lies, until this tab is closed.
pub fn remember() {
    let Some(storage) = storage() else { return };
    let scrolled = window().scroll_y().unwrap_or_default() > 0.0;
    // A full storage forgets it: the page opens at its top.
    let _ = match nearest().filter(|_| scrolled) {
        Some(mark) => storage.set_item(KEPT, &format!("{} {:.0}", mark.id(), top_of(&mark))),
        None => storage.remove_item(KEPT),
    };
}

/// Brings the page back to where it lay, if it was asked for again.
pub fn restore() {
    const NAVIGATE: u16 = 0;
    let navigation = window()
        .performance()
        .map(|clock| clock.navigation().type_());
    if navigation == Some(NAVIGATE) {
        return;
    }
    let kept = storage().and_then(|storage| storage.get_item(KEPT).ok().flatten());
    let Some((id, top)) = kept.as_deref().and_then(|kept| kept.split_once(' ')) else {
        return;
    };
    let Ok(top) = top.parse::<f64>() else { return };
    if let Ok(history) = window().history() {
        let _ = history.set_scroll_restoration(ScrollRestoration::Manual);
    }
    // Whoever moves about on the page meanwhile is not pulled back.
    let moved = Rc::new(Cell::new(false));
    let listen = |moved: Rc<Cell<bool>>| move || moved.set(true);
    let touched = listen(Rc::clone(&moved));
    let wheeled = listen(Rc::clone(&moved));
    let typed = listen(Rc::clone(&moved));
    // They do nothing once the page has found its place, and cost nothing.
    let _ = window_event_listener(ev::pointerdown, move |_| touched());
    let _ = window_event_listener(ev::wheel, move |_| wheeled());
    let _ = window_event_listener(ev::keydown, move |_| typed());
    hold(id.to_string(), top, moved, FRAMES);
}

/// Holds a chapter at its distance from the top for so many frames.
fn hold(id: String, top: f64, moved: Rc<Cell<bool>>, frames: u32) {
    if moved.get() || frames == 0 {
        return;
    }
    if let Some(mark) = document().get_element_by_id(&id) {
        let off = top_of(&mark) - top;
        if off.abs() > 1.0 {
            window().scroll_by_with_x_and_y(0.0, off);
        }
    }
    request_animation_frame(move || hold(id, top, moved, frames - 1));
}
