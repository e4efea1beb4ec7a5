//! An entry for one of a few options.

use ampwright_core::schema::{Choice, FieldSpec, Value};
use leptos::prelude::*;

use super::Entered;
use crate::state::{AppState, Target};

/// A list of options; a choice is in force at once.
#[component]
pub fn ChoiceEntry(
    id: String,
    target: Target,
    spec: &'static FieldSpec,
    options: &'static [Choice],
    entered: Memo<Entered>,
) -> impl IntoView {
    let state = AppState::expect();
    let choose = {
        let id = id.clone();
        move |key: String| {
            if let Ok(value) = spec.read(&key) {
                state.accept(&id, target, value);
                state.settle(target);
            }
        }
    };
    let first = entered.get_untracked().value;
    view! {
        <select
            aria-describedby=format!("{id}-help")
            id=id
            prop:value=Signal::derive(move || spec.write(entered.read().value))
            on:change:target=move |event| choose(event.target().value())
        >
            {options
                .iter()
                .enumerate()
                .map(|(at, option)| {
                    let chosen = first == Value::Choice(at);
                    view! { <option value=option.key selected=chosen>{option.label}</option> }
                })
                .collect_view()}
        </select>
    }
}
