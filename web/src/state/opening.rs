//! Ways in which another boat comes to lie open: the one worked on last, one of
//! the list, a link, a file, the example.

use ampwright_core::Worksheet;
use ampwright_core::boat::demo;
use ampwright_core::exchange::{Opened, ReadError, open_link, read_file, to_json};
use ampwright_core::text::remarks::{read_error, remarks as told};
use leptos::prelude::*;

use crate::browser::page;
use crate::state::saved_boats::{Keeping, KeptTexts, title};
use crate::state::{AppState, Arrival};

/// What a copy is called after.
const COPY: &str = ", copy";

impl AppState {
    /// The boat worked on last.
    pub fn open_last(self) {
        let Ok(kept) = KeptTexts::open() else { return };
        let last = kept.last().map(|(number, _)| number);
        let Some((number, boat)) = last.and_then(|number| Some((number, kept.boat(number)?)))
        else {
            return;
        };
        match boat {
            Ok((sheet, remarks)) if remarks.is_empty() => {
                self.open(sheet, Some(number), None);
                self.saved.keeping.set(Keeping::Kept);
            }
            Ok((sheet, remarks)) => self.open(sheet, None, Some(Arrival::spoilt(remarks))),
            Err(why) => self.arrival.set(Some(Arrival {
                remarks: vec![why],
                ..Arrival::of(
                    "The boat kept last cannot be read. It is left as it is, and can be saved as a file from the list of saved boats; this is a fresh one.",
                )
            })),
        }
    }

    /// A boat of the list.
    pub fn open_saved(self, number: u32) {
        self.save_waiting();
        let kept = KeptTexts::open().ok();
        match kept.as_ref().and_then(|kept| kept.boat(number)) {
            Some(Ok((sheet, remarks))) if !remarks.is_empty() => {
                self.open(sheet, None, Some(Arrival::spoilt(remarks)));
            }
            Some(Ok((sheet, _))) => {
                if let Some(kept) = kept {
                    kept.make_last(number);
                }
                self.open(sheet, Some(number), None);
                self.saved.keeping.set(Keeping::Kept);
                page::to_top();
            }
            Some(Err(why)) => self.arrival.set(Some(Arrival {
                remarks: vec![why],
                ..Arrival::of(
                    "This boat cannot be read. It is left as it is; “File” beside it saves its text.",
                )
            })),
            None => {}
        }
    }

    /// A fresh boat.
    pub fn open_new(self) {
        self.save_waiting();
        self.open(Worksheet::default(), None, None);
    }

    /// A copy of the open one.
    pub fn open_copy(self) {
        self.save_waiting();
        let mut sheet = self.sheet.get_untracked();
        let name = title(&sheet.name);
        sheet.name = format!("{}{COPY}", name.strip_suffix(COPY).unwrap_or(name));
        self.open(sheet, None, None);
        self.save_soon();
    }

    /// The example, not kept and marked as one.
    pub fn open_example(self) {
        self.save_waiting();
        let arrival =
            Arrival::of("A demo: an invented boat. None of its figures was measured on any boat.");
        self.open(demo(), None, Some(arrival));
        page::to_top();
    }

    /// The boat in the address, if there is one: always a copy. What names a
    /// part of the page is none.
    pub fn open_fragment(self) {
        let is_boat = |fragment: &String| page::by_id(fragment).is_none();
        if let Some(fragment) = page::fragment().filter(is_boat) {
            self.open_link(open_link(&fragment));
            // The copy lives here now; a reload must not bring it again.
            page::drop_fragment();
        }
    }

    /// A link, or the text of a file.
    pub fn open_text(self, text: &str) {
        if text.trim_start().starts_with('{') {
            self.add_file(text);
        } else {
            self.open_link(read_link(text));
            page::to_top();
        }
    }

    /// What was read of a link, as a copy.
    fn open_link(self, read: Result<Opened, ReadError>) {
        // What was typed last belongs to the boat that lies open still.
        self.save_waiting();
        match read {
            Ok(opened) => {
                let own = self.of_the_same_name(&opened.sheet.name);
                let mut headline = format!(
                    "Opened from a link, as a copy. Your own boats are untouched. Understood: {}.",
                    opened.sheet.contents()
                );
                if opened.lost > 0 {
                    let lost = opened.lost;
                    headline += &format!(" Not understood, or not as it stands: {lost}.");
                }
                let arrival = Arrival {
                    headline,
                    remarks: told(&opened.remarks),
                    by_link: true,
                };
                self.open(opened.sheet, None, Some(arrival));
                if own.is_some() {
                    self.take_as_proposal(own);
                }
                self.save_soon();
            }
            Err(error) => self.arrival.set(Some(Arrival {
                remarks: vec![read_error(&error)],
                ..Arrival::of("The link could not be opened.")
            })),
        }
    }

    /// Adds the boats of a file to those kept; none is replaced.
    pub fn add_file(self, text: &str) {
        self.save_waiting();
        let arrival = match read_file(text) {
            Err(error) => not_added(read_error(&error)),
            Ok(readings) => {
                let all = readings.len();
                let texts = readings.iter().map(|one| to_json(&one.sheet).to_string());
                let kept = self.saved.add(texts);
                let added = kept.iter().flatten().count();
                let mut remarks = Vec::new();
                for (reading, kept) in readings.iter().zip(kept) {
                    remarks.extend(kept.err().map(|why| why.to_string()));
                    remarks.extend(told(&reading.remarks));
                }
                let headline = format!(
                    "Added from the file: {added} of {all} boats. None was replaced; they stand in the list of saved boats."
                );
                Arrival {
                    remarks,
                    ..Arrival::of(&headline)
                }
            }
        };
        self.arrival.set(Some(arrival));
        self.saved.refresh_list();
        page::to_top();
    }

    /// Says why a file brought nothing.
    pub fn refuse_file(self, why: String) {
        self.arrival.set(Some(not_added(why)));
        page::to_top();
    }
}

fn not_added(why: String) -> Arrival {
    Arrival {
        remarks: vec![why],
        ..Arrival::of("The file could not be read; nothing was added.")
    }
}

/// Reads a link, or its fragment.
pub fn read_link(link: &str) -> Result<Opened, ReadError> {
    open_link(link.split_once('#').map_or(link, |(_, fragment)| fragment))
}
