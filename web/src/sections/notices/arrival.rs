//! How the open boat came here: what of a link or a file was understood, how it
//! differs from the boat before, and the way back.

use ampwright_core::exchange::Difference;
use leptos::prelude::*;

use crate::components::{Button, ChangesTable, Fold};
use crate::state::saved_boats::SavedBoat;
use crate::state::{AppState, Earlier};

/// The notice.
#[component]
pub fn ArrivalNotice() -> impl IntoView {
    let state = AppState::expect();
    let headline = Signal::derive(move || {
        let arrival = state.arrival.read();
        arrival.as_ref().map(|arrival| arrival.headline.clone())
    });
    let remarks = move || {
        let arrival = state.arrival.get();
        let remarks = arrival.map_or(Vec::new(), |arrival| arrival.remarks);
        let remark = |remark| view! { <li>{remark}</li> };
        remarks.into_iter().map(remark).collect_view()
    };
    let has_before = Signal::derive(move || state.comparison.before.read().is_some());
    view! {
        <div class="notice" class:hidden=Signal::derive(move || state.arrival.read().is_none()) id="arrival">
            <div id="arrival-said" role="status">
                <p>{headline}</p>
                <ul>{remarks}</ul>
            </div>
            <Own />
            <Fold id="changed" title="Show what differs from the one before" applies=has_before>
                <Changes />
            </Fold>
            <p class="buttons">
                <Button
                    says=Signal::derive(move || if has_before.get() { "Keep this one" } else { "Got it" }.to_string())
                    id="keep-copy"
                    press=move |()| state.dismiss_arrival()
                />
                <Button
                    says="Back to mine"
                    id="back-to-mine"
                    hidden=Signal::derive(move || !has_before.get())
                    press=move |()| state.return_to_before()
                />
            </p>
        </div>
    }
}

/// Asks which of the boats kept here a boat that came by a link is meant for:
/// what it changes there is a proposal, and no reading.
#[component]
fn Own() -> impl IntoView {
    let state = AppState::expect();
    let others = Memo::new(move |_| {
        let open = state.saved.number.get();
        let mut list = state.saved.list.get();
        list.retain(|boat| open != Some(boat.number) && boat.name.is_some());
        list
    });
    let by_link = Signal::derive(move || {
        let arrival = state.arrival.read();
        arrival.as_ref().is_some_and(|arrival| arrival.by_link)
    });
    let is_asked = Memo::new(move |_| by_link.get() && !others.read().is_empty());
    let own = state.comparison.proposal_for;
    let option = move |boat: SavedBoat| {
        let number = boat.number;
        view! {
            <option value=number prop:selected=move || own.get() == Some(number)>
                {boat.title()}
            </option>
        }
    };
    view! {
        <div class="own-boat" class:hidden=Signal::derive(move || !is_asked.get())>
            <label for="proposal-for">"Is it one of your boats, with changes somebody proposes?"</label>
            <select
                id="proposal-for"
                on:change:target=move |event| state.choose_own(event.target().value().parse().ok())
            >
                <option value="" prop:selected=move || own.get().is_none()>
                    "No, it is another boat"
                </option>
                {move || others.get().into_iter().map(option).collect_view()}
            </select>
            <p class="margin">
                {move || own.get().map(|_| PROPOSED)}
            </p>
        </div>
    }
}

/// What happens to figures of somebody else's.
const PROPOSED: &str = "Facts that differ from your boat's are marked “proposed”, and count as guesses until you check them aboard and say how well you know them.";

/// How the open boat differs from the one before.
#[component]
fn Changes() -> impl IntoView {
    let state = AppState::expect();
    // Worked out once for a boat, not at every keystroke.
    let before = Memo::new_with_compare(
        move |_| {
            let before = state.comparison.before.get();
            before.map(|before| Earlier::new(before.sheet.clone()))
        },
        |_, _| true,
    );
    let found = Memo::new(move |_| {
        let reader = state.reader.get();
        Ok(before.with(|before| match before {
            Some(before) => {
                state.settled(|sheet, report| before.differences(sheet, report, &reader))
            }
            None => Vec::<Difference>::new(),
        }))
    });
    view! { <ChangesTable id="changed-table" was="The boat before" is="The boat that came" found /> }
}
