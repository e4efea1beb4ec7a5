//! The worksheet that lies open, its report, and what is to be said about it.

use std::cell::Cell;
use std::time::Duration;

use ampwright_core::{Report, Worksheet, report};
use leptos::prelude::*;

use crate::arrive;
use crate::come::Arrival;
use crate::draft;
use crate::paper::by_id;
use crate::shelf;
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
    /// Counts changes of what entries hold that is not in force.
    pub refused: RwSignal<u32>,
    /// Counts what is reckoned of how sure the answer is.
    pub surety: RwSignal<u32>,
    /// Where the run is read off, as a share of it, so that the place holds
    /// while figures change.
    pub reading: RwSignal<f64>,
    /// Counts frames that show a changed worksheet: what is less pressing
    /// follows these.
    later: RwSignal<u32>,
}

/// How worksheets are kept.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Keeping {
    /// Nothing to keep yet.
    Fresh,
    /// In this browser.
    Kept,
    /// Only until the page is closed; why, in a sentence.
    MemoryOnly(&'static str),
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
            refused: RwSignal::new(0),
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
        arrive::remember(self, &sheet, arrival.as_ref());
        shelf::put_away(self);
        store::laid(number);
        draft::clear(self);
        self.number.set(number);
        self.sheet.set(sheet);
        self.arrival.set(arrival);
        count(self.turn);
    }
}

thread_local! {
    /// Counts changes of the worksheet.
    static CHANGES: Cell<u32> = const { Cell::new(0) };
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
