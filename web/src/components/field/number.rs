//! An entry for a figure. What is typed stays as typed, "1." and "0,5"
//! included, until the entry is left.

use ampwright_core::schema::{FieldSpec, Kind, Value};
use ampwright_core::text::errors::{input_error, span};
use ampwright_core::units::Other;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use super::Entered;
use super::stepper::Stepper;
use crate::state::{AppState, Refusal, Target};

/// The entry with its unit, the buttons that step it on a touch screen, and
/// what is wrong with what was typed.
#[component]
pub fn NumberEntry(
    id: String,
    target: Target,
    spec: &'static FieldSpec,
    entered: Memo<Entered>,
) -> impl IntoView {
    let state = AppState::expect();
    let other = Memo::new(move |_| spec.unit().and_then(|unit| state.entry_unit(unit)));
    let written = move |value| written(state, spec, other.get(), value);
    let refusal = Memo::new({
        let id = id.clone();
        move |_| state.drafts.refusal(&id)
    });
    // The text while the entry has the cursor, and of which worksheet it is.
    let typing = RwSignal::new(None::<(u32, String)>);
    let text = Signal::derive(move || {
        let typed = typing
            .get()
            .filter(|(opened, _)| *opened == state.opened.get());
        match (typed, refusal.get()) {
            (Some((_, text)), _) | (None, Some(Refusal { text, .. })) => text,
            (None, None) => written(entered.read().value),
        }
    });
    let is_chosen = StoredValue::new(false);
    let id = StoredValue::new(id);
    let read = move |text: String| {
        match spec.read_in(other.get_untracked(), &text) {
            Ok(value) => id.with_value(|id| state.accept(id, target, value)),
            Err(why) => id.with_value(|id| state.refuse(id, target, text.clone(), why)),
        }
        typing.set(Some((state.opened.get_untracked(), text)));
    };
    let leave = move || {
        typing.set(None);
        state.settle(target);
    };
    let step = move |up: bool| {
        let Entered { value, stands_for } = entered.get_untracked();
        let next = spec.step(other.get_untracked(), value, stands_for, up);
        // A step is whole: the next one, and what is typed next, begin from it.
        id.with_value(|id| state.accept(id, target, next));
        leave();
    };
    let turn = move |()| {
        let turned = spec.turned(other.get_untracked(), entered.get_untracked().value);
        id.with_value(|id| state.accept(id, target, turned));
        leave();
    };
    let press = move |event: KeyboardEvent| match event.key().as_str() {
        "ArrowUp" | "ArrowDown" => {
            event.prevent_default();
            step(event.key() == "ArrowUp");
        }
        "Enter" => leave(),
        _ => {}
    };
    let symbol = Signal::derive(move || {
        let Some(unit) = spec.unit() else {
            return String::new();
        };
        if unit.is_money {
            let currency = state.reader.read().currency().unwrap_or_default();
            return format!("{currency}{}", unit.symbol);
        }
        other
            .get()
            .map_or(unit.symbol, |other| other.symbol)
            .to_string()
    });
    let complaint = Signal::derive(move || {
        let Refusal { text, why } = refusal.get()?;
        let value = entered.read().value;
        let used = format!("{} {}", written(value), symbol.get());
        let used = used.trim_end();
        let reader = state.preferences.entries();
        Some(match (text.trim().is_empty(), value) {
            (true, _) => format!(
                "Empty: {used} is used until you enter a figure, {}.",
                span(spec, &reader)
            ),
            (false, Value::Absent) => {
                format!(
                    "{} It counts as left empty until you correct it.",
                    input_error(&why, &reader)
                )
            }
            (false, _) => format!(
                "{} {used} is used until you correct it.",
                input_error(&why, &reader)
            ),
        })
    });
    let stand_in = Signal::derive(move || match spec.kind {
        Kind::Optional { .. } => Some(entered.read().stands_for.map_or_else(
            || "none".to_string(),
            |figure| written(Value::Number((figure * 100.0).round() / 100.0)),
        )),
        _ => None,
    });
    let name = id.get_value();
    view! {
        <span class="entry">
            <input
                aria-describedby=format!("{name}-complaint {name}-help")
                id=name.clone()
                type="text"
                inputmode="decimal"
                autocomplete="off"
                enterkeyhint="done"
                value=text
                prop:value=text
                placeholder=stand_in
                aria-invalid=Signal::derive(move || refusal.read().is_some().to_string())
                on:input:target=move |event| read(event.target().value())
                on:focus:target=move |event| {
                    state.stepping.set(id.get_value());
                    // A tap chooses the whole figure, to be typed over.
                    event.target().select();
                    is_chosen.set_value(true);
                }
                on:mouseup=move |event| {
                    // Letting go would choose nothing again.
                    if is_chosen.try_update_value(std::mem::take) == Some(true) {
                        event.prevent_default();
                    }
                }
                on:blur=move |event| if !still_has_cursor(&event) { leave() }
                on:keydown=press
            />
            <span class="unit">{symbol}</span>
        </span>
        <Stepper of=name.clone() spec step=Callback::new(step) turn=Callback::new(turn) />
        <p class="complaint" id=format!("{name}-complaint") role="alert">
            {complaint}
        </p>
    }
}

/// A value as its entry shows it: in the reader's unit, with the reader's
/// decimal sign.
fn written(state: AppState, spec: &FieldSpec, other: Option<Other>, value: Value) -> String {
    let text = spec.write_in(other, value);
    match state.preferences.has_decimal_comma() {
        true => text.replace('.', ","),
        false => text,
    }
}

/// Whether the whole window lost the focus, not the entry: the typing may go on.
fn still_has_cursor(event: &leptos::ev::FocusEvent) -> bool {
    let entry = event.target();
    let active = document().active_element();
    active.is_some_and(|active| entry.is_some_and(|entry| entry == active.into()))
}
