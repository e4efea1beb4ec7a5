//! The arrangements one by one: cards to swipe on a narrow screen; what is to
//! be bought for each, and what can be done with it.

use crate::components::Button;
use ampwright_core::boat::Arrangement;
use ampwright_core::decision::arrangements::{Outcome, Role};
use ampwright_core::text::arrangements::{changes, name};
use ampwright_core::text::findings;
use ampwright_core::units::Reader;
use leptos::prelude::*;

use super::costs::Costs;
use super::rows::JudgedRow;
use super::table::{Cell, role};
use super::{Compared, custom, letter};
use crate::browser::page;
use crate::state::saved_boats::title;
use crate::state::{AppState, Arrival};

/// Each on a card of its own.
#[component]
pub fn Cards<'a>(
    outcomes: &'a [Outcome],
    rows: &'a [JudgedRow],
    reader: &'a Reader,
    compared: Compared,
) -> impl IntoView + use<> {
    let card = |(at, outcome): (usize, &Outcome)| {
        let line = |row: &JudgedRow| {
            let (text, judged) = row.cells.get(at)?.clone();
            Some(view! {
                <div>
                    <dt>{row.title}</dt>
                    <dd>
                        <Cell text judged />
                    </dd>
                </div>
            })
        };
        view! {
            <article aria-label=format!("{} {}", letter(at), name(outcome))>
                <h3>
                    <i>{letter(at)}</i>
                    " "
                    {name(outcome).to_string()}
                    {role(outcome.role).map(|role| view! { " " <small>{role}</small> })}
                </h3>
                <Harm outcome reader />
                <dl>{rows.iter().map(line).collect_view()}</dl>
                <Costs at outcome reader compared />
                <Changes outcome reader />
                {matches!(outcome.role, Role::Proposed | Role::Own)
                    .then(|| view! { <Choose at arrangement=named(outcome) /> })}
            </article>
        }
    };
    view! {
        <p class="about swipe">
            {format!("{} arrangements: swipe sideways for the next one.", outcomes.len())}
        </p>
        <div
            class="cards"
            id="arrange-cards"
            tabindex="0"
            role="region"
            aria-label="The arrangements one by one"
        >
            {outcomes.iter().enumerate().map(card).collect_view()}
        </div>
    }
}

/// What speaks against an arrangement, before anything else.
#[component]
fn Harm<'a>(outcome: &'a Outcome, reader: &'a Reader) -> impl IntoView + use<> {
    (!outcome.harm.is_empty()).then(|| {
        view! {
            <p class="told">
                <small class="worst">"not safe"</small>
                " "
                {findings::sentences(&outcome.harm, reader)}
            </p>
        }
    })
}

/// Inputs that differ from the worksheet.
#[component]
fn Changes<'a>(outcome: &'a Outcome, reader: &'a Reader) -> impl IntoView + use<> {
    let changes = changes(outcome, reader);
    (!changes.is_empty()).then(|| view! { <p class="margin">{changes.join("; ")} "."</p> })
}

/// An arrangement under what it is called.
fn named(outcome: &Outcome) -> Arrangement {
    Arrangement {
        name: name(outcome).to_string(),
        ..outcome.arrangement.clone()
    }
}

/// What can be done with an arrangement.
#[component]
fn Choose(at: usize, arrangement: Arrangement) -> impl IntoView {
    let state = AppState::expect();
    let arrangement = StoredValue::new(arrangement);
    view! {
        <p class="buttons">
            <Button
                says="Save as a new boat"
                id=format!("way-use-{at}")
                press=move |()| arrangement.with_value(|chosen| set_up(state, chosen))
            />
            <Button
                says="Edit as my own arrangement"
                id=format!("way-copy-{at}")
                class="plain"
                press=move |()| custom::add(state, arrangement.get_value())
            />
        </p>
    }
}

/// Opens a copy of the worksheet that is set up like an arrangement; the one it
/// came from is kept.
fn set_up(state: AppState, chosen: &Arrangement) {
    state.save_waiting();
    let mut sheet = state.sheet.with_untracked(|sheet| chosen.on(sheet));
    sheet.name = format!("{}: {}", title(&sheet.name), chosen.name);
    let arrival = Arrival::of(
        "This is a copy, set up the other way. The boat it came from is kept as it was.",
    );
    state.open(sheet, None, Some(arrival));
    state.save_soon();
    page::to_top();
}
