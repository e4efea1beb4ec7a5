//! Paper.

use leptos::prelude::{RwSignal, Set, window, window_event_listener_untyped};

/// Opens the browser's dialogue for printing.
pub fn print() {
    let _ = window().print();
}

/// Says in a signal whether the page is being printed, from now on.
pub fn follow(printing: RwSignal<bool>) {
    for (event, is_printed) in [("beforeprint", true), ("afterprint", false)] {
        // They are heard for as long as the page is there.
        let _ = window_event_listener_untyped(event, move |_| printing.set(is_printed));
    }
}
