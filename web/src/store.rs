//! Worksheets in the browser's storage, behind a guard: storage can be full,
//! blocked or spoilt, and then work goes on in memory and says so.

use std::cell::{Cell, RefCell};
use std::time::Duration;

use ampwright_core::Worksheet;
use ampwright_core::exchange::{Reading, read_json, to_json};
use ampwright_core::text::remarks::{read_error, remarks};
use gloo_storage::{LocalStorage, Storage};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use crate::legacy::write;
use crate::state::{AppState, Keeping, count};

const SHEET: &str = "ampwright.sheet.";
const LAST: &str = "ampwright.last";
const BLOCKED: &str =
    "This browser does not let the page keep anything; it will be gone when the page is closed.";
const FULL: &str = "The browser's storage takes nothing more; this worksheet is kept in memory only. Make a link of it, or delete an old worksheet.";
/// How long after a change it is kept, whether typing rests or not.
const REST: Duration = Duration::from_millis(400);

thread_local! {
    static WAITING: RefCell<Option<TimeoutHandle>> = const { RefCell::new(None) };
    /// The open worksheet as this tab last read or wrote it.
    static BASE: RefCell<Option<String>> = const { RefCell::new(None) };
    /// Under which number another tab changed it.
    static ELSEWHERE: Cell<Option<(u32, bool)>> = const { Cell::new(None) };
}

/// The browser's storage, once it was seen to work.
#[derive(Clone, Copy)]
pub struct Store(());

impl Store {
    /// Looks whether storage is there.
    pub fn open() -> Result<Store, &'static str> {
        // gloo-storage panics where the browser blocks storage: ask first.
        match window().local_storage() {
            Ok(Some(_)) => Ok(Store(())),
            _ => Err(BLOCKED),
        }
    }

    /// Number and text of the worksheet last worked on.
    pub fn last(self) -> Option<(u32, String)> {
        let said = LocalStorage::raw().get_item(LAST).ok().flatten();
        let number =
            said.map_or_else(|| self.numbers().first().copied(), |said| said.parse().ok())?;
        Some((number, self.text(number)?))
    }

    /// Text of a kept worksheet.
    pub fn text(self, number: u32) -> Option<String> {
        LocalStorage::raw().get_item(&name(number)).ok().flatten()
    }

    /// Numbers of all kept worksheets, newest first.
    pub fn numbers(self) -> Vec<u32> {
        let raw = LocalStorage::raw();
        let found = (0..raw.length().unwrap_or(0))
            .filter_map(|at| raw.key(at).ok().flatten())
            .filter_map(|name| name.strip_prefix(SHEET)?.parse::<u32>().ok());
        let mut numbers: Vec<u32> = Vec::new();
        for number in found {
            let place = numbers.partition_point(|newer| *newer > number);
            numbers.insert(place, number);
        }
        numbers
    }

    /// Keeps a text and reads it back.
    pub fn keep(self, number: u32, text: &str) -> Result<(), &'static str> {
        let set = LocalStorage::raw().set_item(&name(number), text);
        match set.is_ok() && self.text(number).as_deref() == Some(text) {
            true => Ok(()),
            false => Err(FULL),
        }
    }

    /// Remembers which worksheet was worked on last.
    pub fn make_last(self, number: u32) {
        let _ = LocalStorage::raw().set_item(LAST, &number.to_string());
    }

    /// Removes a worksheet.
    pub fn remove(self, number: u32) {
        LocalStorage::delete(name(number));
    }

    /// A number that is free.
    pub fn next_number(self) -> u32 {
        let numbers = self.numbers();
        let next = numbers
            .first()
            .map_or(Some(1), |newest| newest.checked_add(1));
        // Somebody wrote the last number there is into the storage.
        next.unwrap_or_else(|| (1..u32::MAX).find(|at| !numbers.contains(at)).unwrap_or(1))
    }
}

fn name(number: u32) -> String {
    format!("{SHEET}{number}")
}

/// Reads a kept text: the worksheet and what was not understood, in sentences.
pub fn read(text: &str) -> Result<(Worksheet, Vec<String>), String> {
    match read_json(text) {
        Ok(Reading {
            sheet,
            remarks: left_out,
        }) => Ok((sheet, remarks(&left_out))),
        Err(error) => Err(read_error(&error)),
    }
}

/// Keeps the worksheet soon; what is typed meanwhile is kept with it.
pub fn save_soon(desk: AppState) {
    WAITING.with_borrow_mut(|waiting| {
        if waiting.is_none() {
            *waiting = set_timeout_with_handle(move || save_now(desk), REST).ok();
        }
    });
}

/// Keeps the worksheet if a change is waiting, as when the page is left.
pub fn save_waiting(desk: AppState) {
    let waiting = WAITING.with_borrow_mut(Option::take);
    if let Some(waiting) = waiting {
        waiting.clear();
        save_now(desk);
    }
}

fn save_now(desk: AppState) {
    WAITING.with_borrow_mut(Option::take);
    let text = desk.sheet.with_untracked(to_json).to_string();
    let kept = Store::open().and_then(|store| {
        let mine = desk.number.get_untracked();
        let number = match mine {
            // Another tab wrote there: this goes on as a copy of its own.
            Some(number) if changed(store, number) => {
                ELSEWHERE.set(Some((number, true)));
                count(desk.aside);
                store.next_number()
            }
            Some(number) => number,
            None => store.next_number(),
        };
        store.keep(number, &text)?;
        store.make_last(number);
        Ok(number)
    });
    match kept {
        Ok(number) => {
            write("carry@data-unkept", "");
            BASE.set(Some(text));
            desk.number.set(Some(number));
            desk.keeping.set(Keeping::Kept);
            count(desk.shelved);
            tell_browser("ampwright:kept");
        }
        Err(why) => {
            write("carry@data-unkept", &text);
            desk.keeping.set(Keeping::MemoryOnly(why));
        }
    }
}

/// Whether another tab changed what this one has open.
fn changed(store: Store, number: u32) -> bool {
    let now = store.text(number);
    BASE.with_borrow(|base| now.is_some() && *base != now)
}

/// Another worksheet lies open.
pub fn laid(number: Option<u32>) {
    let store = Store::open().ok();
    BASE.set(
        store
            .zip(number)
            .and_then(|(store, number)| store.text(number)),
    );
    ELSEWHERE.set(None);
}

/// Another tab wrote to the storage.
pub fn look(desk: AppState) {
    if let (Ok(store), Some(number)) = (Store::open(), desk.number.get_untracked())
        && changed(store, number)
    {
        ELSEWHERE.set(Some((number, false)));
        count(desk.aside);
    }
    count(desk.shelved);
}

/// Which worksheet another tab changed, and whether a copy was made of this one.
pub fn elsewhere() -> Option<(u32, bool)> {
    ELSEWHERE.get()
}

/// Keeps the open worksheet under a number of its own.
pub fn keep_mine(desk: AppState) {
    save_now(desk);
    ELSEWHERE.set(None);
    count(desk.aside);
}

/// Asks the loader for what only the browser can do.
pub fn tell_browser(what: &str) {
    if let Ok(event) = leptos::web_sys::Event::new(what) {
        let _ = window().dispatch_event(&event);
    }
}
