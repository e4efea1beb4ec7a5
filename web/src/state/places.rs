//! Ways through the page: to a chapter, to an entry, and back. A chapter has an
//! address of its own, so that it can be linked and the browser leads back.

use ampwright_core::boat::Key;
use ampwright_core::schema::Place;
use leptos::prelude::*;

use crate::browser::page::{self, PlaceOnPage};
use crate::state::AppState;

/// The id of the table of contents.
pub const CONTENTS: &str = "contents";

/// Chapters of the page, in its order on a phone: an id, and its name.
pub const PLACES: [(&str, &str); 17] = [
    ("questions-title", "Short questions"),
    ("findings-title", "Warnings and notes"),
    ("sure-title", "How certain is this?"),
    ("chart-title", "The charging run"),
    ("speed-title", "Output against engine speed"),
    ("figures-title", "Figures"),
    ("year-title", "Through the year"),
    ("arrange-title", "Which arrangement"),
    ("goal-title", "Cheapest way to a goal"),
    ("fit-title", "Fit it safely"),
    ("units", "Units"),
    ("form-title", "All inputs"),
    ("trial-title", "Sea trial"),
    ("shelf-title", "Saved boats"),
    ("share-title", "Share and print"),
    ("cautions-title", "Cautions"),
    ("words", "Glossary"),
];

/// A fold that was opened because the address leads to it.
#[derive(Clone, Copy)]
pub struct Visit(StoredValue<Option<&'static str>>);

impl Visit {
    /// None yet.
    pub fn new() -> Visit {
        Visit(StoredValue::new(None))
    }
}

impl AppState {
    /// Leads to a chapter or fold of the page, and opens a fold.
    pub fn show_place(self, id: &'static str) {
        self.folds.set(id, true);
        page::lead_to(id);
    }

    /// Leads to the chapter of an address, if it is one. What was opened for
    /// the address before is closed: the browser's way back leads there too.
    pub fn visit(self, address: Option<&str>) {
        let place = address.and_then(|id| PLACES.iter().find(|(place, _)| *place == id));
        let id = place.map(|(id, _)| *id);
        self.close_visited(id);
        page::hide_popover(CONTENTS);
        if let Some(id) = id {
            if !self.folds.is_open(id) {
                self.visit.0.set_value(Some(id));
            }
            self.show_place(id);
        }
    }

    /// A chapter is chosen in the contents. The browser goes to its address by
    /// itself, and remembers where it was; only one that is there already is
    /// shown from here.
    pub fn choose_place(self, id: &'static str) {
        page::hide_popover(CONTENTS);
        if page::fragment().as_deref() == Some(id) {
            self.visit(Some(id));
        }
    }

    /// Closes what was opened for an address that is left.
    fn close_visited(self, now: Option<&str>) {
        let visited = self.visit.0.get_value().filter(|id| Some(*id) != now);
        if let Some(id) = visited {
            self.folds.set(id, false);
            self.visit.0.set_value(None);
        }
    }

    /// Shows a place of the page, remembering the way back to the button that was
    /// pressed.
    pub fn ask_from(self, pressed: &'static str, id: &'static str) {
        self.asked_from.set(Some(PlaceOnPage::here(pressed)));
        self.show_place(id);
    }

    /// Leads to an entry, and opens what lies over it.
    pub fn go_to_entry(self, id: &str) {
        for fold in folds_over(id) {
            self.folds.set(&fold, true);
        }
        page::lead_to_entry(id.to_string());
    }
}

/// The folds that an entry lies in, by its id.
fn folds_over(entry: &str) -> Vec<String> {
    let (place, name) = entry.split_once('-').unwrap_or((entry, ""));
    match (place, Key::named(name)) {
        ("sheet", Some(key)) => over_input(key),
        ("fit", Some(key)) => over_question(key),
        ("goal", _) => vec!["goal-fold".to_string()],
        ("money", _) => vec!["arrangements".to_string(), "arrange-prices".to_string()],
        ("own", _) => vec!["arrangements".to_string()],
        // "load-3-amperes" among the questions or in the worksheet.
        ("ask" | "sheet", None) => {
            let load = name
                .strip_prefix("load-")
                .and_then(|rest| rest.split('-').next());
            let fold = load.map(|load| format!("{place}-load-{load}"));
            let section = (place == "sheet").then(|| "section-daily".to_string());
            section.into_iter().chain(fold).collect()
        }
        _ => Vec::new(),
    }
}

fn over_input(key: Key) -> Vec<String> {
    let prefix = key.section.prefix();
    let mut folds = vec![format!("section-{prefix}")];
    if key.spec().place == Place::Advanced {
        folds.push(format!("{prefix}-finer"));
    }
    folds
}

/// Over an input where "Fit it safely" asks for it.
fn over_question(key: Key) -> Vec<String> {
    let prefix = key.section.prefix();
    // Both belts are asked for in one fold.
    let mut folds = vec![format!("fit-{}", prefix.trim_end_matches('2'))];
    if key.spec().place == Place::Advanced {
        folds.push(format!("fit-{prefix}-finer"));
    }
    folds
}
