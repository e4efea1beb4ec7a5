//! What was entered, for paper only: in words, without the entries and without
//! what nobody said.

use ampwright_core::exchange::{EnteredPart, entered};
use leptos::either::Either;
use leptos::prelude::*;

use crate::state::AppState;

/// The section; it is there only while the page is printed.
#[component]
pub fn AsEntered() -> impl IntoView {
    let state = AppState::expect();
    move || state.printing.get().then(|| view! { <Entered /> })
}

#[component]
fn Entered() -> impl IntoView {
    let state = AppState::expect();
    let reader = state.reader.get_untracked();
    let parts = state.glance(|sheet, _| entered(sheet, &reader));
    let part = |part: EnteredPart| {
        let line = |(label, value): (String, String)| {
            view! {
                <li>
                    {label} ": " <b>{value}</b>
                </li>
            }
        };
        view! {
            <div>
                <h3>{part.title}</h3>
                <ul>{part.lines.into_iter().map(line).collect_view()}</ul>
            </div>
        }
    };
    let told = match parts.is_empty() {
        true => Either::Left(view! {
            <p>"Nothing was entered: every figure is that of the example."</p>
        }),
        false => Either::Right(view! {
            <div class="parts">{parts.into_iter().map(part).collect_view()}</div>
            <p class="about">"Whatever is not listed is a guess or a default."</p>
        }),
    };
    view! {
        <section class="entered" id="entered">
            <h2>"As entered"</h2>
            {told}
        </section>
    }
}
