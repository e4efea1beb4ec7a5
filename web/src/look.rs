//! The masthead, with the switch between day look and night look.

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::*;

use crate::desk::count;
use crate::paper::{Section, Text, written};
use crate::shelf::title;
use crate::store::Store;
use crate::words::escape;

const LOOK: &str = "ampwright.look";

/// The name of the boat and the switch; `look.js` sets the look before the
/// first paint.
pub const MASTHEAD: Section = Section {
    paper: written(|| {
        r#"<header class="masthead"><div><h1>Ampwright</h1><p id="title"></p></div>
<button type="button" class="plain" data-to="words">Words</button>
<button type="button" class="plain" id="look" data-click="look">Night look</button></header>"#
            .to_string()
    }),
    parts: &[
        ("title", Text::Soon(|sheet, _| escape(title(&sheet.name)))),
        (
            "look@aria-pressed",
            Text::Own(|desk| {
                desk.aside.track();
                is_night().to_string()
            }),
        ),
        (
            "look",
            Text::Own(|desk| {
                desk.aside.track();
                if is_night() { "Day look" } else { "Night look" }.to_string()
            }),
        ),
    ],
    acts: &[("look", |desk, _, _| {
        let look = if is_night() { "day" } else { "night" };
        if let Some(root) = document().document_element() {
            let _ = root.set_attribute("data-look", look);
        }
        if Store::open().is_ok() {
            // look.js reads the bare word.
            let _ = LocalStorage::raw().set_item(LOOK, look);
        }
        count(desk.aside);
    })],
    start: |_| (),
};

fn is_night() -> bool {
    document()
        .document_element()
        .and_then(|root| root.get_attribute("data-look"))
        .as_deref()
        == Some("night")
}
