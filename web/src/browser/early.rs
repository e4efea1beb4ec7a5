//! What was typed into the printed page before it came to life. `early.js`
//! marks every entry that was touched; here it is heard.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, EventInit, HtmlInputElement};

/// Something entered early.
pub struct Early {
    entry: Element,
    text: String,
}

/// Collects it, before the worksheet writes its own figures there.
pub fn collect() -> Vec<Early> {
    let Ok(touched) = document().query_selector_all("[data-early]") else {
        return Vec::new();
    };
    (0..touched.length())
        .filter_map(|at| {
            let entry = touched.get(at)?.dyn_into::<Element>().ok()?;
            let _ = entry.remove_attribute("data-early");
            // Entries, lists and text areas have the property under one name.
            let text = entry.unchecked_ref::<HtmlInputElement>().value();
            Some(Early { entry, text })
        })
        .collect()
}

/// Enters it as if it was typed now.
pub fn enter(early: Vec<Early>) {
    for Early { entry, text } in early {
        let field = entry.unchecked_ref::<HtmlInputElement>();
        // Files stay chosen, and no browser lets a page choose one.
        if field.type_() != "file" {
            field.set_value(&text);
        }
        let rising = EventInit::new();
        rising.set_bubbles(true);
        for kind in ["input", "change"] {
            if let Ok(event) = web_sys::Event::new_with_event_init_dict(kind, &rising) {
                let _ = entry.dispatch_event(&event);
            }
        }
    }
}
