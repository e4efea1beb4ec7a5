//! What was changed since the boat came here, or against another one.

use leptos::prelude::*;

use crate::components::ChangesTable;
use crate::sections::share::Since;
use crate::state::AppState;
use crate::state::saved_boats::whose;

/// The table, and what it compares with.
#[component]
pub fn Compare(since: Since) -> impl IntoView {
    let state = AppState::expect();
    let found = Memo::new(move |_| {
        let reader = state.reader.get();
        since.with(|since| match since {
            Ok(since) => {
                Ok(state.settled(|sheet, report| since.differences(sheet, report, &reader)))
            }
            Err(why) => Err(why.clone()),
        })
    });
    let others = move || {
        let open = state.saved.number.get();
        let list = state.saved.list.get();
        list.into_iter()
            .filter(|boat| open != Some(boat.number))
            .map(|boat| view! { <option value=boat.number>{boat.title()}</option> })
            .collect_view()
    };
    view! {
        <p class="about">
            "Since this boat came here, or against any other one: results first, then what makes them differ. The text for a forum then tells it too."
        </p>
        <label for="compare-kept">"Compare with one kept here"</label>
        <select
            id="compare-kept"
            on:change:target=move |event| {
                state.comparison.choose_saved(event.target().value().parse().ok());
            }
        >
            <option value="">"–"</option>
            {others}
        </select>
        <label for="compare-link">"Compare with a link"</label>
        <textarea
            id="compare-link"
            rows="2"
            on:input:target=move |event| state.comparison.choose_link(&event.target().value())
        ></textarea>
        <ChangesTable
            id="compare-table"
            was=Signal::derive(move || state.comparison.against())
            is=Signal::derive(move || state.sheet.with(|sheet| format!("{} now", whose(sheet))))
            found
        />
    }
}
