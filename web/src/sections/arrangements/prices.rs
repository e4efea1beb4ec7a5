//! The inputs that prices and costs rest on.

use ampwright_core::boat::SectionId;
use leptos::prelude::*;

use crate::components::FieldRow;

/// What an hour costs, the price list, and shore power.
#[component]
pub fn Prices() -> impl IntoView {
    let section = |section: SectionId| {
        let rows = section
            .keys()
            .map(|key| view! { <FieldRow place="money" key /> });
        view! {
            <h3>{section.title()}</h3>
            <p class="lead">{section.about()}</p>
            {rows.collect_view()}
        }
    };
    [SectionId::cost, SectionId::price, SectionId::shore].map(section)
}
