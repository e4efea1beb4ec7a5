//! The worksheets kept in this browser.

use std::cell::RefCell;

use ampwright_core::Worksheet;
use ampwright_core::boat::demo;
use ampwright_core::exchange::to_json;
use leptos::prelude::*;
use leptos::web_sys::{Element, Event};

use crate::come::Arrival;
use crate::legacy::{Section, Text, value, written};
use crate::state::{AppState, Keeping, count};
use crate::store::{self, Store};
use crate::words::escape;

/// What a copy is called after.
const COPY: &str = ", copy";

thread_local! {
    /// Number and text of the worksheet taken off last.
    static GONE: RefCell<Option<(u32, String)>> = const { RefCell::new(None) };
}

/// Name of the open worksheet, and the others.
pub const SECTION: Section = Section {
    paper: written(|| {
        r#"<section class="shelf" aria-labelledby="shelf-title"><h2 id="shelf-title">Worksheets</h2>
<label for="sheet-name">Name of this worksheet</label><input id="sheet-name" type="text" autocomplete="off" maxlength="80" data-input="sheet-name">
<p class="keeping" id="keeping"></p><p class="hidden" id="undo-place" role="status"><span class="said">No longer kept: <span id="gone"></span>.</span> <button type="button" id="undo" data-click="undo">Undo</button></p><ul class="sheets" id="sheets"></ul>
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
            Text::Own(|desk| {
                match desk.keeping.get() {
                Keeping::Fresh => {
                    "Kept in this browser as soon as something is entered.".to_string()
                }
                Keeping::Kept => {
                    "Kept in this browser only. A file or a link of it, kept elsewhere, is the true backup."
                        .to_string()
                }
                Keeping::MemoryOnly(why) => why.to_string(),
            }
            }),
        ),
        ("sheets", Text::Own(sheets)),
        ("gone", Text::Own(gone)),
        (
            "undo-place@class",
            Text::Own(|desk| match gone(desk).is_empty() {
                true => "hidden".to_string(),
                false => "buttons".to_string(),
            }),
        ),
    ],
    acts: &[
        ("sheet-name", |desk, entry, _| {
            let name = value(entry);
            desk.edit(|sheet| sheet.name = name);
        }),
        ("new-sheet", |desk, _, _| {
            store::save_waiting(desk);
            desk.open(Worksheet::default(), None, None);
        }),
        ("copy-sheet", |desk, _, _| {
            store::save_waiting(desk);
            let mut sheet = desk.sheet.get_untracked();
            let name = title(&sheet.name);
            let name = name.strip_suffix(COPY).unwrap_or(name);
            sheet.name = [name, COPY].concat();
            desk.open(sheet, None, None);
            store::save_soon(desk);
        }),
        ("open-sheet", |desk, button, _| open(desk, number(button))),
        ("delete-sheet", delete),
        ("undo", |desk, _, _| undo(desk)),
    ],
    start: |_| (),
};

/// The worksheets in the browser's storage, newest first.
fn sheets(desk: AppState) -> String {
    let here = desk.number.get();
    let mut text = String::new();
    for (number, name) in named(desk) {
        let (class, current) = match here == Some(number) {
            true => ("here", "aria-current=true"),
            false => ("", ""),
        };
        text += &format!(
            "<li class='{class}'><button type=button class='plain title' id=open-{number} data-click=open-sheet data-number={number} {current}>{name}</button><button type=button class=plain id=file-{number} data-do=file data-on={number} aria-label='{name}: save as a file'>File</button><button type=button class=plain id=delete-{number} data-click=delete-sheet data-number={number} aria-label='{name}: delete'>Delete</button></li>"
        );
    }
    text
}

/// The other worksheets kept here, as options of a list.
pub fn others(desk: AppState) -> String {
    let here = desk.number.get();
    let mut text = "<option value=''>–</option>".to_string();
    for (number, name) in named(desk) {
        if here != Some(number) {
            text += &format!("<option value={number}>{name}</option>");
        }
    }
    text
}

/// Numbers and names of the worksheets kept here, newest first.
fn named(desk: AppState) -> Vec<(u32, String)> {
    desk.shelved.track();
    let Ok(store) = Store::open() else {
        return Vec::new();
    };
    let numbers = store.numbers().into_iter();
    numbers
        .map(|number| (number, name(number, store.text(number).as_deref())))
        .collect()
}

