//! Deleting a boat.

use ampwright_core::Worksheet;
use ampwright_core::boat::Months;
use ampwright_core::exchange::to_json;
use leptos::prelude::*;

use crate::state::saved_boats::{Keeping, KeptTexts, SavedBoat, title};
use crate::state::{AppState, Done};

impl AppState {
    /// Keeps a boat no longer; that can be taken back. Was it the open one, the
    /// next of those that are kept opens.
    pub fn delete_saved(self, number: u32) {
        self.save_waiting();
        let Ok(kept) = KeptTexts::open() else { return };
        let Some(text) = kept.text(number) else {
            return;
        };
        kept.remove(number);
        let saved = self.saved;
        let was_open = saved.number.get_untracked() == Some(number);
        if was_open {
            // What is typed next must not bring it back by itself.
            saved.keeping.set(Keeping::Fresh);
            self.open(Worksheet::default(), None, None);
        } else if let Keeping::MemoryOnly(_) = saved.keeping.get_untracked() {
            // There may be room now.
            self.save_soon();
        }
        let title = SavedBoat::of(number, &text).title();
        self.can_bring_back(
            format!("“{title}” deleted"),
            Done::Deleted,
            Some(number),
            text,
        );
        saved.refresh_list();
        if was_open && let Some(next) = kept.numbers().first() {
            self.open_saved(*next);
        }
    }

    /// What could not be kept and is about to be closed can be brought back.
    pub(in crate::state) fn put_away_unkept(self) {
        let is_unkept = matches!(self.saved.keeping.get_untracked(), Keeping::MemoryOnly(_));
        let sheet = self.sheet.read_untracked();
        if is_unkept && !is_fresh(&sheet) {
            let says = format!("“{}” closed without being kept", title(&sheet.name));
            let text = to_json(&sheet).to_string();
            self.can_bring_back(says, Done::Unkept, None, text);
        }
    }
}

/// Whether nothing was said of a boat yet.
pub fn is_fresh(sheet: &Worksheet) -> bool {
    let Worksheet {
        name,
        known,
        loads,
        legs,
        months,
        arrangements,
        done,
        ..
    } = sheet;
    name.is_empty()
        && known.count() == 0
        && loads.is_empty()
        && legs.is_empty()
        && *months == Months::default()
        && arrangements.is_empty()
        && done.is_empty()
}
