//! The panel of an explanation.

use crate::components::Button;
use ampwright_core::explain::{Working, name, working_at};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use super::steps::steps;
use crate::state::{AppState, Explain, ExplainedAt, PANEL};

/// Where the explanation of the wanted figure lies open.
pub fn panel(at: ExplainedAt, explain: Option<Explain>) -> AnyView {
    let state = AppState::expect();
    let explain =
        explain.unwrap_or_else(|| Callback::new(move |id: &'static str| of_open_boat(state, id)));
    view! { <Panel at explain /> }.into_any()
}

/// How a figure of the open boat came about.
fn of_open_boat(state: AppState, id: &str) -> Option<Working> {
    let minute = state.moment().map_or(0.0, |moment| moment.minute);
    state.settled(|sheet, report| working_at(sheet, report, minute, id))
}

/// What a figure is, how it came about, and the ways back and on. Escape
/// closes it.
#[component]
fn Panel(at: ExplainedAt, explain: Explain) -> impl IntoView {
    let state = AppState::expect();
    let open = state.explanations;
    let made = Memo::new(move |_| open.shown().and_then(|id| explain.run(id)));
    let title = Signal::derive(move || {
        let reader = state.reader.get();
        made.with(|made| match made {
            Some(made) => {
                let figure = made.shown(&reader).unwrap_or_else(|| "this".to_string());
                format!("How {figure} came about")
            }
            None => "There is no such figure now".to_string(),
        })
    });
    let close_at_escape = move |event: KeyboardEvent| {
        if event.key() == "Escape" {
            open.close();
        }
    };
    let back = move |before: &'static str| {
        let name = name(before);
        view! {
            <Button
                says=format!("‹ {name}")
                id="working-back"
                class="plain"
                name=format!("Back to: {name}")
                press=move |()| open.back()
            />
        }
    };
    view! {
        <div
            class="working"
            id=PANEL
            role="region"
            aria-labelledby="working-title"
            tabindex="-1"
            on:keydown=close_at_escape
        >
            <div class="trail">
                {move || open.before().map(back)}
                <Button
                    says="close"
                    id="working-close"
                    class="plain"
                    name="Close the working"
                    press=move |()| open.close()
                />
            </div>
            <p class="what">{Signal::derive(move || open.shown().map(name))}</p>
            <p class="title" id="working-title">
                {title}
            </p>
            {move || made.get().map(|made| steps(state, made, Some(at)))}
        </div>
    }
}
