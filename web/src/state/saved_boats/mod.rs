//! The boats kept in this browser: which there are, how the open one is kept,
//! and what another tab did to it.

mod delete;
// Only the browser asks for all of it.
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code))]
mod journal;
mod kept;
mod save;

use ampwright_core::Worksheet;
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use crate::browser::journal::Journal;
use crate::browser::storage::StorageError;
pub use delete::is_fresh;
pub use kept::KeptTexts;
pub use kept::read;

/// All of it is signals, so that the list and the notices follow.
#[derive(Clone, Copy)]
pub struct SavedBoats {
    /// The boats that are kept, newest first.
    pub list: RwSignal<Vec<SavedBoat>>,
    /// Under which number the open boat is kept; none until it is.
    pub number: RwSignal<Option<u32>>,
    /// Whether and how boats are kept.
    pub keeping: RwSignal<Keeping>,
    /// The open boat was changed in another tab.
    pub elsewhere: RwSignal<Option<Elsewhere>>,
    /// The open boat's text as this tab last read or wrote it.
    base: StoredValue<Option<String>>,
    /// Runs until a change is kept.
    waiting: StoredValue<Option<TimeoutHandle>>,
    /// The journal, once it is open.
    journal: StoredValue<Option<Journal>, LocalStorage>,
    /// Whether the browser was asked not to clear away what is kept.
    asked_to_persist: StoredValue<bool>,
}

/// A boat that is kept.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct SavedBoat {
    /// Under which number.
    pub number: u32,
    /// What it is called; none if it cannot be read.
    pub name: Option<String>,
}

impl SavedBoat {
    fn of(number: u32, text: &str) -> SavedBoat {
        let name = read(text).ok().map(|(sheet, _)| sheet.name);
        SavedBoat { number, name }
    }

    /// What it is called in a list.
    pub fn title(&self) -> String {
        match &self.name {
            Some(name) => title(name).to_string(),
            None => format!("Boat {}, which cannot be read", self.number),
        }
    }
}

/// How boats are kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Keeping {
    /// Nothing to keep yet.
    Fresh,
    /// In this browser.
    Kept,
    /// Only until the page is closed.
    MemoryOnly(StorageError),
}

/// Another tab changed the open boat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Elsewhere {
    /// Under which number it did.
    pub number: u32,
    /// Whether what was typed here is kept as a copy meanwhile.
    pub is_copied: bool,
}

impl SavedBoats {
    /// None, as the page is printed.
    pub fn new() -> SavedBoats {
        SavedBoats {
            list: RwSignal::new(Vec::new()),
            number: RwSignal::new(None),
            keeping: RwSignal::new(Keeping::Fresh),
            elsewhere: RwSignal::new(None),
            base: StoredValue::new(None),
            waiting: StoredValue::new(None),
            journal: StoredValue::new_local(None),
            asked_to_persist: StoredValue::new(false),
        }
    }

    /// Another boat lies open.
    pub fn opened(self, number: Option<u32>) {
        let kept = KeptTexts::open().ok();
        let text = kept
            .zip(number)
            .and_then(|(kept, number)| kept.text(number));
        self.base.set_value(text);
        self.elsewhere.set(None);
        self.number.set(number);
    }

    /// Looks through the storage anew.
    pub fn refresh_list(self) {
        let Ok(kept) = KeptTexts::open() else { return };
        let boat = |number| Some(SavedBoat::of(number, &kept.text(number)?));
        let list: Vec<SavedBoat> = kept.numbers().into_iter().filter_map(boat).collect();
        if self.list.with_untracked(|before| *before != list) {
            self.list.set(list);
        }
    }

    /// Another tab wrote to the storage, under this name or to all of it.
    pub fn look(self, written: Option<&str>) {
        if !written.is_none_or(KeptTexts::is_boat) {
            return;
        }
        if let (Ok(kept), Some(number)) = (KeptTexts::open(), self.number.get_untracked())
            && self.was_changed(&kept, number)
        {
            self.elsewhere.set(Some(Elsewhere {
                number,
                is_copied: false,
            }));
        }
        self.refresh_list();
    }

    /// Whether another tab changed what this one has open.
    fn was_changed(self, kept: &KeptTexts, number: u32) -> bool {
        let now = kept.text(number);
        now.is_some() && self.base.with_value(|base| *base != now)
    }
}

/// Whose boat the figures are of: before anything is entered they are an example.
pub fn whose(sheet: &Worksheet) -> &str {
    match sheet.name.trim() {
        "" if is_fresh(sheet) => "Example boat",
        "" => "Your boat",
        name => name,
    }
}

/// A boat's name, or what stands for none.
pub fn title(name: &str) -> &str {
    if name.trim().is_empty() {
        "Unnamed boat"
    } else {
        name
    }
}
