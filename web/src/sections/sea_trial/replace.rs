//! Nothing takes the place of readings unasked.

use ampwright_core::text::sea_trial::ask_to_replace;
use leptos::prelude::*;

use crate::components::Button;
use crate::state::{Replacement, Trial};

/// The question, while it is asked.
#[component]
pub fn Replace() -> impl IntoView {
    let trial = Trial::expect();
    let asks = Memo::new(move |_| trial.asked.read().is_some());
    let question = Signal::derive(move || {
        let count = trial.count();
        trial
            .asked
            .get()
            .map(|with| ask_to_replace(count, with == Replacement::Nothing))
    });
    let replaces = Signal::derive(move || match trial.asked.get() {
        Some(Replacement::Nothing) => "Delete them".to_string(),
        _ => "Replace them".to_string(),
    });
    let agree = move |()| {
        if let Some(with) = trial.asked.get_untracked() {
            trial.replace_now(with);
        }
    };
    view! {
        <div
            class="notice"
            class:hidden=Signal::derive(move || !asks.get())
            id="trial-asks"
            role="alertdialog"
            aria-labelledby="trial-question"
        >
            <p id="trial-question">{question}</p>
            <p class="buttons">
                <Button says="Keep mine" press=move |()| trial.asked.set(None) />
                <Button says=replaces press=agree />
            </p>
        </div>
    }
}
