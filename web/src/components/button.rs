//! A button.

use leptos::prelude::*;

/// Does something when it is pressed.
#[component]
pub fn Button(
    /// What it says.
    #[prop(into)]
    says: Signal<String>,
    /// What is done.
    #[prop(into)]
    press: Callback<()>,
    /// Its id on the page.
    #[prop(optional, into)]
    id: Option<String>,
    /// How it looks: "plain" beside others that matter more.
    #[prop(optional)]
    class: Option<&'static str>,
    /// What it is called by who does not see what it stands beside.
    #[prop(optional, into)]
    name: Option<String>,
    /// Whether it is out of sight.
    #[prop(optional, into)]
    hidden: Signal<bool>,
    /// Whether it cannot be pressed now.
    #[prop(optional, into)]
    disabled: Signal<bool>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            id=id
            class=class
            class:hidden=hidden
            aria-label=name
            disabled=disabled
            on:click=move |_| press.run(())
        >
            {says}
        </button>
    }
}
