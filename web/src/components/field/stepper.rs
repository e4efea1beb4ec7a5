//! On a touch screen: two buttons under the entry last touched, which step its
//! figure, and a third for its sign where it may be negative. The core says how
//! far a step goes.

use std::time::Duration;

use ampwright_core::schema::{FieldSpec, Turn};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use crate::components::Button;
use crate::state::AppState;

/// How long a button is held before it repeats, and how often then.
const HOLD: Duration = Duration::from_millis(500);
const AGAIN: Duration = Duration::from_millis(120);

/// The buttons; they stay until another entry is touched, so that nothing moves
/// away from under a thumb.
#[component]
pub fn Stepper(
    of: String,
    spec: &'static FieldSpec,
    step: Callback<bool>,
    turn: Callback<()>,
) -> impl IntoView {
    let label = spec.label;
    let turns = spec.turns().map(|turns| match turns {
        Turn::Sign => ("±", "change the sign"),
        Turn::HalfOfTheGlobe => ("N/S", "north or south"),
    });
    let state = AppState::expect();
    let wanted = Memo::new(move |_| state.is_touched.get() && *state.stepping.read() == of);
    view! {
        <Show when=move || wanted.get()>
            // A long press is a long press here.
            <span class="nudges" on:contextmenu=|event| event.prevent_default()>
                {turns
                    .map(|(says, name)| {
                        view! {
                            <Button
                                says
                                name=format!("{label}: {name}")
                                press=move |()| turn.run(())
                            />
                        }
                    })}
                <StepButton sign="−" name=format!("{label}: less") up=false step />
                <StepButton sign="+" name=format!("{label}: more") up=true step />
            </span>
        </Show>
    }
}

/// One of them: a tap steps once, holding it steps again and again.
#[component]
fn StepButton(sign: &'static str, name: String, up: bool, step: Callback<bool>) -> impl IntoView {
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let repeated = StoredValue::new(false);
    let stop = move || {
        if let Some(Some(timer)) = waiting.try_update_value(Option::take) {
            timer.clear();
        }
    };
    on_cleanup(stop);
    view! {
        <button
            type="button"
            aria-label=name
            on:pointerdown=move |_| {
                stop();
                repeated.set_value(false);
                repeat(HOLD, waiting, repeated, up, step);
            }
            on:pointerup=move |_| stop()
            on:pointercancel=move |_| stop()
            on:pointerleave=move |_| stop()
            on:click=move |_| {
                stop();
                if !repeated.get_value() {
                    step.run(up);
                }
                repeated.set_value(false);
            }
        >
            {sign}
        </button>
    }
}

/// Steps after a while, and again, until the timer is cleared.
fn repeat(
    wait: Duration,
    waiting: StoredValue<Option<TimeoutHandle>>,
    repeated: StoredValue<bool>,
    up: bool,
    step: Callback<bool>,
) {
    let act = move || {
        if repeated.try_get_value().is_some() {
            repeated.set_value(true);
            step.run(up);
            repeat(AGAIN, waiting, repeated, up, step);
        }
    };
    waiting.set_value(set_timeout_with_handle(act, wait).ok());
}
