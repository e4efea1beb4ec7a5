//! How a worksheet comes to lie on the desk: the one kept last, or one in a link.

use ampwright_core::exchange::{Opened, ReadError, open_link};
use ampwright_core::text::remarks::{read_error, remarks as told};
use leptos::prelude::*;

use crate::state::{AppState, Keeping};
use crate::store::{self, Store};

/// How a worksheet came to lie on the desk.
#[derive(Clone, PartialEq, Eq)]
pub struct Arrival {
    /// One sentence.
    pub headline: String,
    /// What was not understood, in sentences.
    pub remarks: Vec<String>,
}

impl Arrival {
    /// Of a kept worksheet that is understood in part: what is changed goes
    /// into a copy.
    pub fn spoilt(remarks: Vec<String>) -> Arrival {
        Arrival {
            headline: "Some of what was kept is not understood. It is left as it is, and can be saved as a file from the list of worksheets; this is a copy of the rest.".into(),
            remarks,
        }
    }
}

impl AppState {
    /// The worksheet last worked on.
    pub fn take_last(self) {
        let Ok(store) = Store::open() else { return };
        let Some((number, text)) = store.last() else {
            return;
        };
        match store::read(&text) {
            Ok((sheet, remarks)) if remarks.is_empty() => {
                self.open(sheet, Some(number), None);
                self.keeping.set(Keeping::Kept);
            }
            Ok((sheet, remarks)) => self.open(sheet, None, Some(Arrival::spoilt(remarks))),
            Err(why) => self.arrival.set(Some(Arrival {
                headline: "The worksheet kept last cannot be read. It is left as it is, and can be saved as a file from the list of worksheets; this is a fresh one.".into(),
                remarks: vec![why],
            })),
        }
    }

    /// The worksheet in the address, if there is one: always a copy.
    pub fn take_fragment(self) {
        let Ok(fragment) = window().location().hash() else {
            return;
        };
        if fragment.trim_start_matches('#').is_empty() {
            return;
        }
        self.take_link(&fragment);
        // The copy lives here now; a reload must not bring it again.
        let bare = window().location().pathname().unwrap_or_default();
        if let Ok(history) = window().history() {
            let _ = history.replace_state_with_url(&wasm_bindgen::JsValue::NULL, "", Some(&bare));
        }
    }

    /// Opens a link, or its fragment, as a copy.
    pub fn take_link(self, link: &str) {
        // What was typed last belongs to the worksheet that lies open still.
        store::save_waiting(self);
        match read_link(link) {
            Ok(Opened {
                sheet,
                remarks,
                lost,
                ..
            }) => {
                let mut headline = [
                    "Opened from a link, as a copy. Your own worksheets are untouched. Understood: ",
                    &sheet.contents(),
                    ".",
                ]
                .concat();
                if lost > 0 {
                    headline += " Not understood, or not as it stands: ";
                    headline += &lost.to_string();
                    headline += ".";
                }
                let arrival = Arrival {
                    headline,
                    remarks: told(&remarks),
                };
                self.open(sheet, None, Some(arrival));
                store::save_soon(self);
            }
            Err(error) => self.arrival.set(Some(Arrival {
                headline: "The link could not be opened.".into(),
                remarks: vec![read_error(&error)],
            })),
        }
    }
}

/// Reads a link, or its fragment.
pub fn read_link(link: &str) -> Result<Opened, ReadError> {
    open_link(link.split_once('#').map_or(link, |(_, fragment)| fragment))
}
