//! The page from top to bottom.

use leptos::prelude::*;
use leptos::wasm_split::{SplitLoaderError, wasm_split};

use crate::components::Later;
use crate::components::explanation::{Appendix, panel};
use crate::sections::answer::Answer;
use crate::sections::arrangements::Arrangements;
use crate::sections::cautions::Cautions;
use crate::sections::charging_run::ChargingRun;
use crate::sections::contents::Contents;
use crate::sections::entered::AsEntered;
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
use crate::sections::summary::Summary;
use crate::sections::uncertainty::HowCertain;
use crate::sections::units::Units;
use crate::sections::worksheet::WorksheetForm;
use crate::sections::year::ThroughTheYear;
use crate::state::LaterParts;

/// The whole page: columns of a wide screen, one under the other on a phone.
/// [`crate::state::AppState`] is there before it.
#[component]
pub fn App() -> impl IntoView {
    view! {
        <div id="paper">
            <Masthead />
            <Summary />
            <Answer />
            <Contents />
            <main>
                <Notices />
                <div class="columns">
                    <div class="ask">
                        <Questions />
                        <AsEntered />
                    </div>
                    <Later turn=0 class="results" />
                    <Later turn=1 class="wide" />
                    <Later turn=2 class="rest" />
                </div>
            </main>
            <Foot />
        </div>
    }
}

/// Makes the part of the page below the first screen that has this turn.
fn later_part(turn: usize) -> AnyView {
    match turn {
        0 => view! {
            <Findings />
            <HowCertain />
            <ChargingRun />
            <OutputBySpeed />
            <Figures />
            <ThroughTheYear />
        }
        .into_any(),
        1 => view! {
            <Arrangements />
            <GoalSearch />
            <Installation />
        }
        .into_any(),
        _ => view! {
            <Units />
            <WorksheetForm />
            <SeaTrial />
            <SavedBoatsSection />
            <Share />
            <Cautions />
            <Glossary />
            <Appendix />
        }
        .into_any(),
    }
}

/// Makes what is not in the first part of the program.
pub const LATER: LaterParts = LaterParts {
    part: later_part,
    panel,
};

/// The second part of the program, which is fetched when this is first called:
/// whatever nothing but [`LATER`] needs is in it.
///
/// # Errors
/// It did not arrive.
#[wasm_split(later, wasm_split_path = leptos::wasm_split, fallible)]
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code))]
pub fn later_parts() -> Result<LaterParts, SplitLoaderError> {
    Ok(LATER)
}
