//! What was typed into the printed page before it came to life. `early.js`
//! marks every entry that was touched; here it is entered anew.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, EventInit, HtmlInputElement};

use crate::browser::page;

/// What the reader did before the live page was there.
pub struct Early {
    /// The entries that were touched, by their ids, and what stood in them.
    typed: Vec<(String, String)>,
    /// What had the cursor, and which letters were chosen there.
    cursor: Option<(String, Option<(u32, u32)>)>,
}

impl Early {
    /// Collects it from the printed page.
    pub fn collect() -> Early {
        let typed = |entry: Element| {
            // Entries, lists and text areas have the property under one name.
            let text = entry.unchecked_ref::<HtmlInputElement>().value();
            (entry.id(), text)
        };
        let touched = document().query_selector_all("[data-early]").ok();
        let touched = touched.iter().flat_map(|touched| {
            (0..touched.length()).filter_map(|at| touched.get(at)?.dyn_into::<Element>().ok())
        });
        Early {
            typed: touched.map(typed).collect(),
            cursor: document().active_element().map(|active| {
                let chosen = active.dyn_ref::<HtmlInputElement>().and_then(|entry| {
                    let start = entry.selection_start().ok()??;
                    Some((start, entry.selection_end().ok()??))
                });
                (active.id(), chosen)
            }),
        }
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
