//! What the open boat is compared with: the one that lay open before it came,
//! and how it was when it came, or another one of the user's choice.

use std::sync::Arc;

use ampwright_core::exchange::{Difference, differences, outcomes};
use ampwright_core::text::remarks::read_error;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet, report};
use leptos::prelude::*;

use crate::state::opening::read_link;
use crate::state::saved_boats::{KeptTexts, is_fresh, title};
use crate::state::{AppState, Arrival};

/// A boat that lay open before, and under which number it is kept.
#[derive(Debug, PartialEq)]
pub struct Before {
    /// The boat.
    pub sheet: Arc<Worksheet>,
    /// Its number; none if it is not kept.
    pub number: Option<u32>,
}

/// What there is to compare with.
#[derive(Clone, Copy)]
pub struct Comparison {
    /// What lay open before the open boat was laid over it.
    pub before: RwSignal<Option<Arc<Before>>>,
    /// The open boat as it came, if it came from elsewhere.
    came: RwSignal<Option<Arc<Worksheet>>>,
    /// The same as it was sent, before anything was marked as proposed.
    sent: RwSignal<Option<Arc<Worksheet>>>,
    /// The boat kept here that the open one is a proposal for.
    pub proposal_for: RwSignal<Option<u32>>,
    /// What the user chose instead is called so.
    chosen_name: RwSignal<String>,
    /// What the user chose instead, or why it cannot be had.
    chosen: RwSignal<Option<Result<Arc<Worksheet>, String>>>,
}

impl Comparison {
    /// Nothing.
    pub fn new() -> Comparison {
        Comparison {
            before: RwSignal::new(None),
            came: RwSignal::new(None),
            sent: RwSignal::new(None),
            proposal_for: RwSignal::new(None),
            chosen_name: RwSignal::new(String::new()),
            chosen: RwSignal::new(None),
        }
    }

    /// Compares with another boat kept here from now on; with none of them, with
    /// the open one as it came.
    pub fn choose_saved(self, number: Option<u32>) {
        self.chosen.set(number.map(|number| {
            let boat = KeptTexts::open().ok().and_then(|kept| kept.boat(number));
            let boat = boat.unwrap_or_else(|| Err("It is no longer kept.".to_string()));
            boat.map(|(sheet, _)| {
                self.chosen_name.set(title(&sheet.name).to_string());
                Arc::new(sheet)
            })
        }));
    }

    /// Compares with another link from now on; with an empty one, with the open
    /// boat as it came.
    pub fn choose_link(self, link: &str) {
        let link = Some(link.trim()).filter(|link| !link.is_empty());
        self.chosen_name.set("The boat of the link".to_string());
        self.chosen.set(link.map(|link| match read_link(link) {
            Ok(opened) => Ok(Arc::new(opened.sheet)),
            Err(error) => Err(read_error(&error)),
        }));
    }

    /// What the boat to compare with is called.
    pub fn against(self) -> String {
        match self.chosen.read().is_some() {
            true => self.chosen_name.get(),
            false => "As it came".to_string(),
        }
    }

    /// What the open boat is compared with, or why there is nothing.
    pub fn since(self) -> Result<Arc<Worksheet>, String> {
        let came = || {
            self.came
                .get()
                .ok_or("Paste the link it began with.".to_string())
        };
        self.chosen.get().unwrap_or_else(came)
    }
}

/// A boat that is kept here and can be read.
fn kept_boat(number: u32) -> Option<Before> {
    let boat = KeptTexts::open().ok()?.boat(number)?;
    let (sheet, _) = boat.ok()?;
    Some(Before {
        sheet: Arc::new(sheet),
        number: Some(number),
    })
}

/// A boat to compare with, and what follows from it.
pub struct Earlier {
    sheet: Arc<Worksheet>,
    report: Report,
}

impl Earlier {
    /// Works out what follows from a boat.
    pub fn new(sheet: Arc<Worksheet>) -> Earlier {
        let report = report(&sheet);
        Earlier { sheet, report }
    }

    /// What differs since: results first, then what makes them differ.
    pub fn differences(
        &self,
        sheet: &Worksheet,
        report: &Report,
        reader: &Reader,
    ) -> Vec<Difference> {
        let mut found = outcomes(&self.report, report, reader);
        found.extend(differences(&self.sheet, sheet, reader));
        found
    }
}

impl AppState {
    /// Another boat is about to be laid over the open one.
    pub(in crate::state) fn remember_before(self, coming: &Worksheet, arrival: Option<&Arrival>) {
        let comparison = self.comparison;
        comparison.chosen.set(None);
        comparison.proposal_for.set(None);
        if arrival.is_none() {
            comparison.came.set(None);
            comparison.sent.set(None);
            comparison.before.set(None);
            return;
        }
        let coming = Arc::new(coming.clone());
        comparison.came.set(Some(coming.clone()));
        comparison.sent.set(Some(coming));
        let number = self.saved.number.get_untracked();
        let sheet = self.sheet.get_untracked();
        // What came over nothing has nothing to go back to.
        let is_worth_it = number.is_some() || !is_fresh(&sheet);
        comparison.before.set(is_worth_it.then(|| {
            let sheet = Arc::new(sheet);
            Arc::new(Before { sheet, number })
        }));
    }

    /// The boat of one's own that has this name: the open one, or one that is
    /// kept. Unnamed boats are all alike.
    pub(in crate::state) fn of_the_same_name(self, name: &str) -> Option<Before> {
        if name.trim().is_empty() {
            return None;
        }
        let mine = self.sheet.read_untracked();
        if mine.name == name {
            return Some(Before {
                sheet: Arc::new(mine.clone()),
                number: self.saved.number.get_untracked(),
            });
        }
        let list = self.saved.list.read_untracked();
        let same = list
            .iter()
            .find(|boat| boat.name.as_deref() == Some(name))?;
        kept_boat(same.number)
    }

    /// The open boat came as a proposal for one that is kept here, or for none
    /// of them.
    pub fn choose_own(self, number: Option<u32>) {
        self.take_as_proposal(number.and_then(kept_boat));
        self.save_soon();
    }

    /// Compares with one's own boat, and marks what differs from it as proposed.
    pub(in crate::state) fn take_as_proposal(self, own: Option<Before>) {
        let comparison = self.comparison;
        let Some(sent) = comparison.sent.get_untracked() else {
            return;
        };
        let sheet = own.as_ref().map(|own| own.sheet.clone());
        comparison
            .proposal_for
            .set(own.as_ref().and_then(|own| own.number));
        if let Some(own) = own {
            comparison.before.set(Some(Arc::new(own)));
        }
        let mut came = Worksheet::clone(&sent);
        came.mark_proposed(&sent, sheet.as_deref());
        comparison.came.set(Some(Arc::new(came)));
        self.sheet
            .update(|open| open.mark_proposed(&sent, sheet.as_deref()));
    }

    /// Goes back to the boat that lay open before.
    pub fn return_to_before(self) {
        let Some(before) = self.comparison.before.get_untracked() else {
            return;
        };
        self.save_waiting();
        self.open(Worksheet::clone(&before.sheet), before.number, None);
        self.save_soon();
    }

    /// The open boat stays, and nobody goes back.
    pub fn dismiss_arrival(self) {
        self.comparison.before.set(None);
        self.arrival.set(None);
    }
}
