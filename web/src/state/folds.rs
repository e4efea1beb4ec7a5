//! Which folds of the page lie open, remembered on this device.

use std::collections::BTreeSet;

use leptos::prelude::*;

use crate::browser::storage;

const KEPT: &str = "ampwright.folds";

/// The ids of the folds that lie open.
#[derive(Clone, Copy)]
pub struct Folds {
    open: RwSignal<BTreeSet<String>>,
    /// Whether closed folds hold their contents as well, so that the browser's
    /// search finds what is in them and opens them.
    pub search: RwSignal<bool>,
}

impl Folds {
    /// All closed, as the page is printed.
    pub fn new() -> Folds {
        Folds {
            open: RwSignal::new(BTreeSet::new()),
            search: RwSignal::new(false),
        }
    }

    /// Opens those that were left open. Runs in the browser only.
    pub fn restore(self) {
        let kept = storage::recall(KEPT).unwrap_or_default();
        self.open.update(|open| {
            open.extend(kept.split_whitespace().map(str::to_string));
        });
    }

    /// Whether a fold lies open.
    pub fn is_open(self, id: &str) -> bool {
        self.open.read().contains(id)
    }

    /// Opens or closes a fold, and remembers it.
    pub fn set(self, id: &str, open: bool) {
        if self.open.with_untracked(|folds| folds.contains(id)) == open {
            return;
        }
        self.open.update(|folds| {
            if open {
                folds.insert(id.to_string());
            } else {
                folds.remove(id);
            }
        });
        let ids: Vec<String> = self.open.with_untracked(|open| {
            // A load or a leg is another one next time.
            let is_row = |id: &str| id.contains("-load-") || id.contains("-leg-");
            let lasting = open.iter().filter(|id| !is_row(id));
            lasting.cloned().collect()
        });
        storage::remember(KEPT, &ids.join(" "));
    }
}
