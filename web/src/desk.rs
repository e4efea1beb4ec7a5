//! The worksheet that lies open, its report, and what is to be said about it.

use std::cell::Cell;
use std::time::Duration;

use ampwright_core::fields::Complaint;
use ampwright_core::worksheet::{Opened, open_link};
use ampwright_core::{Report, Worksheet, report};
use leptos::prelude::*;

use crate::paper::by_id;
use crate::store::{self, Store};

/// Everything the parts of the page share.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The worksheet being worked on.
    pub sheet: RwSignal<Worksheet>,
    /// What follows from it.
    pub report: Memo<Report>,
    /// Under which number it is kept in the browser; none until it is.
    pub number: RwSignal<Option<u32>>,
    /// Counts how often another worksheet was laid on the desk: the form is
    /// then drawn afresh, without half-typed texts of the old one.
    pub turn: RwSignal<u32>,
    /// How this worksheet came here, where that needs saying.
    pub arrival: RwSignal<Option<Arrival>>,
    /// Whether and how worksheets are kept.
    pub keeping: RwSignal<Keeping>,
    /// Counts changes on the shelf.
    pub shelved: RwSignal<u32>,
    /// Counts what else changes beside the worksheet: a fold is opened, a log
    /// is fitted, the year is reckoned.
    pub aside: RwSignal<u32>,
    /// Counts what is reckoned of how sure the answer is.
    pub surety: RwSignal<u32>,
    /// Where the run is read off, as a share of it, so that the place holds
    /// while figures change.
    pub reading: RwSignal<f64>,
    /// Counts frames that show a changed worksheet: what is less pressing
    /// follows these.
    later: RwSignal<u32>,
}

/// How a worksheet came to lie on the desk.
#[derive(Clone, PartialEq, Eq)]
pub struct Arrival {
    /// One sentence.
    pub headline: String,
    /// What was not understood.
    pub remarks: Vec<String>,
}

impl Arrival {
    /// Of a kept worksheet that is understood in part: what is changed goes
    /// into a copy.
    pub fn spoilt(remarks: Vec<String>) -> Arrival {
        Arrival {
            headline: "Some of what was kept is not understood. It is left as it is, and can be saved as a file from the list of worksheets; this is a copy of the rest.".into(),
            remarks,
        }
    }
}

/// How worksheets are kept.
#[derive(Clone, PartialEq, Eq)]
pub enum Keeping {
    /// Nothing to keep yet.
    Fresh,
    /// In this browser.
    Kept,
    /// Only until the page is closed; why, in a sentence.
    MemoryOnly(String),
}

impl Desk {
    /// Lays out what a link brought, the last worksheet, or a fresh one.
    pub fn open() -> Desk {
        let sheet = RwSignal::new(Worksheet::default());
        let desk = Desk {
            sheet,
            // A changed worksheet has another report: no need to compare them.
            report: Memo::new_with_compare(move |_| sheet.with(report), |_, _| true),
            number: RwSignal::new(None),
            turn: RwSignal::new(0),
            arrival: RwSignal::new(None),
            keeping: RwSignal::new(match Store::open() {
                Ok(_) => Keeping::Fresh,
                Err(why) => Keeping::MemoryOnly(why),
            }),
            shelved: RwSignal::new(0),
            aside: RwSignal::new(0),
            surety: RwSignal::new(0),
            reading: RwSignal::new(0.5),
            later: RwSignal::new(0),
        };
        desk.take_last();
        desk.take_fragment();
        desk.at_each_change(|desk| {
            CHANGES.set(CHANGES.get().wrapping_add(1));
            request_animation_frame(move || {
                after(Duration::ZERO, Box::new(move || count(desk.later)));
            });
        });
        desk
    }

    /// Does something now and whenever the worksheet has changed.
    pub fn at_each_change(self, act: fn(Desk)) {
        Effect::new(move |_| {
            self.turn.track();
            self.sheet.track();
            untrack(|| act(self));
        });
    }

    /// Does something long for a fold that lies open, once the worksheet has
    /// rested so long; not if it changes meanwhile.
    pub fn at_rest(self, fold: &str, rest: Duration, act: fn(Desk)) {
        if !is_open(fold) {
            return;
        }
        let changes = CHANGES.get();
        after(
            rest,
            Box::new(move || {
                if CHANGES.get() == changes {
                    act(self);
                    count(self.aside);
                }
            }),
        );
    }

    /// A text that follows worksheet and report.
    pub fn tell(self, text: fn(&Worksheet, &Report) -> String) -> String {
        self.report.track();
        self.told(text)
    }

    /// The same, once the frame that shows the answer is on screen.
    pub fn tell_later(self, text: fn(&Worksheet, &Report) -> String) -> String {
        self.later.track();
        self.told(text)
    }

