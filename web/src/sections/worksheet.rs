//! Every input, section by section.

use ampwright_core::boat::{Inputs, Key, SectionId};
use ampwright_core::schema::Place;
use leptos::prelude::*;

use crate::components::{FieldRow, Fold};
use crate::sections::loads::Loads;
use crate::state::AppState;

/// The section.
#[component]
pub fn WorksheetForm() -> impl IntoView {
    view! {
        <section class="sheet" aria-labelledby="form-title">
            <h2 id="form-title">"All inputs"</h2>
            <p class="lead">
                "Every figure the answer rests on. What nobody has vouched for is marked a guess; each one you replace makes the answer yours."
            </p>
            {SectionId::ALL.iter().map(|id| view! { <Part of=*id /> }).collect_view()}
        </section>
    }
}

/// Inputs of a section that stand in one place.
fn inputs(section: SectionId, place: Place) -> impl Iterator<Item = Key> {
    section.keys().filter(move |key| key.spec().place == place)
}

/// A section of the worksheet, its finer points apart.
#[component]
fn Part(of: SectionId) -> impl IntoView {
    let state = AppState::expect();
    let prefix = of.prefix();
    let known = Signal::derive(move || {
        state
            .sheet
            .with(|sheet| known(of, |key| sheet.is_said(key)))
    });
    let any = move |keys: fn(SectionId) -> Vec<Key>| {
        let matters = move |inputs: &Inputs| keys(of).iter().any(|key| key.applies(inputs));
        Signal::derive(move || state.sheet.with(|sheet| matters(&sheet.inputs)))
    };
    let all = any(|section| section.keys().collect());
    let finer = any(|section| inputs(section, Place::Advanced).collect());
    view! {
        // On paper stands what was entered, see `AsEntered`.
        <Fold
            id=format!("section-{prefix}")
            title=of.title()
            class="section"
            note=known
            printed=false
            applies=all
        >
            <p class="about">{of.about()}</p>
            <FieldRows of place=Place::Plain />
            {(of == SectionId::daily).then(|| view! { <Loads place="sheet" /> })}
            {inputs(of, Place::Advanced)
                .next()
                .map(|_| {
                    view! {
                        <Fold id=format!("{prefix}-finer") title="Advanced" applies=finer>
                            <FieldRows of place=Place::Advanced />
                        </Fold>
                    }
                })}
        </Fold>
    }
}

#[component]
fn FieldRows(of: SectionId, place: Place) -> impl IntoView {
    inputs(of, place)
        .map(|key| view! { <FieldRow place="sheet" key /> })
        .collect_view()
}

/// What the head of a section says of its inputs.
fn known(section: SectionId, is_said: impl Fn(Key) -> bool) -> Option<String> {
    let said = section.keys().filter(|key| is_said(*key)).count();
    let facts = section.keys().any(|key| key.spec().is_fact());
    Some(match (said, facts) {
        (0, true) => "all guesses".to_string(),
        (0, false) => "all defaults".to_string(),
        (said, true) => format!("{said} of {} known", section.keys().count()),
        (said, false) => format!("{said} of {} chosen", section.keys().count()),
    })
}
