//! How the worksheet came here: what of a link was understood, how it differs
//! from what lay open before, and the way back; what another tab did, trouble
//! with keeping worksheets, a newer version.

use std::cell::RefCell;

use ampwright_core::exchange::{Difference, differences, outcomes};
use ampwright_core::text::remarks::read_error;
use ampwright_core::{Report, Worksheet};
use leptos::prelude::*;

use crate::come::{Arrival, read_link};
use crate::legacy::{Section, Text, write, written};
use crate::shelf;
use crate::state::{AppState, Keeping, count};
use crate::store::{self, tell_browser};
use crate::words::escape;

/// What a worksheet is compared with.
struct Compared {
    /// What lay open before this one was laid over it, and its number.
    before: Option<Box<(Worksheet, Option<u32>)>>,
    /// As it came, or as another link has it; else a sentence.
    came: Result<Box<Worksheet>, String>,
}

thread_local! {
    static COMPARED: RefCell<Compared> = const { RefCell::new(Compared { before: None, came: Err(String::new()) }) };
}

/// The notices at the top of the page.
pub const SECTION: Section = Section {
    paper: written(|| {
        format!(
            r#"<div class="hidden" id="arrival"><div id="arrival-said" role="status"></div>
<details class="finer hidden" id="changed" data-toggle="fold"><summary>Show what differs from the one before</summary>{}</details>
<p class="buttons"><button type="button" id="keep-copy" data-click="keep-copy">Go on</button> <button type="button" class="hidden" id="back-to-mine" data-click="back-to-mine">Back to mine</button></p></div>
<div class="hidden" id="elsewhere" role="status"><p>This worksheet was changed in another tab. <span>What you type here goes into a copy of its own.</span><span>What you typed here is kept as a copy of its own.</span></p>
<p class="buttons"><button type="button" data-click="take-theirs">Open that version</button> <button type="button" data-click="keep-mine">Go on with mine</button></p></div>
<div class="hidden" id="memory-only" role="alert"><p id="memory-why"></p></div>
<div class="hidden" id="update" role="status"><p>A newer version of this page is ready.</p><button type="button" data-click="take-over">Use it now</button></div>
<aside class="notice welcome" id="welcome"><p>How long must the engine run to fill the house bank, and will the alternator survive it? Eight questions give a first answer.</p><button type="button" class="plain" id="demo" data-click="demo">Look at an invented boat first</button></aside>"#,
            changes("changed-table")
        )
    }),
    parts: &[
        ("arrival-said", Text::Own(said)),
        (
            "arrival@class",
            Text::Own(|desk| {
                let shown = desk.arrival.with(Option::is_some);
                // What came over nothing has nothing to go back to.
                let mine = COMPARED.with_borrow(|compared| compared.before.is_some());
                write(
                    "changed@class",
                    ["finer hidden", "finer"][usize::from(mine)],
                );
                write("back-to-mine@class", ["hidden", ""][usize::from(mine)]);
                notice(shown, "")
            }),
        ),
        (
            "changed-table",
            Text::Own(|desk| desk.tell_open("changed", before)),
        ),
        (
            "elsewhere@class",
            Text::Own(|desk| {
                desk.aside.track();
                desk.opened.track();
                let elsewhere = store::elsewhere();
                let copied = matches!(elsewhere, Some((_, true)));
                notice(
                    elsewhere.is_some(),
                    if copied { " bad copied" } else { " bad" },
                )
            }),
        ),
        ("memory-why", Text::Own(|desk| why(desk).to_string())),
        (
            "memory-only@class",
            Text::Own(|desk| notice(!why(desk).is_empty(), " bad")),
        ),
        (
            "update@class",
            Text::Own(|desk| {
                desk.aside.track();
                let root = document().document_element();
                notice(
                    root.is_some_and(|root| root.has_attribute("data-update")),
                    "",
                )
            }),
        ),
        (
            "welcome@class",
            Text::Own(|desk| {
                desk.opened.track();
                // It goes with the next worksheet, not when this one is kept:
                // then the page would move under the finger that types.
                let fresh = desk.arrival.with(Option::is_none)
                    && desk.number.get_untracked().is_none()
                    && desk.keeping.get_untracked() != Keeping::Kept;
                notice(fresh, " welcome")
            }),
        ),
    ],
    acts: &[
        ("keep-copy", |desk, _, _| {
            COMPARED.with_borrow_mut(|compared| compared.before = None);
            desk.arrival.set(None);
        }),
        ("back-to-mine", |desk, _, _| {
            let before = COMPARED.with_borrow_mut(|compared| compared.before.take());
            let Some((sheet, number)) = before.map(|before| *before) else {
                return;
            };
            store::save_waiting(desk);
            desk.open(sheet, number, None);
            store::save_soon(desk);
        }),
        ("take-theirs", |desk, _, _| {
            if let Some((number, _)) = store::elsewhere() {
                shelf::open(desk, number);
            }
        }),
        ("keep-mine", |desk, _, _| store::keep_mine(desk)),
        ("demo", |desk, _, _| shelf::show_demo(desk)),
        ("take-over", |desk, _, _| {
            store::save_waiting(desk);
            tell_browser("ampwright:take-over");
        }),
    ],
    start: |_| (),
};

