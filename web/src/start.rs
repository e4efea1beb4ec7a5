//! The start: the boat worked on last is opened, and the live page takes the
//! place of the printed one.

use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;

use leptos::ev;
use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::StorageEvent;

use crate::app::{App, later_parts};
use crate::browser::early::Early;
use crate::browser::printed::PrintedParts;
use crate::browser::{page, place, printing};
use crate::state::saved_boats::{Keeping, KeptTexts, is_fresh};
use crate::state::{AppState, Rest, after_frame};

/// How long the page waits for the journal of what is kept.
const JOURNAL: Duration = Duration::from_millis(500);

/// Starts once the journal has given back what a killed browser did not write
/// to disk. One that is slow is not waited for.
pub fn start() {
    // The state is there before the page, and lives as long.
    let owner = Owner::new();
    let state = owner.with(AppState::provide);
    std::mem::forget(owner.clone());
    let has_started = Rc::new(Cell::new(false));
    let is_late = has_started.clone();
    let come_to_life = move || {
        if !has_started.replace(true) {
            owner.with(|| come_to_life(state));
        }
    };
    set_timeout(come_to_life.clone(), JOURNAL);
    // Leptos has no spawner of its own before it mounts something.
    wasm_bindgen_futures::spawn_local(async move {
        state.saved.recover(|| is_late.get()).await;
        come_to_life();
    });
}

/// Opens what lay open last, and puts the live page in place of the printed one
/// between two frames.
fn come_to_life(state: AppState) {
    let Some(place) = document().get_element_by_id("app") else {
        return;
    };
    if let Err(why) = KeptTexts::open() {
        state.saved.keeping.set(Keeping::MemoryOnly(why));
    }
    state.is_touched.set(page::is_touched());
    state.preferences.restore();
    state.folds.restore();
    state.undo.restore();
    state.saved.refresh_list();
    state.open_last();
    let early = Early::collect(&place);
    let printed = PrintedParts::find();
    place.set_text_content(None);
    state.live_parts.set(0);
    mount_to(place.unchecked_into(), App).forget();
    printed.put_back(state.sheet.with_untracked(is_fresh));
    state.settle_after_answer();
    state.follow_uncertainty();
    listen(state);
    state.installed.keep_page();
    // What lies open is on the page by then.
    set_timeout(move || settle_in(state, early, printed), Duration::ZERO);
}

/// Takes up what the reader did before the page came to life, and opens what
/// the address leads to. The first screen can be used then, and the rest is
/// fetched.
fn settle_in(state: AppState, early: Early, printed: PrintedParts) {
    state.open_fragment();
    page::say_ready();
    resume(state, early);
    hide_printed_when_changed(state, printed.count());
    // What is below the first screen is in the second part of the program.
    wasm_bindgen_futures::spawn_local(async move {
        match later_parts().await {
            Ok(parts) => {
                state.rest.set(Rest::Here(parts));
                come_to_life_below(state, printed, 0);
            }
            Err(_) => {
                page::mark("changed", "");
                state.rest.set(Rest::Missing);
            }
        }
    });
}

/// Printed copies are of a fresh boat: none is seen once the open one is another,
/// until it comes to life.
fn hide_printed_when_changed(state: AppState, parts: usize) {
    Effect::new(move |before: Option<()>| {
        state.sheet.track();
        if before.is_some() && state.live_parts.get_untracked() < parts {
            page::mark("changed", "");
        }
    });
}

/// Lets one part after another of what is below the first screen come to life,
/// with a frame between them for what is being typed.
fn come_to_life_below(state: AppState, printed: PrintedParts, turn: usize) {
    if turn == printed.count() {
        page::say_complete();
        match page::fragment() {
            Some(address) => state.visit(Some(&address)),
            None => place::restore(),
        }
        return;
    }
    after_frame(move || {
        let early = printed.take(turn);
        state.live_parts.set(turn + 1);
        if let Some(early) = early {
            set_timeout(move || resume(state, early), Duration::ZERO);
        }
        come_to_life_below(state, printed, turn + 1);
    });
}

/// Opens the folds and enters the figures that the reader did in the printed
/// page.
fn resume(state: AppState, early: Early) {
    for fold in early.opened() {
        state.folds.set(fold, true);
    }
    early.enter();
}

/// Hears what concerns the whole page, for as long as it is open.
fn listen(state: AppState) {
    // A phone may never come back from another app: keep what is waiting.
    for leaving in ["pagehide", "visibilitychange", "blur"] {
        let _ = window_event_listener_untyped(leaving, move |_| state.save_waiting());
    }
    let _ = window_event_listener_untyped("pagehide", |_| place::remember());
    let _ = window_event_listener(ev::storage, move |event: StorageEvent| {
        state.saved.look(event.key().as_deref());
    });
    let _ = window_event_listener(ev::hashchange, move |_| {
        state.open_fragment();
        state.visit(page::fragment().as_deref());
    });
    // The browser's search finds only what is on the page.
    let _ = window_event_listener(ev::keydown, move |event| {
        if event.key() == "f" && (event.ctrl_key() || event.meta_key()) {
            state.folds.search.set(true);
        }
    });
    let _ = window_event_listener(ev::input, move |_| {
        if state.folds.search.get_untracked() {
            state.folds.search.set(false);
        }
    });
    printing::follow(state.printing);
}
