//! What was typed into the printed page before it came to life. `early.js`
//! marks every entry that was touched; here it is entered anew.

use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, EventInit, HtmlInputElement, NodeList};

use crate::browser::page;

/// What the reader did before the live page, or a part of it, was there.
pub struct Early {
    /// The entries that were touched, by their ids, and what stood in them.
    typed: Vec<(String, String)>,
    /// The ids of the folds that were opened.
    opened: Vec<String>,
    /// What had the cursor, and which letters were chosen there.
    cursor: Option<(String, Option<(u32, u32)>)>,
}

impl Early {
    /// Collects it from the printed page, or a part of it.
    pub fn collect(printed: &Element) -> Early {
        let typed = |entry: Element| {
            // Entries, lists and text areas have the property under one name.
            let text = entry.unchecked_ref::<HtmlInputElement>().value();
            (entry.id(), text)
        };
        let active = document().active_element();
        let active = active.filter(|active| printed.contains(Some(active)));
        Early {
            typed: within(printed, "[data-early]")
                .into_iter()
                .map(typed)
                .collect(),
            opened: within(printed, "details[open]")
                .iter()
                .map(Element::id)
                .collect(),
            cursor: active.map(|active| {
                let chosen = active.dyn_ref::<HtmlInputElement>().and_then(|entry| {
                    let start = entry.selection_start().ok()??;
                    Some((start, entry.selection_end().ok()??))
                });
                (active.id(), chosen)
            }),
        }
    }

    /// The folds that were opened, by their ids.
    pub fn opened(&self) -> &[String] {
        &self.opened
    }

    /// Enters it on the live page as if it was typed now.
    pub fn enter(self) {
        for (id, text) in self.typed {
            let Some(entry) = document().get_element_by_id(&id) else {
                continue;
            };
            entry.unchecked_ref::<HtmlInputElement>().set_value(&text);
            let rising = EventInit::new();
            rising.set_bubbles(true);
            for kind in ["input", "change"] {
                if let Ok(event) = web_sys::Event::new_with_event_init_dict(kind, &rising) {
                    let _ = entry.dispatch_event(&event);
                }
            }
        }
        let Some((id, chosen)) = self.cursor.filter(|(id, _)| !id.is_empty()) else {
            return;
        };
        page::focus(&id);
        let entry = document().get_element_by_id(&id);
        let entry = entry.and_then(|entry| entry.dyn_into::<HtmlInputElement>().ok());
        if let (Some(entry), Some((start, end))) = (entry, chosen) {
            let _ = entry.set_selection_range(start, end);
        }
    }
}

/// Every element of the page that fits a selector.
pub fn all(selector: &str) -> Vec<Element> {
    elements(document().query_selector_all(selector))
}

/// Every element within another that fits a selector.
fn within(part: &Element, selector: &str) -> Vec<Element> {
    elements(part.query_selector_all(selector))
}

fn elements(found: Result<NodeList, JsValue>) -> Vec<Element> {
    let Ok(found) = found else { return Vec::new() };
    let element = |at| found.get(at)?.dyn_into::<Element>().ok();
    (0..found.length()).filter_map(element).collect()
}
