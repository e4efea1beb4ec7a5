//! The whole worksheet, section by section, and how its entries follow it.

use std::cell::{Cell, RefCell};

use ampwright_core::Worksheet;
use ampwright_core::boat::{Key, SectionId, is_asked};
use ampwright_core::schema::Place;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use crate::desk::Desk;
use crate::field;
use crate::loads;
use crate::of::{Of, Shown};
use crate::paper::{Section, write, written};

/// Every input, in worksheet order.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut text = r#"<section class="sheet" aria-labelledby="form-title"><h2 id="form-title">The worksheet</h2><p class="lead">Every figure the answer rests on. What nobody has vouched for is marked a guess; each one you replace makes the answer yours.</p>"#.to_string();
        for section in SectionId::ALL {
            text += &part(*section);
        }
        text + "</section>"
    }),
    parts: &[],
    acts: field::ACTS,
    start: |desk| {
        heed();
        desk.at_each_change(refresh);
    },
};

fn part(section: SectionId) -> String {
    let rows = |wanted: Place| -> String {
        section
            .keys()
            .filter(|key| key.spec().place == wanted)
            .map(|key| field::row("sheet", key))
            .collect()
    };
    let (prefix, deep) = (section.prefix(), rows(Place::Advanced));
    let sum = Sum::of(&Worksheet::default(), section);
    let mut text = format!(
        "<details class='section{}' id=section-{prefix}><summary><span class=title>{}</span><span class=leader></span><span class=said id={prefix}-said>{}</span></summary><p class=about>{}</p>{}",
        hidden(!sum.matters),
        section.title(),
        sum.words(section),
        section.about(),
        rows(Place::Plain)
    );
    if section == SectionId::daily {
        text += &loads::place("sheet");
    }
    if !deep.is_empty() {
        text += &format!(
            "<details class='finer{}' id={prefix}-finer><summary>Finer points</summary>{deep}</details>",
            hidden(!sum.finer_matters)
        );
    }
    text + "</details>"
}

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
    static SUMS: RefCell<Vec<Sum>> = const { RefCell::new(Vec::new()) };
    static ROWS: RefCell<Vec<Row>> = const { RefCell::new(Vec::new()) };
    /// The desk's count of worksheets, as the entries show them.
    static TURN: Cell<Option<u32>> = const { Cell::new(None) };
}

/// Brings all entries up to date; with another worksheet also what is being
/// typed.
fn refresh(desk: Desk) {
    let turn = Some(desk.turn.get_untracked());
    let afresh = TURN.replace(turn) != turn;
    ROWS.with_borrow_mut(|rows| {
        follow(desk, rows, afresh);
    });
    let sums: Vec<Sum> = desk.sheet.with_untracked(|sheet| {
        let sum = |section: &SectionId| Sum::of(sheet, *section);
        SectionId::ALL.iter().map(sum).collect()
    });
    let shown = SUMS.take();
    for (at, section) in SectionId::ALL.iter().enumerate() {
        if shown.get(at) != sums.get(at) {
            sums.get(at).inspect(|sum| sum.show(*section));
        }
    }
    SUMS.set(sums);
    loads::refresh(desk, afresh);
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

/// What the head of a section says of its inputs.
#[derive(PartialEq)]
struct Sum {
    said: usize,
    matters: bool,
    finer_matters: bool,
}

impl Sum {
    fn of(sheet: &Worksheet, section: SectionId) -> Sum {
        let applies = |key: &Key| key.applies(&sheet.inputs);
        Sum {
            said: section.keys().filter(|key| sheet.is_said(*key)).count(),
            // The second machine's figures only where there is one.
            matters: section.keys().any(|key| applies(&key)),
            finer_matters: section
                .keys()
                .any(|key| key.spec().place == Place::Advanced && applies(&key)),
        }
    }

    fn words(&self, section: SectionId) -> String {
        let facts = section.keys().any(|key| key.spec().is_fact());
        match (self.said, facts) {
            (0, true) => "all guesses".to_string(),
            (0, false) => "as proposed".to_string(),
            (said, _) => format!(
                "{said} of {} {}",
                section.keys().count(),
                if facts { "known" } else { "chosen" }
            ),
        }
    }

    fn show(&self, section: SectionId) {
        let prefix = section.prefix();
        write(&format!("{prefix}-said"), &self.words(section));
        let matters = hidden(!self.matters);
        write(
            &format!("section-{prefix}@class"),
            &format!("section{matters}"),
        );
        let finer = hidden(!self.finer_matters);
        write(&format!("{prefix}-finer@class"), &format!("finer{finer}"));
    }
}

/// The class of what is not shown.
fn hidden(is: bool) -> &'static str {
    if is { " hidden" } else { "" }
}

/// Brings these entries up to date.
pub fn follow(desk: Desk, rows: &mut [Row], afresh: bool) {
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
pub fn renew(desk: Desk, of: Of) {
    ROWS.with_borrow_mut(|rows| {
        for row in rows.iter_mut().filter(|row| row.of == of) {
            follow(desk, std::slice::from_mut(row), true);
        }
    });
}
