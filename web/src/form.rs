//! The whole worksheet, section by section, and how its entries follow it.

use std::cell::{Cell, RefCell};

use ampwright_core::fields::Place;
use ampwright_core::worksheet::{Key, QUESTIONS, SectionId};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::field::{self, Of, Shown};
use crate::fit;
use crate::loads;
use crate::paper::{Section, by_id};

/// Every input, in worksheet order.
pub const SECTION: Section = Section {
    paper: || {
        let mut text = r#"<section class="sheet" aria-labelledby="form-title"><h2 id="form-title">The worksheet</h2><p class="lead">Every figure the answer rests on. What nobody has vouched for is marked a guess; each one you replace makes the answer yours.</p>"#.to_string();
        for section in SectionId::ALL {
            text += &part(*section);
        }
        text + "</section>"
    },
    parts: &[],
    acts: field::ACTS,
    start: |desk| desk.at_each_change(refresh),
};

fn part(section: SectionId) -> String {
    let rows = |wanted: Place| -> String {
        section
            .keys()
            .filter(|key| key.spec().place == wanted)
            .map(|key| field::row("sheet", key))
            .collect()
    };
    let (prefix, deep) = (section.prefix(), rows(Place::Deep));
    let mut text = format!(
        "<details class=section id=section-{prefix}><summary><span class=title>{}</span><span class=leader></span><span class=said></span></summary><p class=about>{}</p>{}",
        section.title(),
        section.about(),
        rows(Place::Plain)
    );
    if section == SectionId::daily {
        text += "<div id=sheet-loads></div>";
    }
    if !deep.is_empty() {
        text += &format!("<details class=finer><summary>Finer points</summary>{deep}</details>");
    }
    text + "</details>"
}

/// An entry on the page, and what it shows.
pub struct Row {
    pub id: String,
    pub of: Of,
    pub shown: Option<Shown>,
}

impl Row {
    /// One that shows nothing yet.
    pub fn new(id: String, of: Of) -> Row {
        let shown = None;
        Row { id, of, shown }
    }
}

thread_local! {
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
        if rows.is_empty() {
            let row =
                |place: &str, key: Key| Row::new(format!("{place}-{}", key.name()), Of::Input(key));
            let asked = QUESTIONS.iter().flat_map(|question| question.keys);
            let asked = asked.filter_map(|name| Key::named(name));
            rows.extend(asked.map(|key| row("ask", key)));
            rows.extend(Key::all().map(|key| row("sheet", key)));
            for section in fit::ASKED {
                rows.extend(section.keys().map(|key| row("fit", key)));
            }
        }
        follow(desk, rows, afresh);
    });
    desk.sheet.with_untracked(|sheet| {
        for section in SectionId::ALL {
            let count = section.keys().count();
            let said = section.keys().filter(|key| sheet.is_said(*key)).count();
            let words = match said {
                0 => "all guesses".to_string(),
                said => format!("{said} of {count} known"),
            };
            let mut matters = section
                .keys()
                .filter(|key| key.applies(&sheet.inputs))
                .peekable();
            // The second machine's figures only where there is one.
            let hidden = matters.peek().is_none();
            let finer = matters.any(|key| key.spec().place == Place::Deep);
            sum_up(*section, &words, hidden, finer);
        }
    });
    loads::refresh(desk, afresh);
}

fn sum_up(section: SectionId, said: &str, hidden: bool, finer: bool) {
    let Some(details) = by_id(&format!("section-{}", section.prefix())) else {
        return;
    };
    set_class(&details, if hidden { "section hidden" } else { "section" });
    if let Ok(Some(place)) = details.query_selector(".said")
        && place.text_content().as_deref() != Some(said)
    {
        place.set_text_content(Some(said));
    }
    if let Ok(Some(deep)) = details.query_selector(".finer") {
        set_class(&deep, if finer { "finer" } else { "finer hidden" });
    }
}

fn set_class(element: &leptos::web_sys::Element, class: &str) {
    if element.class_name() != class {
        element.set_class_name(class);
    }
}

/// Brings these entries up to date.
pub fn follow(desk: Desk, rows: &mut [Row], afresh: bool) {
    desk.sheet.with_untracked(|sheet| {
        for row in rows {
            let now = Shown::of(sheet, row.of);
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