/// What a kept worksheet is called, as markup.
fn name(number: u32, text: Option<&str>) -> String {
    match text.map(store::read) {
        Some(Ok((sheet, _))) => escape(title(&sheet.name)),
        _ => format!("Worksheet {number}, which cannot be read"),
    }
}

/// The worksheet a button of the list is about.
pub fn number(button: &Element) -> u32 {
    let number = button.get_attribute("data-number");
    number.and_then(|number| number.parse().ok()).unwrap_or(0)
}

/// A kept worksheet with remarks, or why it cannot be read.
pub fn read(number: u32) -> Option<Result<(Worksheet, Vec<String>), String>> {
    let text = Store::open().ok()?.text(number)?;
    Some(store::read(&text))
}

/// Opens a kept worksheet.
pub fn open(desk: AppState, number: u32) {
    store::save_waiting(desk);
    match read(number) {
        Some(Ok((sheet, remarks))) if !remarks.is_empty() => {
            desk.open(sheet, None, Some(Arrival::spoilt(remarks)));
        }
        Some(Ok((sheet, _))) => {
            if let Ok(store) = Store::open() {
                store.make_last(number);
            }
            desk.open(sheet, Some(number), None);
            desk.keeping.set(Keeping::Kept);
            window().scroll_to_with_x_and_y(0.0, 0.0);
        }
        Some(Err(why)) => desk.arrival.set(Some(Arrival {
            headline: "This worksheet cannot be read. It is left as it is; “File” beside it saves its text.".into(),
            remarks: vec![why],
        })),
        None => {}
    }
}

/// Takes a worksheet off the list; its text stays until the page closes.
fn delete(desk: AppState, button: &Element, _: &Event) {
    store::save_waiting(desk);
    let number = number(button);
    let Ok(store) = Store::open() else { return };
    let Some(text) = store.text(number) else {
        return;
    };
    store.remove(number);
    let here = desk.number.get_untracked() == Some(number);
    if here {
        // What is typed next must not bring it back by itself.
        desk.keeping.set(Keeping::Fresh);
        desk.open(Worksheet::default(), None, None);
    } else if let Keeping::MemoryOnly(_) = desk.keeping.get_untracked() {
        // There may be room now.
        store::save_soon(desk);
    }
    remember(desk, (number, text));
}

fn remember(desk: AppState, gone: (u32, String)) {
    GONE.set(Some(gone));
    count(desk.shelved);
}

/// What could not be kept and is about to leave the desk can be brought back.
pub fn put_away(desk: AppState) {
    if let Keeping::MemoryOnly(_) = desk.keeping.get_untracked()
        && !desk.sheet.with_untracked(is_fresh)
    {
        let text = desk.sheet.with_untracked(to_json).to_string();
        remember(desk, (0, text));
    }
}

/// Whether nothing was said yet.
pub fn is_fresh(sheet: &Worksheet) -> bool {
    let Worksheet {
        name, known, loads, ..
    } = sheet;
    name.is_empty()
        && known.count() == 0
        && loads.is_empty()
        && sheet.arrangements.is_empty()
        && sheet.done.is_empty()
}

fn gone(desk: AppState) -> String {
    desk.shelved.track();
    GONE.with_borrow(|gone| match gone {
        None => String::new(),
        Some((number, text)) => name(*number, Some(text)),
    })
}

/// Brings back what was taken off last.
fn undo(desk: AppState) {
    store::save_waiting(desk);
    let Some((number, text)) = GONE.take() else {
        return;
    };
    let kept = Store::open().and_then(|store| {
        let free = number > 0 && store.text(number).is_none();
        let number = if free { number } else { store.next_number() };
        store.keep(number, &text).map(|()| number)
    });
    match (kept, store::read(&text)) {
        (Ok(number), _) => open(desk, number),
        (Err(_), Ok((sheet, _))) => desk.open(sheet, None, None),
        (Err(_), Err(_)) => remember(desk, (number, text)),
    }
    count(desk.shelved);
}

/// Lays the demo on the desk, unsaved and marked as one.
pub fn show_demo(desk: AppState) {
    store::save_waiting(desk);
    let arrival = Arrival {
        headline: "A demo: an invented boat. None of its figures was measured on any boat.".into(),
        remarks: Vec::new(),
    };
    desk.open(demo(), None, Some(arrival));
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