/// Another worksheet is about to be laid over the one that lies open.
pub fn remember(desk: AppState, coming: &Worksheet, arrival: Option<&Arrival>) {
    let mut compared = Compared {
        before: None,
        came: Err("Paste the link it began with.".to_string()),
    };
    if arrival.is_some() {
        compared.came = Ok(Box::new(coming.clone()));
        let number = desk.number.get_untracked();
        let mine = desk.sheet.get_untracked();
        if number.is_some() || !shelf::is_fresh(&mine) {
            compared.before = Some(Box::new((mine, number)));
        }
    }
    COMPARED.set(compared);
}

/// Compares with another worksheet kept here from now on.
pub fn compare_kept(desk: AppState, number: u32) {
    let came = shelf::read(number).unwrap_or_else(|| Err("It is no longer kept.".to_string()));
    let came = came.map(|(sheet, _)| Box::new(sheet));
    COMPARED.with_borrow_mut(|compared| compared.came = came);
    count(desk.aside);
}

/// Compares with another link from now on.
pub fn compare_with(desk: AppState, link: &str) {
    let came = match read_link(link) {
        Ok(opened) => Ok(Box::new(opened.sheet)),
        Err(error) => Err(read_error(&error)),
    };
    COMPARED.with_borrow_mut(|compared| compared.came = came);
    count(desk.aside);
}

/// What changed since the worksheet came, or since the link it is compared with.
pub fn since(sheet: &Worksheet, report: &Report) -> Result<Vec<Difference>, String> {
    COMPARED.with_borrow(|compared| match &compared.came {
        Ok(came) => Ok(between(came, sheet, report)),
        Err(why) => Err(why.clone()),
    })
}

/// What differs in the results, then why.
fn between(from: &Worksheet, sheet: &Worksheet, report: &Report) -> Vec<Difference> {
    let mut found = outcomes(&ampwright_core::report(from), report);
    found.extend(differences(from, sheet));
    found
}

fn before(sheet: &Worksheet, report: &Report) -> String {
    COMPARED.with_borrow(|compared| match &compared.before {
        Some(before) => rows(&between(&before.0, sheet, report)),
        None => String::new(),
    })
}

/// A table of differences, its rows under an id; markup of the build.
pub fn changes(id: &str) -> String {
    format!(
        "<table class=changes><thead><tr><th scope=col>What</th><th scope=col>Before</th><th scope=col>Now</th></tr></thead><tbody id={id}></tbody></table>"
    )
}

/// Differences as its rows.
pub fn rows(found: &[Difference]) -> String {
    let mut text = String::new();
    for one in found {
        text += &format!(
            "<tr><th scope=row><small>{}</small> {}</th><td>{}</td><td>{}</td></tr>",
            one.section,
            escape(&one.label),
            escape(&one.was),
            escape(&one.is)
        );
    }
    if found.is_empty() {
        text += "<tr><td colspan=3>Nothing differs.";
    }
    text
}

fn said(desk: AppState) -> String {
    let Some(arrival) = desk.arrival.get() else {
        return String::new();
    };
    let mut text = ["<p>", &escape(&arrival.headline), "</p><ul>"].concat();
    for remark in &arrival.remarks {
        text += "<li>";
        text += &escape(remark);
    }
    text
}

/// The classes of a notice.
fn notice(shown: bool, more: &str) -> String {
    match shown {
        true => ["notice", more].concat(),
        false => "hidden".to_string(),
    }
}

/// Why worksheets are not kept; nothing if they are.
fn why(desk: AppState) -> &'static str {
    match desk.keeping.get() {
        Keeping::MemoryOnly(why) => why,
        _ => "",
    }
}
