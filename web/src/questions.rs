//! The short way in.

use ampwright_core::fields::Held;
use ampwright_core::worksheet::{Basis, Key, QUESTIONS, typical_loads};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::field::SheetField;
use crate::loads::Loads;

/// The few questions that give a first honest answer.
#[component]
pub fn Questions() -> impl IntoView {
    let desk = expect_context::<Desk>();
    view! {
        <section class="questions" aria-labelledby="questions-title">
            <h2 id="questions-title">"Your boat in eight questions"</h2>
            <p class="lead">"Answer what you know and leave the rest. The answer above follows each figure."</p>
            <ol>
                {move || {
                    desk.turn.track();
                    QUESTIONS.iter().map(|question| view! {
                        <li>
                            <h3>{question.asks}</h3>
                            {question.keys.iter().filter_map(|name| Key::named(name)).map(|key| view! {
                                <SheetField key place="ask"/>
                            }).collect_view()}
                            {question.keys.contains(&"daily_basis").then(|| view! { <AddUp/> })}
                        </li>
                    }).collect_view()
                }}
            </ol>
        </section>
    }
}

/// "Help me add it up": a list of usual loads to strike out and correct.
#[component]
fn AddUp() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let listed = Memo::new(move |_| {
        desk.sheet
            .with(|sheet| sheet.inputs.daily.basis == Basis::Listed)
    });
    let start = move |_| {
        desk.edit(|sheet| {
            if let Some(key) = Key::named("daily_basis") {
                drop(sheet.state(key, Basis::Listed.to_value()));
            }
            if sheet.loads.is_empty() {
                sheet.loads = typical_loads();
            }
        });
    };
    view! {
        {move || if listed.get() {
            view! { <Loads place="ask"/> }.into_any()
        } else {
            view! {
                <button type="button" id="add-it-up" on:click=start>"Help me add it up"</button>
            }.into_any()
        }}
    }
}
