//! The words of the trade, in a fold one tap away from the masthead.

use ampwright_core::text::glossary::GLOSSARY;
use leptos::prelude::*;

use crate::browser::page;
use crate::components::Fold;
use crate::state::AppState;

/// The fold's name.
pub const ID: &str = "words";

/// The fold, a list of words and what they mean.
#[component]
pub fn Glossary() -> impl IntoView {
    let state = AppState::expect();
    let go_back = move |_| {
        state.folds.set(ID, false);
        if let Some(place) = state.asked_from.try_update(Option::take).flatten() {
            page::return_to(&place);
        }
    };
    view! {
        <Fold id=ID title="Glossary" class="section" note="what they mean here" printed=false>
            <p class="buttons" class:hidden=Signal::derive(move || state.asked_from.read().is_none())>
                <button type="button" data-back="words" on:click=go_back>
                    "Back to where you were"
                </button>
            </p>
            <dl>
                {GLOSSARY
                    .iter()
                    .map(|entry| view! { <dt>{entry.word}</dt> <dd>{entry.means}</dd> })
                    .collect_view()}
            </dl>
        </Fold>
    }
}

#[cfg(test)]
mod tests {
    use ampwright_core::boat::{SectionId, demo};
    use ampwright_core::exchange::{commissioning_json, settings_json};
    use ampwright_core::guidance::{commissioning, settings};
    use ampwright_core::text::findings;
    use ampwright_core::text::glossary::GLOSSARY;
    use ampwright_core::units::Reader;
    use ampwright_core::{Worksheet, report};

    /// Everything the page says but the glossary, small letters only.
    fn page() -> String {
        let page = crate::prerender::page();
        let (before, rest) = page.split_once("id=\"words\"").unwrap();
        let (_, after) = rest.split_once("</details>").unwrap();
        let mut said = format!("{before}{after}");
        // What lies in a closed fold is not printed.
        for key in SectionId::ALL.iter().flat_map(|section| section.keys()) {
            let spec = key.spec();
            said += &format!("{} {}\n{:?}\n", spec.label, spec.help, spec.kind);
        }
        for sheet in [Worksheet::default(), demo()] {
            let report = report(&sheet);
            said += &format!("{:?}", report.analyses.cables);
            said += &format!("{:?}", report.analyses.belts);
            said += &format!("{:?}", report.analyses.load_dump);
            let reader = &Reader::METRIC;
            said += &settings_json(&settings(&sheet, &report), reader).to_string();
            said += &commissioning_json(&commissioning(&sheet, &report), reader).to_string();
            said += &findings::sentences(&report.findings, reader);
        }
        said.to_lowercase()
    }

    #[test]
    fn every_word_is_used() {
        let said = page();
        let unused: Vec<&str> = GLOSSARY
            .iter()
            .map(|entry| entry.word.split(" (").next().unwrap_or_default())
            .filter(|word| !said.contains(&word.to_lowercase()))
            .collect();
        assert!(unused.is_empty(), "{unused:?}");
    }
}
