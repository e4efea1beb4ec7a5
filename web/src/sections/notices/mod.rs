//! What is said at the top of the page: how the boat came here, what another
//! tab did, that part of the page is missing, that nothing can be kept, that a
//! newer version waits, and a welcome.

mod arrival;
mod elsewhere;
mod missing;

use crate::components::Button;
use leptos::prelude::*;

use crate::state::AppState;
use crate::state::saved_boats::Keeping;
use arrival::ArrivalNotice;
use elsewhere::ElsewhereNotice;
use missing::MissingNotice;

/// All of them; each is seen only while it has something to say.
#[component]
pub fn Notices() -> impl IntoView {
    view! {
        <ArrivalNotice />
        <ElsewhereNotice />
        <MissingNotice />
        <StorageNotice />
        <UpdateNotice />
        <Welcome />
    }
}

/// Why nothing is kept.
#[component]
fn StorageNotice() -> impl IntoView {
    let saved = AppState::expect().saved;
    let why = Memo::new(move |_| match saved.keeping.get() {
        Keeping::MemoryOnly(why) => Some(why.to_string()),
        Keeping::Fresh | Keeping::Kept => None,
    });
    view! {
        <div
            class="notice bad"
            class:hidden=Signal::derive(move || why.read().is_none())
            id="memory-only"
            role="alert"
        >
            <p id="memory-why">{why}</p>
        </div>
    }
}

/// A newer version of the page, to be taken when the user likes.
#[component]
fn UpdateNotice() -> impl IntoView {
    let state = AppState::expect();
    let take = move |_| {
        state.save_waiting();
        state.installed.take_update();
    };
    view! {
        <div
            class="notice"
            class:hidden=Signal::derive(move || !state.installed.update_waits.get())
            id="update"
            role="status"
        >
            <p>"A newer version of this page is ready."</p>
            <Button says="Use it now" press=take />
        </div>
    }
}

/// What the page is for, for who opens it first.
#[component]
fn Welcome() -> impl IntoView {
    let state = AppState::expect();
    // It goes with the next boat, not when this one is kept: then the page would
    // move under the finger that types.
    let is_first = Memo::new(move |_| {
        state.opened.track();
        state.arrival.read().is_none()
            && state.saved.number.get_untracked().is_none()
            && state.saved.keeping.get_untracked() != Keeping::Kept
    });
    view! {
        <aside class="notice welcome" class:hidden=Signal::derive(move || !is_first.get()) id="welcome">
            <p>
                "How long must the engine run to fill the house bank, and will the alternator survive it? Eight questions give a first answer."
            </p>
            <Button
                says="See an example boat"
                id="demo"
                class="plain"
                press=move |()| state.open_example()
            />
        </aside>
    }
}
