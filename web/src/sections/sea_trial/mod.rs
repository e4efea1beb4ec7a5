//! The sea trial: readings of a real run are pasted, the model is fitted to
//! them, and the worksheet takes over what they tell.

mod drawing;
mod outcome;

use std::sync::Arc;

use ampwright_core::decision::calibration::{SAMPLE, apply};
use ampwright_core::guidance::CautionTopic;
use ampwright_core::text::calibration::HOW_TO;
use leptos::prelude::*;

use crate::components::{Button, Caution, Fold};
use crate::state::AppState;
use outcome::{Found, Outcome, OutcomeShown};

/// The section.
#[component]
pub fn SeaTrial() -> impl IntoView {
    let state = AppState::expect();
    let log = RwSignal::new(String::new());
    let fitted = RwSignal::new(None::<Arc<Outcome>>);
    // A log belongs to the worksheet it was fitted to.
    let outcome = Memo::new_with_compare(
        move |_| {
            let opened = state.opened.get();
            fitted.get().filter(|outcome| outcome.opened == opened)
        },
        |_, _| true,
    );
    let taken = RwSignal::new(false);
    let fit = move |_| {
        taken.set(false);
        fitted.set(Some(Arc::new(Outcome::of(state, &log.read_untracked()))));
    };
    let take = move |_| {
        if let Some(Found::Fit { fit, .. }) = outcome.get_untracked().as_deref().map(|o| &o.found) {
            state.edit(|sheet| apply(sheet, fit));
            taken.set(true);
        }
    };
    let is_there = Memo::new(move |_| outcome.read().is_some());
    let is_fit = Memo::new(move |_| {
        let outcome = outcome.read();
        matches!(outcome.as_deref(), Some(outcome) if outcome.found.is_fit())
    });
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
            <label for="trial-log">
                "Your readings"
                <small>
                    "a line each: minute, amps, case °C, air °C, rpm, volts; or your own order under headings"
                </small>
            </label>
            <textarea
                id="trial-log"
                rows="7"
                spellcheck="false"
                autocomplete="off"
                prop:value=log
                on:input:target=move |event| log.set(event.target().value())
            ></textarea>
            <p class="buttons">
                <Button
                    says="Fit the model"
                    id="trial-fit"
                    disabled=Signal::derive(move || log.read().trim().is_empty())
                    press=fit
                />
                <Button
                    says="Fill in an example log"
                    id="trial-sample"
                    class="plain"
                    press=move |()| log.set(SAMPLE.to_string())
                />
            </p>
            <div id="trial-outcome" role="status">
                <Show when=move || is_there.get()>
                    {move || outcome.get().map(|outcome| view! { <OutcomeShown outcome /> })}
                </Show>
            </div>
            <div id="trial-take">
                <Show when=move || is_fit.get()>
                    <p class="buttons">
                        <Button says="Use these values" id="trial-use" disabled=taken press=take />
                        " "
                        <span class="said" role="status">
                            {move || {
                                taken.get().then_some("The worksheet has them, marked as measured.")
                            }}
                        </span>
                    </p>
                </Show>
            </div>
        </section>
    }
}
