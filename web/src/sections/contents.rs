//! The table of contents, at the lower right edge like the thumb index of an
//! almanac: in reach wherever one reads.

use leptos::prelude::*;

use crate::state::AppState;

/// Places of the page, in its order on a phone: an id, and its name.
const PLACES: [(&str, &str); 17] = [
    ("questions-title", "Eight questions"),
    ("findings-title", "Warnings and notes"),
    ("sure-title", "How certain is this?"),
    ("chart-title", "The charging run"),
    ("speed-title", "Amperes by speed"),
    ("figures-title", "Figures"),
    ("year-title", "Through the year"),
    ("arrange-title", "Which arrangement"),
    ("goal-title", "Cheapest way"),
    ("fit-title", "Fit it safely"),
    ("units", "Units"),
    ("form-title", "The worksheet"),
    ("trial-title", "Sea trial"),
    ("shelf-title", "Saved boats"),
    ("share-title", "Share and print"),
    ("cautions-title", "Cautions"),
    ("words", "Words"),
];

/// A button that shows the list above the page, and the list.
#[component]
pub fn Contents() -> impl IntoView {
    let state = AppState::expect();
    let place = |(id, name): (&'static str, &'static str)| {
        view! {
            <li>
                <button
                    type="button"
                    class="plain"
                    data-to=id
                    popovertarget="contents"
                    popovertargetaction="hide"
                    on:click=move |_| state.show_place(id)
                >
                    {name}
                </button>
            </li>
        }
    };
    view! {
        <button type="button" class="thumb" popovertarget="contents">
            "Contents"
        </button>
        <nav class="contents" id="contents" popover aria-label="Contents">
            <ol>{PLACES.map(place).collect_view()}</ol>
        </nav>
    }
}

#[cfg(test)]
mod tests {
    use super::PLACES;

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
