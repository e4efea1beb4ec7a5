//! Paper: printing the page or a part of it.

use std::time::Duration;

use leptos::prelude::*;

/// Opens the browser's dialogue for printing.
pub fn print() {
    let _ = window().print();
}

/// Prints what the style leaves in while the root element has a class, once
/// what was changed for it is on the page.
pub fn print_only(class: String) {
    let print_it = move || {
        set_root_class(&class);
        print();
    };
    set_timeout(print_it, Duration::ZERO);
}

/// Ends what [`print_only`] began.
pub fn leave_nothing_out() {
    set_root_class("");
}

fn set_root_class(class: &str) {
    if let Some(root) = document().document_element() {
        root.set_class_name(class);
    }
}

/// Says in a signal whether the page is being printed, from now on.
pub fn follow(printing: RwSignal<bool>) {
    for (event, is_printed) in [("beforeprint", true), ("afterprint", false)] {
        // They are heard for as long as the page is there.
        let _ = window_event_listener_untyped(event, move |_| printing.set(is_printed));
    }
}

/// The day, as the browser writes it.
pub fn today() -> String {
    js_sys::Date::new_0().to_date_string().into()
}
