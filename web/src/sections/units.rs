//! The units figures are told and filled in in, on this device.

use leptos::prelude::*;

use crate::components::{Button, Fold};
use crate::state::{AppState, UnitChoice};

/// The fold, one list for each kind of quantity.
#[component]
pub fn Units() -> impl IntoView {
    let preferences = AppState::expect().preferences;
    view! {
        <Fold id="units" title="Units" class="units">
            <p class="lead">
                "How figures are told and filled in on this device. Links and files mean the same whatever stands here. W·h are A·h times the bank's system voltage; entries in A·h keep theirs."
            </p>
            <p class="buttons">
                <Button says="Metric" press=move |()| preferences.choose_all(false) />
                <Button says="US units" press=move |()| preferences.choose_all(true) />
            </p>
            <p class="lead">"Or one by one:"</p>
            <div class="choices">
                {UnitChoice::all().map(|choice| view! { <Choice choice /> }).collect_view()}
            </div>
        </Fold>
    }
}

#[component]
fn Choice(choice: UnitChoice) -> impl IntoView {
    let preferences = AppState::expect().preferences;
    let (usual, other) = choice.symbols();
    view! {
        <label for=choice.id()>{choice.name()}</label>
        <select
            id=choice.id()
            on:change:target=move |event| {
                preferences.choose(choice, event.target().value() == "other");
            }
        >
            <option value="" prop:selected=Signal::derive(move || !preferences.is_other(choice))>
                {usual}
            </option>
            <option value="other" prop:selected=Signal::derive(move || preferences.is_other(choice))>
                {other}
            </option>
        </select>
    }
}
