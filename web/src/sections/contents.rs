//! A bar at the foot of the screen, in reach wherever one reads: the table of
//! contents, and the last step to be taken back.

use leptos::prelude::*;

use crate::components::Button;
use crate::state::{AppState, CONTENTS, PLACES};

/// A button that shows the list above the page, and the list.
#[component]
pub fn Contents() -> impl IntoView {
    let state = AppState::expect();
    let place = |(id, name): (&'static str, &'static str)| {
        view! {
            <li>
                <a href=format!("#{id}") on:click=move |_| state.choose_place(id)>
                    {name}
                </a>
            </li>
        }
    };
    view! {
        <div class="footbar">
            <button type="button" class="plain" popovertarget=CONTENTS>
                "Contents"
            </button>
            <TakeBack />
            <a href="#summary">"Top"</a>
        </div>
        <nav class="contents" id=CONTENTS popover aria-label="Contents">
            <ol>{PLACES.map(place).collect_view()}</ol>
        </nav>
    }
}

/// What was done last, and the way to take it back.
#[component]
fn TakeBack() -> impl IntoView {
    let state = AppState::expect();
    let says = Memo::new(move |_| state.undo.says());
    view! {
        <p
            class="done"
            class:hidden=Signal::derive(move || says.read().is_none())
            id="undo-place"
            role="status"
        >
            <span id="gone">{says}</span>
            <Button says="Undo" id="undo" class="plain" press=move |()| state.take_back() />
        </p>
    }
}

#[cfg(test)]
mod tests {
    use crate::state::PLACES;

    /// Every place is on the page, and every chapter of the page in the list.
    #[test]
    fn nothing_is_missing() {
        let page = crate::prerender::page();
        for (id, _) in PLACES {
            assert!(page.contains(&format!("id=\"{id}\"")), "{id}");
        }
        for chapter in page.split("<h2 id=\"").skip(1) {
            let id = chapter.split('"').next().unwrap_or_default();
            assert!(PLACES.iter().any(|(place, _)| *place == id), "{id}");
        }
    }
}
