//! Which folds of the page lie open, remembered on this device.

use std::collections::BTreeSet;

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::*;

use crate::store::Store;

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
        if Store::open().is_err() {
            return;
        }
        let kept = LocalStorage::raw().get_item(KEPT).ok().flatten();
        let kept = kept.unwrap_or_default();
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
        if Store::open().is_err() {
            return;
        }
        let ids: Vec<String> = self.open.with_untracked(|open| {
            // A load is another one next time.
            let lasting = open.iter().filter(|id| !id.contains("-load-"));
            lasting.cloned().collect()
        });
        // A full storage forgets it; the page goes on.
        let raw = LocalStorage::raw();
        let _ = match ids.is_empty() {
            true => raw.remove_item(KEPT),
            false => raw.set_item(KEPT, &ids.join(" ")),
        };
    }
}
