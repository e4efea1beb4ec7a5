//! The worksheets kept in this browser.

use ampwright_core::Worksheet;
use ampwright_core::worksheet::demo;
use leptos::prelude::*;
use leptos::web_sys::{Element, Event};

use crate::desk::{Arrival, Desk, Keeping, count};
use crate::paper::{Section, Text, value, written};
use crate::store::{self, Store};
use crate::words::escape;

/// Name of the open worksheet, and the others.
pub const SECTION: Section = Section {
    paper: written(|| {
        r#"<section class="shelf" aria-labelledby="shelf-title"><h2 id="shelf-title">Worksheets</h2>
<label for="sheet-name">Name of this worksheet</label><input id="sheet-name" type="text" autocomplete="off" maxlength="80" data-input="sheet-name">
<p class="keeping" id="keeping"></p><ul class="sheets" id="sheets"></ul>
<p class="buttons"><button type="button" id="new-sheet" data-click="new-sheet">New worksheet</button>
<button type="button" id="copy-sheet" data-click="copy-sheet">Copy this one</button>
<button type="button" data-click="demo">Show the demo</button></p></section>"#
            .to_string()
    }),
    parts: &[
        (
            "sheet-name@value",
            Text::Soon(|sheet, _| sheet.name.clone()),
        ),
        (
            "keeping",
            Text::Own(|desk| match desk.keeping.get() {
                Keeping::Fresh => {
                    "Kept in this browser as soon as something is entered.".to_string()
                }
                Keeping::Kept => {
                    "Kept in this browser only. A link or a note of it is the true backup."
                        .to_string()
                }
                Keeping::MemoryOnly(why) => why,
            }),
        ),
        ("sheets", Text::Own(sheets)),
    ],
    acts: &[
        ("sheet-name", |desk, entry, _| {
            let name = value(entry);
            desk.edit(|sheet| sheet.name = name);
        }),
        ("new-sheet", |desk, _, _| {
            store::save_waiting(desk);
            desk.lay(Worksheet::default(), None, None);
        }),
        ("copy-sheet", |desk, _, _| {
            store::save_waiting(desk);
            let mut sheet = desk.sheet.get_untracked();
            sheet.name = format!("{}, copy", title(&sheet.name));
            desk.lay(sheet, None, None);
            store::save_soon(desk);
        }),
        ("open-sheet", |desk, button, _| open(desk, number(button))),
        ("delete-sheet", delete),
    ],
    start: |_| (),
};

/// The worksheets in the browser's storage, newest first.
fn sheets(desk: Desk) -> String {
    desk.shelved.track();
    let here = desk.number.get();
    let mut text = String::new();
    for number in Store::open().map(Store::numbers).unwrap_or_default() {
        let name = match read(number) {
            Some(Ok((sheet, _))) => escape(title(&sheet.name)),
            _ => format!("Worksheet {number}, which cannot be read"),
        };
        let (class, current) = match here == Some(number) {
            true => ("here", "aria-current=true"),
            false => ("", ""),
        };
        text += &format!(
            "<li class='{class}'><button type=button class='plain title' id=open-{number} data-click=open-sheet data-number={number} {current}>{name}</button><button type=button class=plain id=delete-{number} data-click=delete-sheet data-number={number}>Delete</button></li>"
        );
    }
    text
}

fn number(button: &Element) -> u32 {
    let number = button.get_attribute("data-number");
    number.and_then(|number| number.parse().ok()).unwrap_or(0)
}

fn read(number: u32) -> Option<Result<(Worksheet, Vec<String>), String>> {
    let text = Store::open().ok()?.text(number)?;
    Some(store::read(&text))
}

fn open(desk: Desk, number: u32) {
    store::save_waiting(desk);
    match read(number) {
        Some(Ok((sheet, _))) => {
            if let Ok(store) = Store::open() {
                store.make_last(number);
            }
            desk.lay(sheet, Some(number), None);
            desk.keeping.set(Keeping::Kept);
            window().scroll_to_with_x_and_y(0.0, 0.0);
        }
        Some(Err(why)) => desk.arrival.set(Some(Arrival {
            headline: "This worksheet cannot be read; it is left as it is.".into(),
            remarks: vec![why],
        })),
        None => {}
    }
}

/// Asks once more, then deletes.
fn delete(desk: Desk, button: &Element, _: &Event) {
    const SURE: &str = "Really delete";
    if button.text_content().as_deref() != Some(SURE) {
        button.set_text_content(Some(SURE));
        return;
    }
    let number = number(button);
    if let Ok(store) = Store::open() {
        store.remove(number);
    }
    if desk.number.get_untracked() == Some(number) {
        // What lies open stays open; only its kept copy is gone.
        desk.number.set(None);
        desk.keeping.set(Keeping::Fresh);
    }
    count(desk.shelved);
}

/// Lays the demo on the desk, unsaved and marked as one.
pub fn show_demo(desk: Desk) {
    store::save_waiting(desk);
    let arrival = Arrival {
        headline: "A demo: an invented boat. None of its figures was measured on any boat.".into(),
        remarks: Vec::new(),
    };
    desk.lay(demo(), None, Some(arrival));
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// The name, or what stands for none.
pub fn title(name: &str) -> &str {
    if name.trim().is_empty() {
        "Unnamed boat"
    } else {
        name
    }
}
