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

use crate::app::App;
use crate::browser::early::Early;
use crate::browser::{page, place, printing};
use crate::state::AppState;
use crate::state::saved_boats::{Keeping, KeptTexts};

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
    state.saved.refresh_list();
    state.open_last();
    let early = Early::collect();
    place.set_text_content(None);
    mount_to(place.unchecked_into(), App).forget();
    state.settle_after_answer();
    state.follow_uncertainty();
    listen(state);
    state.installed.keep_page();
    // What lies open is on the page by then.
    set_timeout(move || settle_in(state, early), Duration::ZERO);
}

/// Takes up what the reader did before the page came to life, and goes where
/// the address leads.
fn settle_in(state: AppState, early: Early) {
    state.open_fragment();
    page::say_ready();
    early.enter();
    place::restore();
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
    let _ = window_event_listener(ev::hashchange, move |_| state.open_fragment());
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
