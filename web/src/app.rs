//! The page from top to bottom.

use std::time::Duration;

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::StorageEvent;

use crate::browser::{page, printing};
use crate::legacy::{self, LegacySection, Section};
use crate::sections::cautions::Cautions;
use crate::sections::contents::Contents;
use crate::sections::findings::Findings;
use crate::sections::foot::Foot;
use crate::sections::glossary::Glossary;
use crate::sections::masthead::Masthead;
use crate::sections::notices::Notices;
use crate::sections::questions::Questions;
use crate::sections::saved_boats::SavedBoatsSection;
use crate::sections::share::Share;
use crate::sections::worksheet::WorksheetForm;
use crate::state::AppState;
use crate::state::saved_boats::{Keeping, KeptTexts};
use crate::{answer, arrange, chart, figures, fit, form};
use crate::{goal, own, sure, trial, units, working, year};

/// Every section that is still text, in the order of the page.
pub const LEGACY: [&Section; 14] = [
    &answer::SECTION,
    &sure::SECTION,
    &chart::RUN,
    &chart::SPEED,
    &figures::SECTION,
    &year::SECTION,
    &arrange::SECTION,
    &own::SECTION,
    &goal::SECTION,
    &fit::SECTION,
    &units::SECTION,
    &form::SECTION,
    &trial::SECTION,
    &working::SECTION,
];

/// How long the page waits for the journal of what is kept.
const JOURNAL: Duration = Duration::from_millis(500);

/// The whole page. Its entries are of no use until it is at work.
#[component]
pub fn App() -> impl IntoView {
    let state = AppState::provide();
    // Runs in the browser only, once the printed page was taken over.
    Effect::new(move || open(state));
    view! {
        <fieldset id="paper" role="none" disabled=move || !state.is_started.get()>
            <Masthead />
            <LegacySection of=&answer::SECTION />
            <Contents />
            <main>
                <Notices />
                <div class="columns">
                    <div class="ask">
                        <Questions />
                    </div>
                    <div class="results">
                        <Findings />
                        <LegacySection of=&sure::SECTION />
                        <LegacySection of=&chart::RUN />
                        <LegacySection of=&chart::SPEED />
                        <LegacySection of=&figures::SECTION />
                        <LegacySection of=&year::SECTION />
                    </div>
                    <div class="wide">
                        <LegacySection of=&arrange::SECTION />
                        <LegacySection of=&own::SECTION />
                        <LegacySection of=&goal::SECTION />
                        <LegacySection of=&fit::SECTION />
                    </div>
                    <div class="rest">
                        <LegacySection of=&units::SECTION />
                        <WorksheetForm />
                        <LegacySection of=&trial::SECTION />
                        <SavedBoatsSection />
                        <Share />
                        <Cautions />
                        <Glossary />
                        <LegacySection of=&working::SECTION />
                    </div>
                </div>
            </main>
            <Foot />
        </fieldset>
    }
}

/// Brings the printed page to life, once the journal has given back what a
/// killed browser did not write to disk. One that is slow is not waited for.
fn open(state: AppState) {
    // What follows the worksheet from then on lives as long as the page.
    let page = Owner::current().unwrap_or_default();
    let go = move || {
        if !state.is_started.get_untracked() {
            page.with(|| start(state));
        }
    };
    set_timeout(go.clone(), JOURNAL);
    spawn_local(async move {
        state
            .saved
            .recover(move || state.is_started.get_untracked())
            .await;
        go();
    });
}

/// Opens what lay open last and what the address brings, and listens.
fn start(state: AppState) {
    if let Err(why) = KeptTexts::open() {
        state.saved.keeping.set(Keeping::MemoryOnly(why));
    }
    state.is_touched.set(page::is_touched());
    state.preferences.restore();
    state.folds.restore();
    state.settle_after_answer();
    state.saved.refresh_list();
    state.open_last();
    state.open_fragment();
    listen(state);
    legacy::start(state, &LEGACY);
    state.installed.keep_page();
    page::hide_opening();
    state.is_started.set(true);
}

/// Hears what concerns the whole page, for as long as it is open.
fn listen(state: AppState) {
    // A phone may never come back from another app: keep what is waiting.
    for leaving in ["pagehide", "visibilitychange", "blur"] {
        let _ = window_event_listener_untyped(leaving, move |_| state.save_waiting());
    }
    let _ = window_event_listener(ev::storage, move |event: StorageEvent| {
        state.saved.look(event.key().as_deref());
    });
    let _ = window_event_listener(ev::hashchange, move |_| state.open_fragment());
    printing::follow(state.printing);
}
