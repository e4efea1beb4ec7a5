//! The model is fitted to the readings, and the boat takes over what they tell.

use std::sync::Arc;

use ampwright_core::Worksheet;
use ampwright_core::decision::calibration::apply;
use ampwright_core::text::sea_trial::EXAMPLE_READINGS;
use leptos::prelude::*;

use super::outcome::{Found, Outcome, OutcomeShown};
use crate::components::Button;
use crate::state::{AppState, Trial};

/// Stands above the fit of a boat that has changed.
const EARLIER: &str = "You have changed the boat since this fit: the figures below rest on your earlier ones. Fit the model again.";

/// The button, what came of it, and the button that takes it over.
#[component]
pub fn FitToReadings() -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let fitted = RwSignal::new(None::<Arc<Outcome>>);
    // What was found belongs to the boat and the readings it was found with.
    let outcome = Memo::new_with_compare(
        move |_| {
            let opened = state.opened.get();
            let outcome = fitted.get()?;
            let stands = outcome.opened == opened && trial.with_log(|log| outcome.is_of(log));
            stands.then_some(outcome)
        },
        |_, _| true,
    );
    let taken = RwSignal::new(false);
    let fit = move |()| {
        taken.set(false);
        let found = untrack(|| trial.with_log(|log| Outcome::of(state, log)));
        fitted.set(Some(Arc::new(found)));
    };
    let take = move |()| {
        if let Some(Found::Fit { fit, .. }) = outcome.get_untracked().as_deref().map(|o| &o.found) {
            state.can_undo("Values of the sea trial used");
            state.edit(|sheet| apply(sheet, fit));
            taken.set(true);
        }
    };
    let is_there = Memo::new(move |_| outcome.read().is_some());
    let is_fit = Memo::new(move |_| {
        let outcome = outcome.read();
        matches!(outcome.as_deref(), Some(outcome) if outcome.found.is_fit())
    });
    let is_stale = Memo::new(move |_| {
        let outcome = outcome.read();
        outcome.as_deref().is_some_and(|outcome| {
            let stands = |sheet: &Worksheet| outcome.stands_for(&sheet.inputs);
            !state.sheet.with(stands)
        })
    });
    let example = Signal::derive(move || trial.is_example().then(|| EXAMPLE_READINGS.to_string()));
    view! {
        <p class="margin" id="trial-example">
            {example}
        </p>
        <p class="buttons">
            <Button
                says="Fit the model"
                id="trial-fit"
                disabled=Signal::derive(move || trial.count() == 0)
                press=fit
            />
        </p>
        <p class="told" role="status" id="trial-of-earlier">
            {move || is_stale.get().then_some(EARLIER)}
        </p>
        <div id="trial-outcome" role="status">
            <Show when=move || is_there.get()>
                {move || outcome.get().map(|outcome| view! { <OutcomeShown outcome /> })}
            </Show>
        </div>
        <div id="trial-take">
            <Show when=move || is_fit.get()>
                <p class="buttons">
                    <Button
                        says="Use these values"
                        id="trial-use"
                        disabled=Signal::derive(move || taken.get() || is_stale.get())
                        press=take
                    />
                    " "
                    <span class="said" role="status">
                        {move || {
                            taken.get().then_some("Your boat has them now, marked as measured.")
                        }}
                    </span>
                </p>
            </Show>
        </div>
    }
}
