//! The short way in: the few questions that give a first honest answer.

use ampwright_core::boat::{QUESTIONS, Question, key};
use leptos::prelude::*;

use crate::components::FieldRow;
use crate::sections::loads::Loads;

/// The section.
#[component]
pub fn Questions() -> impl IntoView {
    let question = |question: &'static Question| {
        let keys = question.keys.iter().copied();
        view! {
            <li>
                <h3>{question.asks}</h3>
                {keys.map(|key| view! { <FieldRow place="ask" key /> }).collect_view()}
                {question
                    .keys
                    .contains(&key!(daily.basis))
                    .then(|| view! { <Loads place="ask" /> })}
            </li>
        }
    };
    view! {
        <section class="questions" aria-labelledby="questions-title">
            <h2 id="questions-title">"Your boat in eight questions"</h2>
            <p class="lead">
                "Answer what you know and leave the rest. The answer above follows each figure."
            </p>
            <ol>{QUESTIONS.iter().map(question).collect_view()}</ol>
        </section>
    }
}
