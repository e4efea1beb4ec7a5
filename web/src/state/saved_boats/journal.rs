//! What the journal does for the boats: it has every text at once, and gives
//! back what a killed browser did not write to disk.

use leptos::prelude::*;

use crate::browser::journal::{Entry, Journal};
use crate::browser::storage::StorageError;
use crate::state::saved_boats::{KeptTexts, SavedBoats};

impl SavedBoats {
    /// Takes up what the journal has and the storage lacks. `is_late` tells
    /// whether the page was opened without waiting for it.
    pub async fn recover(self, is_late: impl Fn() -> bool) {
        // Without a journal, or one that can be read, the storage stands alone.
        let Ok(journal) = Journal::open().await else {
            return;
        };
        self.journal.set_value(Some(journal.clone()));
        let (Ok(entries), Ok(kept)) = (journal.entries().await, KeptTexts::open()) else {
            return;
        };
        for gone in give_back(&kept, entries, is_late()) {
            // It goes with the next visit otherwise.
            let _ = journal.remove(gone);
        }
        self.refresh_list();
    }

    /// Writes a kept text to the journal.
    pub(in crate::state) fn journalise(self, kept: &KeptTexts, number: u32, text: &str) {
        let count = kept.count() + 1.0;
        kept.set_count(count);
        self.journal.with_value(|journal| {
            if let Some(journal) = journal {
                // Where the browser has no room for it, the storage stands alone.
                let _ = journal.write(&Entry {
                    number,
                    count,
                    text: text.to_string(),
                });
            }
        });
    }
}

/// Puts back into the storage what counts higher than anything it holds; the
/// numbers of boats that were deleted since.
fn give_back(kept: &KeptTexts, entries: Vec<Entry>, is_late: bool) -> Vec<u32> {
    let known = kept.count();
    let mut deleted = Vec::new();
    let mut newest: Option<(f64, u32)> = None;
    let mut all_kept = true;
    for entry in entries {
        let there = kept.text(entry.number);
        if entry.count <= known {
            if there.is_none_or(|text| text.is_empty()) {
                deleted.push(entry.number);
            }
            continue;
        }
        match put_back(kept, &entry, there, is_late) {
            Ok(number) if newest.is_none_or(|(count, _)| count < entry.count) => {
                newest = Some((entry.count, number));
            }
            Ok(_) => {}
            Err(_) => all_kept = false,
        }
    }
    if let Some((count, number)) = newest {
        kept.make_last(number);
        // What found no room is tried again next time.
        if all_kept {
            kept.set_count(count.max(kept.count()));
        }
    }
    deleted
}

/// Keeps a text of the journal, and under which number. Where the boat may have
/// been opened and changed already, it becomes one of its own.
fn put_back(
    kept: &KeptTexts,
    entry: &Entry,
    there: Option<String>,
    is_late: bool,
) -> Result<u32, StorageError> {
    let differs = there.is_some_and(|text| text != entry.text);
    let number = match is_late && differs {
        true => kept.next_number(),
        false => entry.number,
    };
    kept.keep(number, &entry.text).map(|()| number)
}
