//! The whole worksheet, section by section.

use ampwright_core::fields::Place;
use ampwright_core::worksheet::{Basis, Key, SectionId};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::field::SheetField;
use crate::loads::Loads;

/// Every input, in worksheet order.
#[component]
pub fn Form() -> impl IntoView {
    let desk = expect_context::<Desk>();
    view! {
        <section class="sheet" aria-labelledby="form-title">
            <h2 id="form-title">"The worksheet"</h2>
            <p class="lead">"Every figure the answer rests on. What nobody has vouched for is marked a guess; each one you replace makes the answer yours."</p>
            {move || {
                desk.turn.track();
                SectionId::ALL.iter().map(|section| view! { <FormSection section=*section/> }).collect_view()
            }}
        </section>
    }
}

#[component]
fn FormSection(section: SectionId) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let place = |wanted: Place| {
        section
            .keys()
            .filter(move |key| key.spec().place == wanted)
            .collect::<Vec<Key>>()
    };
    let rows = |keys: Vec<Key>| {
        keys.into_iter()
            .map(|key| view! { <SheetField key place="sheet"/> })
            .collect_view()
    };
    let said = move || {
        desk.sheet.with(|sheet| {
            let known = section.keys().filter(|key| sheet.is_said(*key)).count();
            match known {
                0 => "all guesses".to_string(),
                known => format!("{known} of {} known", section.keys().count()),
            }
        })
    };
    let deep = place(Place::Deep);
    let deep_keys = deep.clone();
    let finer_matter = move || {
        desk.sheet
            .with(|sheet| deep_keys.iter().any(|key| key.applies(&sheet.inputs)))
    };
    let finer = (!deep.is_empty()).then(|| {
        view! {
            <details class="finer" class:hidden=move || !finer_matter()>
                <summary>"Finer points"</summary>
                {rows(deep)}
            </details>
        }
    });
    // A memo: the list is drawn anew only when it comes or goes.
    let listed = Memo::new(move |_| {
        section == SectionId::daily
            && desk
                .sheet
                .with(|sheet| sheet.inputs.daily.basis == Basis::Listed)
    });
    // The second machine's figures only where there is one.
    let matters = move || {
        desk.sheet
            .with(|sheet| section.keys().any(|key| key.applies(&sheet.inputs)))
    };
    view! {
        <details class="section" class:hidden=move || !matters() id=format!("section-{}", section.prefix())>
            <summary>
                <span class="title">{section.title()}</span>
                <span class="leader"></span>
                <span class="said">{said}</span>
            </summary>
            <p class="about">{section.about()}</p>
            {rows(place(Place::Plain))}
            {move || listed.get().then(|| view! { <Loads place="sheet"/> })}
            {finer}
        </details>
    }
}
