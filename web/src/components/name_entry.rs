//! An entry for a name.

use leptos::prelude::*;

/// A name that the user gives to something of the boat's, with its label.
#[component]
pub fn NameEntry(
    id: String,
    /// Longest name, in letters.
    longest: &'static str,
    /// The name as it is.
    #[prop(into)]
    name: Signal<String>,
    /// Hears every change.
    #[prop(into)]
    enter: Callback<String>,
) -> impl IntoView {
    view! {
        <label for=id.clone()>"Name"</label>
        <input
            id=id
            type="text"
            maxlength=longest
            autocomplete="off"
            prop:value=name
            on:input:target=move |event| enter.run(event.target().value())
        />
    }
}
