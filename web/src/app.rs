//! The page from top to bottom. Its markup was written by the build, see
//! `print.rs`; here it comes alive.

use leptos::prelude::*;

use crate::desk::{Desk, Keeping, count};
use crate::paper::{self, Section, Text, listen, written};
use crate::words::escape;
use crate::{answer, arrange, chart, figures, findings, fit, form, goal, look, own, questions};
use crate::{share, shelf, store, sure};
use crate::{trial, units, working, year};

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
            &working::SECTION,
        ],
    ),
];

pub const TOP: [&Section; 3] = [&look::MASTHEAD, &answer::SECTION, &NOTICES];

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
    listen(desk, "pagehide", |desk, _| store::save_waiting(desk));
    listen(desk, "blur", |desk, _| store::save_waiting(desk));
    listen(desk, "hashchange", |desk, _| desk.take_fragment());
    listen(desk, "ampwright:update", |desk, _| count(desk.aside));
    paper::start(desk, &sections());
}

/// How this worksheet came here, trouble with keeping it, a newer version.
const NOTICES: Section = Section {
    paper: written(|| {
        ["arrival", "memory", "update", "welcome"]
            .map(|notice| {
                // Who comes for the first time is welcomed at once.
                let text = if notice == "welcome" {
                    "<aside class='notice welcome' id=welcome><p>How long must the engine run to fill the house bank, and will the alternator survive it? Eight questions give a first answer.</p><button type=button class=plain id=demo data-click=demo>Look at an invented boat first</button></aside>"
                } else {
                    ""
                };
                format!("<div id={notice}-place>{text}</div>")
            })
            .concat()
    }),
    parts: &[
        ("arrival-place", Text::Own(arrival)),
        ("memory-place", Text::Own(memory_only)),
        ("update-place", Text::Own(update)),
        ("welcome-place@class", Text::Own(welcome)),
    ],
    acts: &[
        ("demo", |desk, _, _| shelf::show_demo(desk)),
        ("take-over", |desk, _, _| {
            store::save_waiting(desk);
            if let Ok(event) = leptos::web_sys::Event::new("ampwright:take-over") {
                let _ = window().dispatch_event(&event);
            }
        }),
    ],
    start: |_| (),
};

fn arrival(desk: Desk) -> String {
    let Some(arrival) = desk.arrival.get() else {
        return String::new();
    };
    let mut text = format!(
        "<div class=notice id=arrival role=status><p>{}</p><ul>",
        arrival.headline
    );
    for remark in &arrival.remarks {
        text += &format!("<li>{}</li>", escape(remark));
    }
    text + "</ul></div>"
}

fn memory_only(desk: Desk) -> String {
    match desk.keeping.get() {
        Keeping::MemoryOnly(why) => {
            format!("<div class='notice bad' id=memory-only role=alert><p>{why}</p></div>")
        }
        _ => String::new(),
    }
}

fn update(desk: Desk) -> String {
    desk.aside.track();
    let waiting = document()
        .document_element()
        .is_some_and(|root| root.has_attribute("data-update"));
    match waiting {
        true => "<div class=notice id=update role=status><p>A newer version of this page is ready.</p><button type=button data-click=take-over>Use it now</button></div>",
        false => "",
    }
    .to_string()
}

/// Shown by the build, so that it is not drawn again when the page starts: it is
/// the first thing read.
fn welcome(desk: Desk) -> String {
    let fresh = desk.arrival.get().is_none()
        && desk.number.get().is_none()
        && desk.keeping.get() != Keeping::Kept;
    if fresh { "" } else { "hidden" }.to_string()
}
