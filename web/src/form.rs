//! The whole worksheet, section by section, and how its entries follow it.

use std::cell::{Cell, RefCell};

use ampwright_core::Worksheet;
use ampwright_core::boat::is_asked;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use crate::field;
use crate::legacy::{Section, written};
use crate::of::{Of, Shown};
use crate::state::AppState;

/// What the entries of sections of text do, and how they follow the worksheet.
pub const SECTION: Section = Section {
    paper: written(String::new),
    parts: &[],
    acts: field::ACTS,
    start: |desk| {
        heed();
        desk.at_each_change(refresh);
    },
};

/// An entry on the page, and what it shows.
pub struct Row {
    pub id: String,
    pub of: Of,
    pub shown: Option<Shown>,
    /// Whether it stands among the short questions.
    asked: bool,
}

impl Row {
    /// One that shows nothing yet.
    pub fn new(id: String, of: Of) -> Row {
        let asked = id.starts_with("ask-");
        Row {
            id,
            of,
            shown: None,
            asked,
        }
    }

    /// What it has to show.
    fn now(&self, sheet: &Worksheet) -> Shown {
        let mut now = Shown::of(sheet, self.of);
        if let (true, Of::Input(key)) = (self.asked, self.of) {
            now.applies = is_asked(sheet, key);
        }
        now
    }
}

thread_local! {
    static ROWS: RefCell<Vec<Row>> = const { RefCell::new(Vec::new()) };
    /// The desk's count of worksheets, as the entries show them.
    static TURN: Cell<Option<u32>> = const { Cell::new(None) };
}

/// Brings all entries up to date; with another worksheet also what is being
/// typed.
fn refresh(desk: AppState) {
    let turn = Some(desk.opened.get_untracked());
    let afresh = TURN.replace(turn) != turn;
    ROWS.with_borrow_mut(|rows| {
        follow(desk, rows, afresh);
    });
}

/// From now on the entries on the page follow the worksheet.
fn heed() {
    let entries = document().query_selector_all("[data-input=entry], [data-change=entry]");
    let Ok(entries) = entries else { return };
    let mut rows = Vec::new();
    for at in 0..entries.length() {
        let Some(entry) = entries.get(at).and_then(|node| node.dyn_into().ok()) else {
            continue;
        };
        if let Some(of) = field::of(&entry) {
            rows.push(Row::new(entry.id(), of));
        }
    }
    ROWS.set(rows);
}

/// Brings these entries up to date.
pub fn follow(desk: AppState, rows: &mut [Row], afresh: bool) {
    desk.sheet.with_untracked(|sheet| {
        for row in rows {
            let now = row.now(sheet);
            if afresh || row.shown != Some(now) {
                field::show(&row.id, row.of, &now, afresh);
                row.shown = Some(now);
            }
        }
    });
}

/// Writes an input's entries afresh.
pub fn renew(desk: AppState, of: Of) {
    ROWS.with_borrow_mut(|rows| {
        for row in rows.iter_mut().filter(|row| row.of == of) {
            follow(desk, std::slice::from_mut(row), true);
        }
    });
}
