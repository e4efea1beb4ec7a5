//! The page from top to bottom.

use std::time::Duration;

use leptos::ev;
use leptos::prelude::*;

use crate::browser;
use crate::components::explanation::Appendix;
use crate::legacy::{self, LegacySection, Section, listen};
use crate::sections::answer::Answer;
use crate::sections::arrangements::Arrangements;
use crate::sections::cautions::Cautions;
use crate::sections::charging_run::ChargingRun;
use crate::sections::contents::Contents;
use crate::sections::figures::Figures;
use crate::sections::findings::Findings;
use crate::sections::glossary::Glossary;
use crate::sections::goal_search::GoalSearch;
use crate::sections::installation::Installation;
use crate::sections::masthead::Masthead;
use crate::sections::output_by_speed::OutputBySpeed;
use crate::sections::questions::Questions;
use crate::sections::sea_trial::SeaTrial;
use crate::sections::uncertainty::HowCertain;
use crate::sections::worksheet::WorksheetForm;
use crate::sections::year::ThroughTheYear;
use crate::state::{AppState, Keeping, count};
use crate::store::{self, Store};
use crate::{arrive, form};
use crate::{share, shelf, units};

/// Every section that is still text, in the order of the page.
pub const LEGACY: [&Section; 5] = [
    &arrive::SECTION,
    &units::SECTION,
    &form::SECTION,
    &shelf::SECTION,
    &share::SECTION,
];

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    let state = AppState::provide();
    // Runs in the browser only, once the printed page was taken over.
    Effect::new(move || {
        let early = browser::early::collect();
        untrack(|| start(state));
        browser::page::say_ready();
        // What is kept, and what lies open, is on the page by then.
        set_timeout(
            || {
                browser::early::enter(early);
                browser::place::restore();
            },
            Duration::ZERO,
        );
    });
    view! {
        <div id="paper">
            <Masthead />
            <Answer />
            <Contents />
            <main>
                <LegacySection of=&arrive::SECTION />
                <div class="columns">
                    <div class="ask">
                        <Questions />
                    </div>
                    <div class="results">
                        <Findings />
                        <HowCertain />
                        <ChargingRun />
                        <OutputBySpeed />
                        <Figures />
                        <ThroughTheYear />
                    </div>
                    <div class="wide">
                        <Arrangements />
                        <GoalSearch />
                        <Installation />
                    </div>
                    <div class="rest">
                        <LegacySection of=&units::SECTION />
                        <WorksheetForm />
                        <SeaTrial />
                        <LegacySection of=&shelf::SECTION />
                        <LegacySection of=&share::SECTION />
                        <Cautions />
                        <Glossary />
                        <Appendix />
                    </div>
                </div>
            </main>
            <Foot />
        </div>
    }
}

/// Brings the printed page to life.
fn start(state: AppState) {
    if let Err(why) = Store::open() {
        state.keeping.set(Keeping::MemoryOnly(why));
    }
    state.is_touched.set(browser::page::is_touched());
    state.preferences.restore();
    state.folds.restore();
    state.settle_after_answer();
    state.follow_uncertainty();
    state.take_last();
    state.take_fragment();
    // A phone may never come back from another app: keep what is waiting.
    for leaving in ["pagehide", "visibilitychange", "blur"] {
        listen(state, leaving, |state, _| store::save_waiting(state));
    }
    listen(state, "pagehide", |_, _| browser::place::remember());
    listen(state, "storage", |state, _| store::look(state));
    listen(state, "hashchange", |state, _| state.take_fragment());
    listen(state, "ampwright:update", |state, _| count(state.aside));
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
    listen(state, "beforeprint", |state, _| state.printing.set(true));
    listen(state, "afterprint", |state, _| state.printing.set(false));
    legacy::start(state, &LEGACY);
}

/// Which build this is, and the page as one file. `boot.js` does the rest; the
/// words in capitals are filled in by `cargo xtask stamp`.
#[component]
fn Foot() -> impl IntoView {
    const COLOPHON: &str = r#"<p>Build <span id="build">BUILD</span>. <span id="offline"></span></p>
<!--served--><p class="buttons"><button type="button" id="aboard" data-js="aboard.js">Keep a copy aboard (one file, about WEIGHT MB)</button> <span class="said" role="status" id="aboard-said"></span></p><!--/served-->"#;
    view! {
        <footer>
            <p>
                "A reckoning from published formulas and your own figures. The battery maker's sheet, local code and a licensed electrician come first."
            </p>
            <div inner_html=COLOPHON></div>
        </footer>
    }
}
