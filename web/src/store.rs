//! Worksheets in the browser's storage, behind a guard: storage can be full,
//! blocked or spoilt, and then work goes on in memory and says so.

use std::cell::RefCell;
use std::time::Duration;

use ampwright_core::Worksheet;
use ampwright_core::worksheet::{Reading, read_json, to_json};
use gloo_storage::{LocalStorage, Storage};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use crate::desk::{Desk, Keeping, count};

const SHEET: &str = "ampwright.sheet.";
const LAST: &str = "ampwright.last";
const PROBE: &str = "ampwright.probe";
/// How long typing must rest before it is kept.
const REST: Duration = Duration::from_millis(400);

thread_local! {
    static WAITING: RefCell<Option<TimeoutHandle>> = const { RefCell::new(None) };
}

/// The browser's storage, once it was seen to work.
#[derive(Clone, Copy)]
pub struct Store(());

impl Store {
    /// Looks whether storage is there and takes a text.
    pub fn open() -> Result<Store, String> {
        // gloo-storage panics where the browser blocks storage: ask first.
        match window().local_storage() {
            Ok(Some(_)) => {}
            _ => {
                return Err(
                    "This browser does not let the page keep anything; it will be gone when the page is closed."
                        .into(),
                );
            }
        }
        LocalStorage::raw()
            .set_item(PROBE, "1")
            .map_err(|_| full())?;
        LocalStorage::delete(PROBE);
        Ok(Store(()))
    }

    /// Number and text of the worksheet last worked on.
    pub fn last(self) -> Option<(u32, String)> {
        let number = LocalStorage::raw().get_item(LAST).ok()??.parse().ok()?;
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

    /// Keeps a worksheet and reads it back.
    fn keep(self, number: u32, sheet: &Worksheet) -> Result<(), String> {
        let text = to_json(sheet).to_string();
        LocalStorage::raw()
            .set_item(&name(number), &text)
            .map_err(|_| full())?;
        if self.text(number).as_deref() != Some(&text) {
            return Err(full());
        }
        self.make_last(number);
        Ok(())
    }

    /// Remembers which worksheet was worked on last.
    pub fn make_last(self, number: u32) {
        let _ = LocalStorage::raw().set_item(LAST, &number.to_string());
    }

    /// Removes a worksheet.
    pub fn remove(self, number: u32) {
        LocalStorage::delete(name(number));
    }

    fn next_number(self) -> u32 {
        self.numbers().first().map_or(1, |newest| newest + 1)
    }
}

fn name(number: u32) -> String {
    format!("{SHEET}{number}")
}

fn full() -> String {
    "The browser's storage takes nothing more; this worksheet is kept in memory only. Make a link of it, or delete an old worksheet.".into()
}

/// Reads a kept text: the worksheet and what was not understood.
pub fn read(text: &str) -> Result<(Worksheet, Vec<String>), String> {
    match read_json(text) {
        Ok(Reading { sheet, remarks }) => Ok((sheet, remarks)),
        Err(complaint) => Err(complaint.0),
    }
}

/// Keeps the worksheet once typing rests.
pub fn save_soon(desk: Desk) {
    let handle = set_timeout_with_handle(move || save_now(desk), REST).ok();
    WAITING.with_borrow_mut(|waiting| {
        if let Some(earlier) = std::mem::replace(waiting, handle) {
            earlier.clear();
        }
    });
}

/// Keeps the worksheet if a change is waiting, as when the page is left.
pub fn save_waiting(desk: Desk) {
    let waiting = WAITING.with_borrow_mut(Option::take);
    if let Some(waiting) = waiting {
        waiting.clear();
        save_now(desk);
    }
}

fn save_now(desk: Desk) {
    WAITING.with_borrow_mut(Option::take);
    let kept = Store::open().and_then(|store| {
        let number = desk
            .number
            .get_untracked()
            .unwrap_or_else(|| store.next_number());
        desk.sheet
            .with_untracked(|sheet| store.keep(number, sheet))
            .map(|()| number)
    });
    match kept {
        Ok(number) => {
            desk.number.set(Some(number));
            desk.keeping.set(Keeping::Kept);
            count(desk.shelved);
        }
        Err(why) => desk.keeping.set(Keeping::MemoryOnly(why)),
    }
}
