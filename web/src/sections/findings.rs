//! Warnings and notes, worst first, and what nobody has answered yet.

use ampwright_core::boat::Key;
use ampwright_core::findings::{Finding, Severity};
use ampwright_core::text;
use leptos::prelude::*;

use crate::components::EntryLink;
use crate::state::AppState;

/// The section.
#[component]
pub fn Findings() -> impl IntoView {
    let state = AppState::expect();
    let found = Memo::new(move |_| state.now(|_, report| said(state, &report.findings)));
    let questions = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let open = report.questions.iter();
            open.map(|question| (text::question(question, &reader), question.input()))
                .collect::<Vec<_>>()
        })
    });
    let question = |(text, input): (String, Key)| {
        view! {
            <li>
                {text} " " <EntryLink to=format!("sheet-{}", input.name())>"Enter it"</EntryLink>
            </li>
        }
    };
    view! {
        <section class="findings" id="findings" aria-labelledby="findings-title">
            <h2 id="findings-title">"Warnings and notes"</h2>
            <p class="lead" class:hidden=Signal::derive(move || !found.read().is_empty())>
                "Nothing stands out in these figures."
            </p>
            <FindingList id="findings-list" found />
            <div class:hidden=Signal::derive(move || questions.read().is_empty()) id="open-questions">
                <h3>"Still to find out"</h3>
                <ul class="ask-once">
                    {move || questions.get().into_iter().map(question).collect_view()}
                </ul>
            </div>
        </section>
    }
}

/// A finding as it is said, and the input that it asks for.
pub type Said = (Severity, String, Option<Key>);

/// Findings as they are said to this reader.
pub fn said<'a>(state: AppState, found: impl IntoIterator<Item = &'a Finding>) -> Vec<Said> {
    let reader = state.reader.get();
    found
        .into_iter()
        .map(|finding| {
            let sentence = text::findings::sentence(finding, &reader);
            (finding.severity(), sentence, finding.asks_for())
        })
        .collect()
}

/// Findings as a list, each with its severity.
#[component]
pub fn FindingList(
    found: Memo<Vec<Said>>,
    #[prop(optional)] id: Option<&'static str>,
    #[prop(optional)] class: &'static str,
) -> impl IntoView {
    let item = |(severity, sentence, asks_for): Said| {
        let entry = asks_for.map(|input| {
            view! { " " <EntryLink to=format!("sheet-{}", input.name())>"Enter it"</EntryLink> }
        });
        view! {
            <li class=class_of(severity)>
                <span class="severity">{text::words::severity(severity)}</span>
                <span>{sentence} {entry}</span>
            </li>
        }
    };
    view! { <ul id=id class=class>{move || found.get().into_iter().map(item).collect_view()}</ul> }
}

/// The style a severity is shown in.
pub const fn class_of(severity: Severity) -> &'static str {
    match severity {
        Severity::Danger => "danger",
        Severity::Fix => "fix",
        Severity::Note => "note",
    }
}
