//! The sea trial: readings of a real run are typed aboard, one by one, or pasted
//! as a log; the model is fitted to them, and the boat takes over what they
//! tell.

mod clock;
mod course;
mod drawing;
mod entry;
mod fit;
mod outcome;
mod paste;
mod plan;
mod readings;
mod replace;
mod stop;
mod stopped;

use ampwright_core::guidance::CautionTopic;
use ampwright_core::text::calibration::HOW_TO;
use leptos::prelude::*;

use crate::components::{Caution, Fold};
use crate::state::{AppState, Trial};
use clock::EngineClock;
use course::Course;
use entry::ReadingEntry;
use fit::FitToReadings;
use paste::PasteLog;
use readings::Readings;
use replace::Replace;
use stop::{Stop, StopNow};
use stopped::ByResistance;

/// The section.
#[component]
pub fn SeaTrial() -> impl IntoView {
    Trial::provide(AppState::expect());
    view! {
        <section class="trial" id="trial" aria-labelledby="trial-title">
            <h2 id="trial-title">"Sea trial"</h2>
            <p class="lead">
                "Half an hour with a thermometer makes the hot figures yours: the model is fitted to your readings."
            </p>
            <Caution topic=CautionTopic::Heat />
            <Fold id="trial-how" title="How to take the readings">
                <ol class="steps">{HOW_TO.map(|step| view! { <li>{step}</li> }).collect_view()}</ol>
            </Fold>
            <Stop />
            <StopNow />
            <div class="aboard">
                <div>
                    <EngineClock />
                    <ReadingEntry />
                </div>
                <Course />
            </div>
            <Readings />
            <ByResistance />
            <PasteLog />
            <Replace />
            <FitToReadings />
        </section>
    }
}
