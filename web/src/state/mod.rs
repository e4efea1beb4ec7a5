//! What all parts of the page share: the open boat, what follows from it, how
//! its reader wants figures, and which folds lie open.

mod arrival;
mod at_rest;
mod comparison;
mod drafts;
mod explanation;
mod folds;
mod installed;
mod opening;
mod places;
mod preferences;
mod reading;
mod rest;
mod rows;
pub mod saved_boats;
mod slices;
mod target;
mod trial;
mod uncertainty;
mod undo;

use std::ops::Deref;

use ampwright_core::units::{Other, Quantity, Reader, UnitOfMeasure};
use ampwright_core::{Report, Worksheet, report};
use leptos::prelude::*;

use crate::browser::page::PlaceOnPage;
pub use arrival::Arrival;
pub use comparison::{Comparison, Earlier};
use drafts::Drafts;
pub use drafts::{LeftOut, Refusal};
pub use explanation::{Explain, ExplainedAt, Explanations, PANEL};
pub use folds::Folds;
pub use installed::{Installed, Offline};
use places::Visit;
pub use places::{CONTENTS, PLACES};
pub use preferences::{Preferences, UnitChoice};
pub use rest::{LaterParts, Rest};
use rows::RowIds;
use saved_boats::SavedBoats;
pub use slices::Slices;
pub use target::{RowId, Target};
pub use trial::{Replacement, Trial};
pub use uncertainty::UncertaintyState;
pub use undo::{Done, Undo};