    /// The same, while a fold of the page lies open; nothing while it is closed.
    pub fn tell_open(self, fold: &str, text: fn(&Worksheet, &Report) -> String) -> String {
        self.aside.track();
        if is_open(fold) {
            self.tell_later(text)
        } else {
            String::new()
        }
    }

    /// Follows the frames that show a changed worksheet.
    pub fn track_later(self) {
        self.later.track();
    }

    fn told(self, text: fn(&Worksheet, &Report) -> String) -> String {
        self.look(&text)
    }

    /// A text about worksheet and report as they are, without following them.
    pub fn look(self, text: &dyn Fn(&Worksheet, &Report) -> String) -> String {
        self.sheet
            .with_untracked(|sheet| self.report.with_untracked(|report| text(sheet, report)))
    }

    /// Changes the worksheet, as the user does.
    pub fn edit(self, change: impl FnOnce(&mut Worksheet)) {
        let mut change = Some(change);
        self.alter(&mut |sheet| {
            if let Some(change) = change.take() {
                change(sheet);
            }
        });
    }

    fn alter(self, change: &mut dyn FnMut(&mut Worksheet)) {
        self.sheet.update(change);
        store::save_soon(self);
    }

    /// Lays another worksheet on the desk.
    pub fn lay(self, sheet: Worksheet, number: Option<u32>, arrival: Option<Arrival>) {
        crate::arrive::remember(self, &sheet, arrival.as_ref());
        crate::shelf::put_away(self);
        store::laid(number);
        self.number.set(number);
        self.sheet.set(sheet);
        self.arrival.set(arrival);
        count(self.turn);
    }

    /// The worksheet last worked on.
    fn take_last(self) {
        let Ok(store) = Store::open() else { return };
        let Some((number, text)) = store.last() else {
            return;
        };
        match store::read(&text) {
            Ok((sheet, remarks)) if remarks.is_empty() => {
                self.lay(sheet, Some(number), None);
                self.keeping.set(Keeping::Kept);
            }
            Ok((sheet, remarks)) => self.lay(sheet, None, Some(Arrival::spoilt(remarks))),
            Err(why) => self.arrival.set(Some(Arrival {
                headline: "The worksheet kept last cannot be read. It is left as it is, and can be saved as a file from the list of worksheets; this is a fresh one.".into(),
                remarks: vec![why],
            })),
        }
    }

    /// The worksheet in the address, if there is one: always a copy.
    pub fn take_fragment(self) {
        let Ok(fragment) = window().location().hash() else {
            return;
        };
        if fragment.trim_start_matches('#').is_empty() {
            return;
        }
        self.take_link(&fragment);
        // The copy lives here now; a reload must not bring it again.
        let bare = window().location().pathname().unwrap_or_default();
        if let Ok(history) = window().history() {
            let _ = history.replace_state_with_url(&wasm_bindgen::JsValue::NULL, "", Some(&bare));
        }
    }

    /// Opens a link, or its fragment, as a copy.
    pub fn take_link(self, link: &str) {
        // What was typed last belongs to the worksheet that lies open still.
        store::save_waiting(self);
        match read_link(link) {
            Ok(Opened {
                sheet,
                remarks,
                lost,
                ..
            }) => {
                let mut headline = [
                    "Opened from a link, as a copy. Your own worksheets are untouched. Understood: ",
                    &sheet.contents(),
                    ".",
                ]
                .concat();
                if lost > 0 {
                    headline += " Not understood, or not as it stands: ";
                    headline += &lost.to_string();
                    headline += ".";
                }
                let arrival = Arrival { headline, remarks };
                self.lay(sheet, None, Some(arrival));
                store::save_soon(self);
            }
            Err(complaint) => self.arrival.set(Some(Arrival {
                headline: "The link could not be opened.".into(),
                remarks: vec![complaint.0],
            })),
        }
    }
}

thread_local! {
    /// Counts changes of the worksheet.
    static CHANGES: Cell<u32> = const { Cell::new(0) };
}

/// Reads a link, or its fragment.
pub fn read_link(link: &str) -> Result<Opened, Complaint> {
    open_link(link.split_once('#').map_or(link, |(_, fragment)| fragment))
}

fn is_open(fold: &str) -> bool {
    by_id(fold).is_some_and(|fold| fold.has_attribute("open"))
}

/// Says that something changed.
pub fn count(changes: RwSignal<u32>) {
    changes.update(|count| *count = count.wrapping_add(1));
}

/// Does something later.
pub fn after(rest: Duration, act: Box<dyn FnOnce()>) {
    set_timeout(act, rest);
}
