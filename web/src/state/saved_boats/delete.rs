//! Deleting a boat, and bringing back what was deleted.

use ampwright_core::Worksheet;
use ampwright_core::boat::Months;
use ampwright_core::exchange::to_json;
use leptos::prelude::*;

use crate::state::AppState;
use crate::state::saved_boats::kept::read;
use crate::state::saved_boats::{Deleted, Keeping, KeptTexts, SavedBoat, title};

impl AppState {
    /// Keeps a boat no longer; it can be brought back until the page is closed.
    pub fn delete_saved(self, number: u32) {
        self.save_waiting();
        let Ok(kept) = KeptTexts::open() else { return };
        let Some(text) = kept.text(number) else {
            return;
        };
        kept.remove(number);
        let saved = self.saved;
        if saved.number.get_untracked() == Some(number) {
            // What is typed next must not bring it back by itself.
            saved.keeping.set(Keeping::Fresh);
            self.open(Worksheet::default(), None, None);
        } else if let Keeping::MemoryOnly(_) = saved.keeping.get_untracked() {
            // There may be room now.
            self.save_soon();
        }
        let title = SavedBoat::of(number, &text).title();
        let number = Some(number);
        saved.deleted.update(|deleted| {
            deleted.push(Deleted {
                number,
                title,
                text,
            });
        });
        saved.refresh_list();
    }

    /// What could not be kept and is about to be closed can be brought back.
    pub(in crate::state) fn put_away_unkept(self) {
        let is_unkept = matches!(self.saved.keeping.get_untracked(), Keeping::MemoryOnly(_));
        let sheet = self.sheet.read_untracked();
        if is_unkept && !is_fresh(&sheet) {
            let boat = Deleted {
                number: None,
                title: title(&sheet.name).to_string(),
                text: to_json(&sheet).to_string(),
            };
            self.saved.deleted.update(|deleted| deleted.push(boat));
        }
    }

    /// Brings back what was deleted last.
    pub fn undo_delete(self) {
        self.save_waiting();
        let taken = self.saved.deleted.try_update(Vec::pop).flatten();
        let Some(deleted) = taken else { return };
        let text = &deleted.text;
        let kept = KeptTexts::open().and_then(|kept| {
            let was = deleted.number.filter(|number| kept.text(*number).is_none());
            let number = was.unwrap_or_else(|| kept.next_number());
            kept.keep(number, text)?;
            self.saved.journalise(&kept, number, text);
            Ok(number)
        });
        match (kept, read(text)) {
            (Ok(number), _) => self.open_saved(number),
            // There is no room yet: it lies open, and the page says so.
            (Err(_), Ok((sheet, _))) => {
                self.open(sheet, None, None);
                self.save_soon();
            }
            (Err(_), Err(_)) => self.saved.deleted.update(|others| others.push(deleted)),
        }
        self.saved.refresh_list();
    }
}

/// Whether nothing was said of a boat yet.
pub fn is_fresh(sheet: &Worksheet) -> bool {
    let Worksheet {
        name,
        known,
        loads,
        months,
        arrangements,
        done,
        ..
    } = sheet;
    name.is_empty()
        && known.count() == 0
        && loads.is_empty()
        && *months == Months::default()
        && arrangements.is_empty()
        && done.is_empty()
}
