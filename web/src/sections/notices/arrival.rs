//! How the open boat came here: what of a link or a file was understood, how it
//! differs from the boat before, and the way back.

use ampwright_core::exchange::Difference;
use leptos::prelude::*;

use crate::components::{Button, ChangesTable, Fold};
use crate::sections::notices::seen;
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
        <div class=Signal::derive(move || seen(state.arrival.read().is_some(), "notice")) id="arrival">
            <div id="arrival-said" role="status">
                <p>{headline}</p>
                <ul>{remarks}</ul>
            </div>
            <Fold id="changed" title="Show what differs from the one before" applies=has_before>
                <Changes />
            </Fold>
            <p class="buttons">
                <Button
                    says=Signal::derive(move || if has_before.get() { "Keep this one" } else { "Got it" })
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
