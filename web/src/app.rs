//! The page from top to bottom.

use leptos::prelude::*;

use crate::components::Later;
use crate::components::explanation::Appendix;
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
                    <Later turn=0 class="results">
                        <Findings />
                        <HowCertain />
                        <ChargingRun />
                        <OutputBySpeed />
                        <Figures />
                        <ThroughTheYear />
                    </Later>
                    <Later turn=1 class="wide">
                        <Arrangements />
                        <GoalSearch />
                        <Installation />
                    </Later>
                    <Later turn=2 class="rest">
                        <Units />
                        <WorksheetForm />
                        <SeaTrial />
                        <SavedBoatsSection />
                        <Share />
                        <Cautions />
                        <Glossary />
                        <Appendix />
                    </Later>
                </div>
            </main>
            <Foot />
        </div>
    }
}
