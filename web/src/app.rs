//! The page from top to bottom.

use std::time::Duration;

use leptos::ev;
use leptos::prelude::*;
use web_sys::StorageEvent;

use crate::browser::early::Early;
use crate::browser::{early, page, place, printing};
use crate::components::MadeAtStart;
use crate::components::explanation::Appendix;
use crate::sections::answer::Answer;
use crate::sections::arrangements::Arrangements;
use crate::sections::cautions::Cautions;
use crate::sections::charging_run::ChargingRun;
use crate::sections::contents::Contents;
use crate::sections::figures::Figures;
use crate::sections::findings::Findings;
use crate::sections::foot::Foot;
use crate::sections::glossary::Glossary;
use crate::sections::goal_search::GoalSearch;
use crate::sections::installation::Installation;
use crate::sections::masthead::Masthead;
use crate::sections::notices::Notices;
use crate::sections::output_by_speed::OutputBySpeed;
use crate::sections::questions::Questions;
use crate::sections::saved_boats::SavedBoatsSection;
use crate::sections::sea_trial::SeaTrial;
use crate::sections::share::Share;
use crate::sections::uncertainty::HowCertain;
use crate::sections::units::Units;
use crate::sections::worksheet::WorksheetForm;
use crate::sections::year::ThroughTheYear;
use crate::state::AppState;
use crate::state::saved_boats::{Keeping, KeptTexts};

/// The whole page: columns of a wide screen, one under the other on a phone.
/// [`AppState`] is there before it.
#[component]
pub fn App() -> impl IntoView {
    let state = AppState::expect();
    // Runs in the browser only, once the printed page was taken over.
    Effect::new(move || untrack(|| start(state)));
    view! {
        <div id="paper">
            <Masthead />
            <Answer />
            <Contents />
            <main>
                <Notices />
                <div class="columns">
                    <div class="ask">
                        <Questions />
                    </div>
                    <MadeAtStart class="results">
                        <Findings />
                        <HowCertain />
                        <ChargingRun />
                        <OutputBySpeed />
                        <Figures />
                        <ThroughTheYear />
                    </MadeAtStart>
                    <MadeAtStart class="wide">
                        <Arrangements />
                        <GoalSearch />
                        <Installation />
                    </MadeAtStart>
                    <MadeAtStart class="rest">
                        <Units />
                        <WorksheetForm />
                        <SeaTrial />
                        <SavedBoatsSection />
                        <Share />
                        <Cautions />
                        <Glossary />
                        <Appendix />
                    </MadeAtStart>
                </div>
            </main>
            <Foot />
        </div>
    }
}

/// Brings the printed page to life: opens what lay open last and what the
/// address brings, and listens.
fn start(state: AppState) {
    let typed = early::collect();
    if let Err(why) = KeptTexts::open() {
        state.saved.keeping.set(Keeping::MemoryOnly(why));
    }
    state.is_touched.set(page::is_touched());
    state.preferences.restore();
    state.folds.restore();
    state.settle_after_answer();
    state.follow_uncertainty();
    state.saved.refresh_list();
    state.open_last();
    state.open_fragment();
    listen(state);
    state.installed.keep_page();
    // What is kept, and what lies open, is on the page by then.
    set_timeout(move || settle_in(typed), Duration::ZERO);
}

/// Takes up what the reader did before the page came to life.
fn settle_in(typed: Vec<Early>) {
    page::say_ready();
    early::enter(typed);
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
