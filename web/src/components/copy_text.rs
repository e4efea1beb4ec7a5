//! A text to take along, with a button that copies it.

use crate::components::Button;
use leptos::html::Textarea;
use leptos::prelude::*;

use crate::browser::clipboard;

/// A text that cannot be changed here, and the button that copies it; beside
/// the button stands what else is done with the text.
#[component]
pub fn CopyText(
    /// The id of the text.
    id: &'static str,
    /// What the text is called.
    label: &'static str,
    /// Whether its name is only for who does not see the page.
    #[prop(default = false)]
    is_label_unseen: bool,
    /// How many lines are shown.
    rows: &'static str,
    /// The text.
    #[prop(into)]
    text: Signal<String>,
    /// What the button says, and its id.
    button: (&'static str, &'static str),
    /// What else is done with it.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let area = NodeRef::<Textarea>::new();
    let said = RwSignal::new(String::new());
    let copy = move |_| {
        let Some(area) = area.get_untracked() else {
            return;
        };
        area.select();
        said.set("Selected; copy it by hand if nothing is pasted.".to_string());
        clipboard::copy(&area.value(), move || said.set("Copied.".to_string()));
    };
    let (does, button_id) = button;
    view! {
        <label for=id class:unseen=is_label_unseen>
            {label}
        </label>
        <textarea id=id readonly rows=rows node_ref=area prop:value=text></textarea>
        <p class="buttons">
            <Button says=does id=button_id press=copy />
            {children.map(|children| children())}
            <span class="said" role="status">
                {said}
            </span>
        </p>
    }
}
