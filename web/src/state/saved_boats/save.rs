//! Keeping the open boat soon after every change.

use std::time::Duration;

use ampwright_core::exchange::{Collected, collect_texts, to_json};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use crate::browser::storage::{self, StorageError};
use crate::state::AppState;
use crate::state::saved_boats::{Elsewhere, Keeping, KeptTexts, SavedBoat, SavedBoats};

/// How long after a change it is kept, whether typing rests or not.
const REST: Duration = Duration::from_millis(400);

impl AppState {
    /// Keeps the open boat soon; what is typed meanwhile is kept with it.
    pub fn save_soon(self) {
        let waiting = self.saved.waiting;
        if waiting.with_value(Option::is_none) {
            waiting.set_value(set_timeout_with_handle(move || self.save_now(), REST).ok());
        }
    }

    /// Keeps it at once if a change is waiting, as when the page is left.
    pub fn save_waiting(self) {
        if let Some(waiting) = self.saved.stop_waiting() {
            waiting.clear();
            self.save_now();
        }
    }

    /// Keeps it at once.
    pub fn save_now(self) {
        let saved = self.saved;
        if let Some(waiting) = saved.stop_waiting() {
            waiting.clear();
        }
        let (text, name) = self
            .sheet
            .with_untracked(|sheet| (to_json(sheet).to_string(), Some(sheet.name.clone())));
        match saved.keep_open(&text) {
            Ok(number) => saved.now_kept(SavedBoat { number, name }, text),
            Err(why) => saved.keeping.set(Keeping::MemoryOnly(why)),
        }
    }

    /// The open boat goes on under a number of its own, beside what another tab
    /// made of it.
    pub fn keep_mine(self) {
        self.save_now();
        self.saved.elsewhere.set(None);
    }

    /// Every boat as one file: all that are kept, each as it was written, and
    /// what lies open, or lay open before, and could not be kept.
    pub fn all_as_file(self) -> Collected {
        self.save_waiting();
        let mut texts = Vec::new();
        if let Keeping::MemoryOnly(_) = self.saved.keeping.get_untracked() {
            texts.push(self.sheet.with_untracked(to_json).to_string());
        }
        texts.extend(self.undo.unkept());
        if let Ok(kept) = KeptTexts::open() {
            let numbers = kept.numbers().into_iter();
            texts.extend(numbers.filter_map(|number| kept.text(number)));
        }
        collect_texts(texts.iter().map(String::as_str))
    }
}

impl SavedBoats {
    fn stop_waiting(self) -> Option<TimeoutHandle> {
        self.waiting.try_update_value(Option::take).flatten()
    }

    /// Keeps the open boat's text, and under which number.
    fn keep_open(self, text: &str) -> Result<u32, StorageError> {
        let kept = KeptTexts::open()?;
        let number = match self.number.get_untracked() {
            // Another tab wrote there: this goes on as a copy of its own.
            Some(number) if self.was_changed(&kept, number) => {
                let is_copied = true;
                self.elsewhere.set(Some(Elsewhere { number, is_copied }));
                kept.next_number()
            }
            Some(number) => number,
            None => kept.next_number(),
        };
        kept.keep(number, text)?;
        kept.make_last(number);
        self.journalise(&kept, number, text);
        Ok(number)
    }

    /// Keeps boats beside the others, and says of each whether there was room.
    pub fn add(self, texts: impl Iterator<Item = String>) -> Vec<Result<(), StorageError>> {
        let kept = match KeptTexts::open() {
            Ok(kept) => kept,
            Err(why) => return texts.map(|_| Err(why)).collect(),
        };
        let numbered = kept.free_numbers().zip(texts);
        let add = |(number, text): (u32, String)| {
            kept.keep(number, &text)?;
            self.journalise(&kept, number, &text);
            Ok(())
        };
        numbered.map(add).collect()
    }

    /// The open boat is kept as it stands.
    fn now_kept(self, boat: SavedBoat, text: String) {
        self.base.set_value(Some(text));
        if self.number.get_untracked() != Some(boat.number) {
            self.number.set(Some(boat.number));
        }
        if self.keeping.get_untracked() != Keeping::Kept {
            self.keeping.set(Keeping::Kept);
        }
        let at = self
            .list
            .with_untracked(|list| list.iter().position(|one| one.number == boat.number));
        match at {
            None => self.refresh_list(),
            Some(at) if self.list.with_untracked(|list| list[at] != boat) => {
                self.list.update(|list| list[at] = boat);
            }
            Some(_) => {}
        }
        if !self.asked_to_persist.get_value() {
            self.asked_to_persist.set_value(true);
            storage::ask_to_persist();
        }
    }
}
