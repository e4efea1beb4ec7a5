//! The page from top to bottom.

use leptos::prelude::*;

use crate::browser;
use crate::legacy::{self, LegacySection, Section, listen};
use crate::sections::cautions::Cautions;
use crate::sections::contents::Contents;
use crate::sections::findings::Findings;
use crate::sections::glossary::Glossary;
use crate::sections::installation::Installation;
use crate::sections::masthead::Masthead;
use crate::sections::questions::Questions;
use crate::sections::sea_trial::SeaTrial;
use crate::sections::uncertainty::HowCertain;
use crate::sections::worksheet::WorksheetForm;
use crate::sections::year::ThroughTheYear;
use crate::state::{AppState, Keeping, count};
use crate::store::{self, Store};
use crate::{answer, arrange, arrive, chart, figures, form};
use crate::{goal, own, share, shelf, units, working};

/// Every section that is still text, in the order of the page.
pub const LEGACY: [&Section; 13] = [
    &answer::SECTION,
    &arrive::SECTION,
    &chart::RUN,
    &chart::SPEED,
    &figures::SECTION,
    &arrange::SECTION,
    &own::SECTION,
    &goal::SECTION,
    &units::SECTION,
    &form::SECTION,
    &shelf::SECTION,
    &share::SECTION,
    &working::SECTION,
];

/// The whole page. Its entries are of no use until the worksheet has started;
/// `boot.js` enables them.
#[component]
pub fn App() -> impl IntoView {
    let state = AppState::provide();
    // Runs in the browser only, once the printed page was taken over.
    Effect::new(move || start(state));
    view! {
        <fieldset id="paper" role="none" disabled>
            <Masthead />
            <LegacySection of=&answer::SECTION />
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
                        <LegacySection of=&chart::RUN />
                        <LegacySection of=&chart::SPEED />
                        <LegacySection of=&figures::SECTION />
                        <ThroughTheYear />
                    </div>
                    <div class="wide">
                        <LegacySection of=&arrange::SECTION />
                        <LegacySection of=&own::SECTION />
                        <LegacySection of=&goal::SECTION />
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
                        <LegacySection of=&working::SECTION />
                    </div>
                </div>
            </main>
            <Foot />
        </fieldset>
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
    listen(state, "storage", |state, _| store::look(state));
    listen(state, "hashchange", |state, _| state.take_fragment());
    listen(state, "ampwright:update", |state, _| count(state.aside));
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
