//! How a figure came about, opened at the figure itself: one at a time, with a
//! way along the figures it used and back. Reckoned only while it lies open.

mod formula;
mod told;

use std::cell::RefCell;

use ampwright_core::explain::{name, working_at, workings};
use ampwright_core::{Report, Worksheet};
use leptos::prelude::*;
use leptos::web_sys::{Element, HtmlInputElement, KeyboardEvent};
use wasm_bindgen::JsCast;

use crate::chart::minute;
use crate::legacy::after;
use crate::legacy::{Section, by_id, focus, listen, write, written};
use crate::state::{AppState, count};
use crate::sure;
use told::{figured, tell};

/// Where the working lies open, and the figures on the way, the last one shown.
struct Open {
    at: String,
    chain: Vec<String>,
}

thread_local! {
    static OPEN: RefCell<Open> = const { RefCell::new(Open { at: String::new(), chain: Vec::new() }) };
}

/// The workings for print, at the end of the page.
pub const SECTION: Section = Section {
    paper: written(|| "<section class=appendix id=appendix></section>".to_string()),
    parts: &[],
    acts: &[
        ("how", |desk, button, _| open(desk, button)),
        ("how-on", |desk, button, _| {
            let next = asked(button, "data-how");
            OPEN.with_borrow_mut(|open| {
                open.chain.retain(|id| *id != next);
                open.chain.push(next);
            });
            show(desk, PANEL.to_string());
        }),
        ("how-back", |desk, _, _| {
            let left = OPEN.with_borrow_mut(|open| open.chain.pop());
            show(desk, format!("on.{}", left.unwrap_or_default()));
        }),
        ("how-close", |desk, _, _| close(desk)),
        ("how-key", |desk, _, event| {
            if event.unchecked_ref::<KeyboardEvent>().key() == "Escape" {
                close(desk);
            }
        }),
        ("how-go", |desk, button, _| {
            // The strip's slip of paper would lie over the field.
            if is_at("answer") {
                close(desk);
            }
            let key = asked(button, "data-key");
            after(std::time::Duration::ZERO, Box::new(move || sure::go(&key)));
        }),
    ],
    start: |desk| {
        listen(desk, "beforeprint", |desk, _| {
            let tick = by_id("print-workings");
            if tick.is_some_and(|tick| tick.unchecked_ref::<HtmlInputElement>().checked()) {
                write("appendix", &desk.look(&appendix));
            }
        });
        listen(desk, "afterprint", |_, _| write("appendix", ""));
    },
};

/// What asks for them.
pub const TICK: &str =
    "<label class=tick><input type=checkbox id=print-workings>Print the workings as well</label>";

const PANEL: &str = "working";

fn asked(element: &Element, attribute: &str) -> String {
    element.get_attribute(attribute).unwrap_or_default()
}

fn is_at(at: &str) -> bool {
    OPEN.with_borrow(|open| open.at == at)
}

/// Whether the working of a figure lies open at a place of the page.
pub fn is_open(at: &str, id: &str) -> bool {
    OPEN.with_borrow(|open| open.at == at && open.chain.first().is_some_and(|first| first == id))
}

/// Opens a figure's working, or closes it again.
fn open(desk: AppState, button: &Element) {
    let (at, id) = (asked(button, "data-at"), asked(button, "data-how"));
    if is_open(&at, &id) {
        return close(desk);
    }
    let chain = vec![id];
    OPEN.set(Open { at, chain });
    show(desk, PANEL.to_string());
}

fn close(desk: AppState) {
    let chain = Vec::new();
    let was = OPEN.replace(Open {
        at: String::new(),
        chain,
    });
    let first = was.chain.first().map_or("", String::as_str);
    show(desk, format!("{}.{first}", was.at));
}

/// Draws it as it is now, and puts the cursor there.
fn show(desk: AppState, cursor: String) {
    count(desk.aside);
    after(std::time::Duration::ZERO, Box::new(move || focus(&cursor)));
}

/// A figure that opens its working; `at` tells apart its places on the page.
pub fn opener(at: &str, id: &str, words: &str, unit: &str) -> String {
    let (open, gap) = (is_open(at, id), if unit.is_empty() { "" } else { " " });
    format!(
        "<button type=button class=how id={at}.{id} data-click=how data-at={at} data-how={id} aria-expanded={open} aria-label=\"How {words}{gap}{unit} came about\">{words}</button>"
    )
}

/// What lies open at a place that shows several figures; nothing else.
pub fn opened(desk: AppState, at: &str) -> String {
    desk.aside.track();
    if !is_at(at) {
        return String::new();
    }
    desk.track_later();
    desk.reading.track();
    desk.look(&|sheet, report| panel(desk, sheet, report))
}

/// The working that lies open.
pub fn panel(desk: AppState, sheet: &Worksheet, report: &Report) -> String {
    let (id, before) = OPEN.with_borrow(|open| {
        let mut chain = open.chain.iter().rev().cloned();
        (chain.next().unwrap_or_default(), chain.next())
    });
    let minute = minute(&report.analyses.run, desk.reading.get_untracked());
    let made = working_at(sheet, report, minute, &id);
    let back = before.map_or(String::new(), |before| {
        format!(
            "<button type=button class=plain id=working-back data-click=how-back aria-label=\"Back to: {0}\">‹ {0}</button>",
            name(&before)
        )
    });
    let mut text = format!(
        "<div class=working id={PANEL} role=region aria-labelledby=working-title tabindex=-1 data-keydown=how-key><div class=trail>{back}<button type=button class=plain id=working-close data-click=how-close aria-label='Close the working'>close</button></div><p class=what>{}</p><p class=title id=working-title>",
        name(&id)
    );
    match &made {
        Some(made) => {
            text += &format!("How {} came about</p>", figured(made, "this"));
            tell(&mut text, made, true);
        }
        None => text += "There is no such figure now</p>",
    }
    text + "</div>"
}

/// All of them, for print.
fn appendix(sheet: &Worksheet, report: &Report) -> String {
    let mut text = "<h2>The workings</h2>".to_string();
    for made in workings(sheet, report) {
        text += &format!(
            "<div class=working><h3>{}: {}</h3>",
            name(made.id),
            figured(&made, "–")
        );
        tell(&mut text, &made, false);
        text += "</div>";
    }
    text
}
