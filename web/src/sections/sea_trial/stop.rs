//! When to stop: told before the trial begins, and aloud when it is time.

use ampwright_core::decision::calibration::stop::StopLimits;
use ampwright_core::text::sea_trial::{
    BEFORE, STOP_ANYWAY, how_to_stop, stop_line, stop_now, why_stop,
};
use leptos::prelude::*;

use crate::components::Fold;
use crate::state::{AppState, Trial};

/// The limits of the open boat.
pub fn limits(state: AppState) -> Memo<StopLimits> {
    Memo::new(move |_| state.settled(|sheet, report| StopLimits::of(&sheet.inputs, report)))
}

/// The stop line, what else ends a trial, and what is to be done before it.
#[component]
pub fn Stop() -> impl IntoView {
    let state = AppState::expect();
    let limits = limits(state);
    let line = Signal::derive(move || stop_line(&limits.get(), &state.reader.get()));
    let why = Signal::derive(move || why_stop(&limits.get(), &state.reader.get()));
    let how = Signal::derive(move || how_to_stop(limits.get().way).to_string());
    view! {
        <div class="stop-line" id="trial-stop">
            <p>
                <b>{line}</b>
            </p>
            <p class="margin">{why}</p>
            <Fold id="trial-safe" title="How to stop, and before you start">
                <ul class="steps">
                    <li>{how}</li>
                    <li>{STOP_ANYWAY}</li>
                    {BEFORE.map(|step| view! { <li>{step}</li> }).collect_view()}
                </ul>
            </Fold>
        </div>
    }
}

/// Says aloud that a reading is at its limit, the one being typed included.
#[component]
pub fn StopNow() -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let limits = limits(state);
    let said = Memo::new(move |_| {
        let (limits, reader) = (limits.get(), state.reader.get());
        let typed = trial.typed_so_far();
        let causes = trial.with_log(|log| {
            let now = log.now(typed.as_ref());
            now.map_or(Vec::new(), |row| limits.reached(&row))
        });
        let causes = causes.iter();
        causes
            .map(|cause| stop_now(cause, &limits, &reader))
            .collect::<Vec<_>>()
    });
    let told = move || {
        let sentence = |sentence: String| view! { <p>{sentence}</p> };
        said.get().into_iter().map(sentence).collect_view()
    };
    view! {
        <div id="trial-stop-now" role="alert" class="stop-now">
            {told}
        </div>
    }
}
