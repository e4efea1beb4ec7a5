//! The clock since the engine started.

use ampwright_core::text::sea_trial::engine_clock;
use leptos::prelude::*;

use crate::components::Button;
use crate::state::{Replacement, Trial};

/// Starts the clock, shows it, and stops it.
#[component]
pub fn EngineClock() -> impl IntoView {
    let trial = Trial::expect();
    let was_started = Signal::derive(move || trial.was_started());
    let runs = Signal::derive(move || trial.is_running());
    let time = Memo::new(move |_| trial.elapsed_min().map(engine_clock));
    view! {
        <p class="buttons engine-clock">
            <Button
                says="Engine started"
                id="trial-start"
                hidden=was_started
                press=move |()| trial.start_clock()
            />
            <span id="trial-clock">{time}</span>
            <Button
                says="Stop the clock"
                class="plain"
                hidden=Signal::derive(move || !runs.get())
                press=move |()| trial.stop_clock()
            />
            <Button
                says="Let the clock go on"
                hidden=Signal::derive(move || runs.get() || !was_started.get())
                press=move |()| trial.resume_clock()
            />
            <Button
                says="New trial"
                class="plain"
                hidden=Signal::derive(move || runs.get() || !was_started.get() && trial.count() == 0)
                press=move |()| trial.replace(Replacement::Nothing)
            />
        </p>
    }
}
