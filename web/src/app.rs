//! The page from top to bottom. Its markup was written by the build, see
//! `print.rs`; here it comes alive.

use leptos::prelude::*;

use crate::desk::{Desk, count};
use crate::paper::{self, Section, listen};
use crate::{answer, arrange, arrive, chart, contents, figures, findings, fit, form, glossary};
use crate::{goal, look, own, questions, share, shelf, store, sure, trial, units, working, year};

/// The columns of a wide screen, one under the other on a phone.
pub const COLUMNS: [(&str, &[&Section]); 4] = [
    ("ask", &[&questions::SECTION]),
    (
        "results",
        &[
            &findings::SECTION,
            &sure::SECTION,
            &chart::RUN,
            &chart::SPEED,
            &figures::SECTION,
            &year::SECTION,
        ],
    ),
    (
        "wide",
        &[
            &arrange::SECTION,
            &own::SECTION,
            &goal::SECTION,
            &fit::SECTION,
        ],
    ),
    (
        "rest",
        &[
            &units::SECTION,
            &form::SECTION,
            &trial::SECTION,
            &shelf::SECTION,
            &share::SECTION,
            &findings::CAUTIONS_LIST,
            &glossary::SECTION,
            &working::SECTION,
        ],
    ),
];

pub const TOP: [&Section; 4] = [
    &look::MASTHEAD,
    &answer::SECTION,
    &contents::SECTION,
    &arrive::SECTION,
];

/// Every section, in the order of the page.
pub fn sections() -> Vec<&'static Section> {
    let mut sections = TOP.to_vec();
    for (_, of) in COLUMNS {
        sections.extend(of);
    }
    sections
}

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    let desk = Desk::open();
    // A phone may never come back from another app: keep what is waiting.
    for leaving in ["pagehide", "visibilitychange", "blur"] {
        listen(desk, leaving, |desk, _| store::save_waiting(desk));
    }
    listen(desk, "storage", |desk, _| store::look(desk));
    listen(desk, "hashchange", |desk, _| desk.take_fragment());
    listen(desk, "ampwright:update", |desk, _| count(desk.aside));
    paper::start(desk, &sections());
}
