//! What is being typed. An entry's text is in force while it is valid. While
//! it is not, the value from before the typing began stands again, the entry
//! keeps its text, and the answer says that it does not include it.

use std::cell::RefCell;

use ampwright_core::Worksheet;
use ampwright_core::schema::{FieldSpec, Value};
use ampwright_core::text::errors::{quoted, span};
use ampwright_core::units::Reader;
use leptos::prelude::*;
use leptos::web_sys::{Element, Event};

use crate::desk::{Desk, count};
use crate::field;
use crate::of::{Of, Shown, Standing};
use crate::paper::{by_id, focus};
use crate::words::escape;

/// An entry in which something was typed that is not settled yet.
struct Draft {
    of: Of,
    /// The element, as an input may have two entries on the page.
    id: String,
    state: State,
}

enum State {
    /// The text is valid and in force; this stood before it was typed.
    InForce { before: Standing },
    /// The text is not valid; what stood before is in force again.
    Refused { text: String, why: String },
}

thread_local! {
    /// At most one for each input.
    static DRAFTS: RefCell<Vec<Draft>> = const { RefCell::new(Vec::new()) };
}

/// Leads to the entry that a link is about.
pub fn go_to_entry(_: Desk, link: &Element, event: &Event) {
    // Goes there without touching the address, which is for links.
    event.prevent_default();
    let Some(entry) = link.get_attribute("data-entry").and_then(|id| by_id(&id)) else {
        return;
    };
    let mut around = entry.closest("details").ok().flatten();
    while let Some(fold) = around {
        let _ = fold.set_attribute("open", "");
        let outside = fold.parent_element();
        around = outside.and_then(|outside| outside.closest("details").ok().flatten());
    }
    focus(&entry.id());
    entry.scroll_into_view();
}

/// A valid text was typed: it is in force at once.
pub fn accept(desk: Desk, id: &str, of: Of, value: Value) {
    let before = match remove(desk, id, of) {
        Some(State::InForce { before }) => before,
        _ => desk.sheet.with_untracked(|sheet| of.standing(sheet)),
    };
    insert(id, of, State::InForce { before });
    desk.edit(|sheet| of.set(sheet, value));
}

/// A text was typed that is not valid: what stood before the typing began
/// stands again.
pub fn refuse(desk: Desk, id: &str, of: Of, text: String, why: String) {
    let was = remove(desk, id, of);
    insert(id, of, State::Refused { text, why });
    if let Some(State::InForce { before }) = was {
        desk.edit(|sheet| of.put_back(sheet, before));
    }
    count(desk.refused);
}

/// The entry was left, or its value set otherwise: what is in force is what
/// the next typing goes back to. A text that was refused stays refused.
pub fn leave(of: Of) {
    DRAFTS.with_borrow_mut(|drafts| {
        drafts.retain(|draft| draft.of != of || matches!(draft.state, State::Refused { .. }));
    });
}

/// The value was set by other means than typing; what is half typed is void.
pub fn void(desk: Desk, of: Of) {
    DRAFTS.with_borrow_mut(|drafts| drafts.retain(|draft| draft.of != of));
    count(desk.refused);
}

/// Another worksheet lies open.
pub fn clear(desk: Desk) {
    DRAFTS.take();
    count(desk.refused);
}

/// A load or an arrangement was deleted: those below it move up. `place` gives
/// the place in its list of what an entry belongs to, `up` the entry one place
/// further up.
pub fn close_gap(desk: Desk, at: usize, place: fn(Of) -> Option<usize>, up: fn(Of) -> Of) {
    DRAFTS.with_borrow_mut(|drafts| {
        drafts.retain(|draft| place(draft.of) != Some(at));
        for draft in drafts {
            if let Some(below) = place(draft.of).filter(|below| *below > at) {
                draft.of = up(draft.of);
                let (was, is) = (format!("-{below}-"), format!("-{}-", below - 1));
                draft.id = draft.id.replacen(&was, &is, 1);
            }
        }
    });
    count(desk.refused);
}

/// The text that an entry keeps although it was refused, and why it was.
pub fn refused(id: &str, of: Of) -> Option<(String, String)> {
    DRAFTS.with_borrow(|drafts| {
        let mut drafts = drafts.iter();
        let draft = drafts.find(|draft| draft.of == of && draft.id == id)?;
        match &draft.state {
            State::Refused { text, why } => Some((text.clone(), why.clone())),
            State::InForce { .. } => None,
        }
    })
}

/// What is said beside an entry whose text was refused; `used` is what is in
/// force, as the entry would show it.
pub fn sentence(spec: &FieldSpec, shown: &Shown, used: &str, text: &str, why: &str) -> String {
    match (text.trim().is_empty(), shown.value) {
        (true, _) => format!(
            "Empty: {used} is used until you enter a figure, {}.",
            span(spec, &Reader::METRIC)
        ),
        (false, Value::Absent) => format!("{why} It counts as left empty until you correct it."),
        (false, _) => format!("{why} {used} is used until you correct it."),
    }
}

/// What the answer does not include, as markup; nothing if it includes all.
pub fn left_out(desk: Desk) -> String {
    desk.refused.track();
    desk.sheet.with(|sheet| {
        DRAFTS.with_borrow(|drafts| {
            let links: Vec<String> = drafts
                .iter()
                .filter(|draft| draft.of.matters(sheet))
                .filter_map(|draft| link(sheet, draft))
                .collect();
            match links.is_empty() {
                true => String::new(),
                false => format!("Not included: {}", links.join(", ")),
            }
        })
    })
}

fn link(sheet: &Worksheet, draft: &Draft) -> Option<String> {
    let State::Refused { text, .. } = &draft.state else {
        return None;
    };
    let id = &draft.id;
    let typed = match text.trim() {
        "" => "(empty)".to_string(),
        text => format!("<kbd>{}</kbd>", escape(&quoted(text))),
    };
    Some(format!(
        "<a href='#{id}' data-click=to-entry data-entry={id}>{} {typed}</a>",
        escape(&draft.of.label(sheet))
    ))
}

/// Takes away what was typed for an input. Typed in its other entry, that one
/// shows what is in force again.
fn remove(desk: Desk, id: &str, of: Of) -> Option<State> {
    let draft = DRAFTS.with_borrow_mut(|drafts| {
        let at = drafts.iter().position(|draft| draft.of == of)?;
        Some(drafts.remove(at))
    })?;
    if matches!(draft.state, State::Refused { .. }) {
        count(desk.refused);
    }
    if draft.id != id {
        let shown = desk.sheet.with_untracked(|sheet| Shown::of(sheet, of));
        field::show(&draft.id, of, &shown, true);
    }
    Some(draft.state)
}

fn insert(id: &str, of: Of, state: State) {
    let id = id.to_string();
    DRAFTS.with_borrow_mut(|drafts| drafts.push(Draft { of, id, state }));
}