/// One for the whole page and as long as it is open, handed down by context:
/// each of the many closures that hold it holds where it is.
#[derive(Clone, Copy)]
pub struct AppState(&'static StateParts);

impl Deref for AppState {
    type Target = StateParts;

    fn deref(&self) -> &StateParts {
        self.0
    }
}

/// Every part of the state is a signal, so that a component follows only what
/// it reads.
pub struct StateParts {
    /// The worksheet being worked on.
    pub sheet: RwSignal<Worksheet>,
    /// What follows from it, within the same frame: for the answer.
    pub report: Memo<Report>,
    /// The boats kept in this browser, and how the open one is.
    pub saved: SavedBoats,
    /// Counts how often another worksheet was opened: what was half typed in
    /// the one before is gone then.
    pub opened: RwSignal<u32>,
    /// How this worksheet came here, where that needs saying.
    pub arrival: RwSignal<Option<Arrival>>,
    /// What the open boat is compared with.
    pub comparison: Comparison,
    /// The steps that can be taken back.
    pub undo: Undo,
    /// The page itself, kept for use without a network.
    pub installed: Installed,
    /// Where the run is read off, as a share of it, so that the place holds
    /// while figures change.
    pub reading: RwSignal<f64>,
    /// Units and decimal sign of this device's reader.
    pub preferences: Preferences,
    /// How figures are told: by the preferences and the boat's voltage.
    pub reader: Memo<Reader>,
    /// Which figure explains itself.
    pub explanations: Explanations,
    /// What is being typed and not settled yet.
    pub drafts: Drafts,
    /// The rows of the list of loads.
    pub loads: RowIds,
    /// The legs of the day.
    pub legs: RowIds,
    /// The rows of the user's own arrangements.
    pub arrangements: RowIds,
    /// Whether figures are entered with a thumb.
    pub is_touched: RwSignal<bool>,
    /// The id of the entry that was touched last.
    pub stepping: RwSignal<String>,
    /// Which folds lie open.
    pub folds: Folds,
    /// Which of them the address opened.
    visit: Visit,
    /// Where the words of the trade were asked for.
    pub asked_from: RwSignal<Option<PlaceOnPage>>,
    /// How certain the answer is.
    pub uncertainty: UncertaintyState,
    /// Whether the page is being printed: every fold shows what it holds.
    pub printing: RwSignal<bool>,
    /// How many of the parts below the first screen are live.
    pub live_parts: RwSignal<usize>,
    /// What makes them.
    pub rest: RwSignal<Rest>,
    /// Counts frames that show a changed worksheet: all but the answer follows
    /// these.
    settled: RwSignal<u32>,
}

impl AppState {
    /// Begins with a fresh worksheet, as the printed page has it, and hands it
    /// to every component below.
    pub fn provide() -> AppState {
        let sheet = RwSignal::new(Worksheet::default());
        let preferences = Preferences::new();
        let parts = StateParts {
            sheet,
            // A changed worksheet has another report: no need to compare them.
            report: Memo::new_with_compare(move |_| sheet.with(report), |_, _| true),
            saved: SavedBoats::new(),
            opened: RwSignal::new(0),
            arrival: RwSignal::new(None),
            comparison: Comparison::new(),
            undo: Undo::new(),
            installed: Installed::new(),
            reading: RwSignal::new(0.5),
            preferences,
            reader: Memo::new(move |_| {
                let (system_v, sign) = sheet.with(|sheet| {
                    let inputs = &sheet.inputs;
                    (
                        inputs.bank.nominal_v.blocks() * 12.0,
                        inputs.cost.currency.sign(),
                    )
                });
                preferences.reader(system_v).with_currency(sign)
            }),
            explanations: Explanations::new(),
            drafts: Drafts::new(),
            loads: RwSignal::new(Vec::new()),
            legs: RwSignal::new(Vec::new()),
            arrangements: RwSignal::new(Vec::new()),
            is_touched: RwSignal::new(false),
            stepping: RwSignal::new(String::new()),
            folds: Folds::new(),
            visit: Visit::new(),
            asked_from: RwSignal::new(None),
            uncertainty: UncertaintyState::new(),
            printing: RwSignal::new(false),
            live_parts: RwSignal::new(usize::MAX),
            rest: RwSignal::new(Rest::Coming),
            settled: RwSignal::new(0),
        };
        let state = AppState(Box::leak(Box::new(parts)));
        provide_context(state);
        state
    }

    /// The state of the page that a component belongs to.
    pub fn expect() -> AppState {
        expect_context()
    }

    /// Something of worksheet and report; follows them within the same frame.
    pub fn now<T>(self, read: impl FnOnce(&Worksheet, &Report) -> T) -> T {
        self.report.track();
        self.glance(read)
    }

    /// Something of worksheet and report; follows once the frame that shows
    /// the answer is on screen. For everything but the answer.
    pub fn settled<T>(self, read: impl FnOnce(&Worksheet, &Report) -> T) -> T {
        self.settled.track();
        self.glance(read)
    }

    /// Something of worksheet and report as they are, without following them.
    pub fn glance<T>(self, read: impl FnOnce(&Worksheet, &Report) -> T) -> T {
        self.sheet
            .with_untracked(|sheet| self.report.with_untracked(|report| read(sheet, report)))
    }

    /// A figure with its unit, as this reader wants it.
    pub fn show(self, quantity: Quantity) -> String {
        self.reader.with(|reader| reader.show(quantity))
    }

    /// A figure without its unit, as this reader wants it.
    pub fn number(self, quantity: Quantity) -> String {
        self.reader.with(|reader| reader.number(quantity))
    }

    /// The unit that entries of a unit are filled in in, where it is another
    /// one. What is filled in in ampere-hours always is.
    pub fn entry_unit(self, unit: &UnitOfMeasure) -> Option<Other> {
        self.preferences.entries().other(unit)
    }

    /// Changes the worksheet, as the user does, and keeps it soon.
    pub fn edit(self, change: impl FnOnce(&mut Worksheet)) {
        self.sheet.update(change);
        self.save_soon();
    }

    /// Puts another worksheet in place of the open boat's.
    pub fn replace(self, sheet: Worksheet) {
        self.drafts.clear();
        self.name_rows(&sheet);
        self.sheet.set(sheet);
        count(self.opened);
    }

    /// Opens another worksheet in place of this one.
    pub fn open(self, sheet: Worksheet, number: Option<u32>, arrival: Option<Arrival>) {
        self.remember_before(&sheet, arrival.as_ref());
        self.put_away_unkept();
        self.saved.opened(number);
        self.replace(sheet);
        self.arrival.set(arrival);
    }

    /// From now on all but the answer follows the frames that show it.
    pub fn settle_after_answer(self) {
        Effect::new(move |before: Option<()>| {
            self.opened.track();
            self.sheet.track();
            if before.is_some() {
                after_frame(move || count(self.settled));
            }
        });
    }
}

/// Says that something changed.
pub fn count(changes: RwSignal<u32>) {
    changes.update(|count| *count = count.wrapping_add(1));
}

/// Does something once the frame that is being made is on screen.
pub fn after_frame(act: impl FnOnce() + 'static) {
    request_animation_frame(move || set_timeout(act, std::time::Duration::ZERO));
}
