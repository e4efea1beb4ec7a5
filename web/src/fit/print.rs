//! Prints one fold by itself, headed by whose it is, where to find it again,
//! and when it was printed.

use ampwright_core::exchange::to_link;
use leptos::prelude::*;
use leptos::web_sys::{Element, js_sys::Date};

use crate::legacy::write;
use crate::state::AppState;
use crate::state::saved_boats::title;
use crate::words::escape;

/// Prints the fold a button stands in; the style leaves out everything else
/// while the root element has its class.
pub fn print(desk: AppState, button: &Element) {
    let fold = button.get_attribute("data-fold").unwrap_or_default();
    let here = window().location().href().unwrap_or_default();
    let page = here.split('#').next().unwrap_or_default();
    let head = desk.sheet.with_untracked(|sheet| {
        format!(
            "<p><b>{}</b> {}</p><p>{page}#{}</p>",
            escape(title(&sheet.name)),
            String::from(Date::new_0().to_date_string()),
            escape(&to_link(sheet))
        )
    });
    write(&format!("fit-{fold}-head"), &head);
    set_class(&format!("print-{fold}"));
    let _ = window().print();
}

/// The class of the root element, which says what is printed.
pub fn set_class(class: &str) {
    if let Some(root) = document().document_element() {
        root.set_class_name(class);
    }
}
