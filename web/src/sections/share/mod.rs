//! "Share and print": a link to the open boat, a code to scan, a text for a
//! forum, what was changed, files, tables of results and paper; and boats that
//! others have sent.

mod code;
mod compare;
mod files;
mod forum;
mod import;
mod link;
mod qr;

use std::sync::Arc;

use ampwright_core::exchange::{Style, to_link};
use leptos::prelude::*;

use crate::browser::page;
use crate::components::Fold;
use crate::state::{AppState, Earlier};
use code::LinkCode;
use compare::Compare;
use files::Files;
use forum::ForumText;
use import::Import;
use link::LinkToBoat;

/// The boat that changes are told against, or why there is none.
type Since = Memo<Result<Arc<Earlier>, String>>;

/// The section.
#[component]
pub fn Share() -> impl IntoView {
    let state = AppState::expect();
    // Only the browser knows where the page is.
    let address = RwSignal::new(None::<String>);
    Effect::new(move || address.set(Some(page::address())));
    let link = Memo::new(move |_| {
        let address = address.get()?;
        let fragment = state.settled(|sheet, _| to_link(sheet));
        Some(format!("{address}#{fragment}"))
    });
    let link = Signal::derive(move || link.get().unwrap_or_default());
    let since: Since = Memo::new_with_compare(
        move |_| {
            state
                .comparison
                .since()
                .map(|sheet| Arc::new(Earlier::new(sheet)))
        },
        |_, _| true,
    );
    let style = RwSignal::new(Style::Plain);
    view! {
        <section class="share" aria-labelledby="share-title">
            <h2 id="share-title">"Share and print"</h2>
            <p class="lead">
                "A link holds every figure you have entered and nothing else. Nothing is sent anywhere: whoever opens it reads it in their own browser."
            </p>
            <LinkToBoat link />
            <Fold id="scan" title="QR code">
                <LinkCode link />
            </Fold>
            <Fold id="forum" title="A text for a forum">
                <ForumText link since style />
            </Fold>
            <Fold id="compare" title="What I changed">
                <Compare since />
            </Fold>
            <Fold id="files" title="Files and paper">
                <Files />
            </Fold>
            <Import />
        </section>
    }
}
