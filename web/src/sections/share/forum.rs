//! The open boat as a text for a forum.

use ampwright_core::exchange::{Style, differences_text, forum_text};
use ampwright_core::units::Reader;
use leptos::prelude::*;

use crate::components::CopyText;
use crate::sections::share::Since;
use crate::state::AppState;

/// The text, marked up as the forum wants it. Who reads it may use other units
/// than this page does, so it keeps to metric ones.
#[component]
pub fn ForumText(link: Signal<String>, since: Since, style: RwSignal<Style>) -> impl IntoView {
    let state = AppState::expect();
    let text = Memo::new(move |_| {
        let certainty = state.uncertainty.certainty();
        let (style, link) = (style.get(), link.read());
        state.settled(|sheet, report| {
            let mut text = forum_text(sheet, report, certainty.as_deref(), &link, style);
            let changes = since.with(|since| {
                let since = since.as_ref().ok()?;
                Some(since.differences(sheet, report, &Reader::METRIC))
            });
            if let Some(changes) = changes.filter(|changes| !changes.is_empty()) {
                text.push('\n');
                text += &differences_text(&changes, style);
            }
            text
        })
    });
    let choice = move |option: Style| {
        view! {
            <label class="tick">
                <input
                    type="radio"
                    name="forum-style"
                    prop:checked=Signal::derive(move || style.get() == option)
                    on:change=move |_| style.set(option)
                />
                {option.word()}
            </label>
        }
    };
    view! {
        <fieldset class="kinds">
            <legend class="unseen">"Written for"</legend>
            {Style::ALL.into_iter().map(choice).collect_view()}
        </fieldset>
        <CopyText
            id="forum-text"
            label="The text"
            is_label_unseen=true
            rows="12"
            text
            button=("Copy the text", "copy-forum")
        />
    }
}
