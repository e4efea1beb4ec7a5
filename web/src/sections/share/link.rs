//! The link to the open boat.

use leptos::prelude::*;

use crate::browser::share;
use crate::components::{Button, CopyText};

/// The link, with ways to hand it on.
#[component]
pub fn LinkToBoat(link: Signal<String>) -> impl IntoView {
    let can_share = RwSignal::new(false);
    Effect::new(move || can_share.set(share::is_there()));
    let length = Signal::derive(move || {
        let length = link.read().len();
        (length > 0).then(|| format!("{length} characters"))
    });
    view! {
        <CopyText
            id="link"
            label="Link to this boat"
            rows="3"
            text=link
            button=("Copy the link", "copy-link")
        >
            <Button
                says="Share"
                id="share-link"
                hidden=Signal::derive(move || !can_share.get())
                press=move |()| share::link(&link.get_untracked())
            />
            <span class="said" id="link-length">
                {length}
            </span>
        </CopyText>
    }
}
