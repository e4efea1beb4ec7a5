//! What may be changed for the goal, to be ticked.

use ampwright_core::boat::{Goal, Key, May};
use ampwright_core::schema::FieldType;
use leptos::prelude::*;

use crate::state::AppState;

/// One box for each kind of change.
#[component]
pub fn Levers() -> impl IntoView {
    view! {
        <fieldset id="goal-levers">
            <legend>"What may be changed"</legend>
            <div id="goal-list">
                {Goal::levers().map(|key| view! { <Lever key /> }).collect_view()}
            </div>
        </fieldset>
    }
}

/// One of them; it is there only where the change makes sense on this boat.
#[component]
fn Lever(key: Key) -> impl IntoView {
    let state = AppState::expect();
    let spec = key.spec();
    let applies = Memo::new(move |_| state.sheet.with(|sheet| key.applies(&sheet.inputs)));
    let may = Memo::new(move |_| {
        let value = state.sheet.with(|sheet| sheet.inputs.get(key));
        value == May::Change.to_value()
    });
    let tick = move |may: bool| {
        let value = if may { May::Change } else { May::Stay }.to_value();
        state.edit(|sheet| drop(sheet.state(key, value)));
    };
    view! {
        <label class="tick" class:hidden=Signal::derive(move || !applies.get())>
            <input
                type="checkbox"
                id=format!("goal-{}", key.name())
                prop:checked=may
                on:change:target=move |event| tick(event.target().checked())
            />
            <span>{spec.label} " " <small>{spec.help}</small></span>
        </label>
    }
}
