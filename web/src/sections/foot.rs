//! The foot of the page: what a figure here is worth, which build this is,
//! whether it opens without a network, and a copy of it in one file.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::browser::{page, single_file};
use crate::components::Button;
use crate::state::{AppState, Offline};

/// The foot.
#[component]
pub fn Foot() -> impl IntoView {
    let installed = AppState::expect().installed;
    let build = RwSignal::new(String::new());
    Effect::new(move || build.set(page::marked("build").unwrap_or_default()));
    let offline = Signal::derive(move || {
        installed
            .offline
            .get()
            .map(|offline| told(offline).to_string())
    });
    // The copy needs no copy.
    let is_served = Memo::new(move |_| installed.offline.get() != Some(Offline::SingleFile));
    view! {
        <footer>
            <p>
                "An estimate from published formulas and your own figures. The battery maker's sheet, local code and a licensed electrician come first."
            </p>
            <p>
                "Build " <span id="build">{build}</span> ". " <span id="offline">{offline}</span>
            </p>
            <Show when=move || is_served.get()>
                <CopyAboard />
            </Show>
        </footer>
    }
}

/// What the foot says about opening without a network.
const fn told(offline: Offline) -> &'static str {
    match offline {
        Offline::SingleFile => {
            "This is the copy in one file. It opens without a network; boats kept here stay apart from those of the page."
        }
        Offline::Coming => "It is being put by for use without a network.",
        Offline::Ready => "It is kept on this device and opens without a network.",
        Offline::Partly => {
            "It is not kept for use without a network yet: part of it did not arrive as it should. The next visit tries again."
        }
        Offline::Unavailable => {
            "It cannot be kept here for use without a network; a copy in one file can."
        }
    }
}

/// Saves the whole page as one file.
#[component]
fn CopyAboard() -> impl IntoView {
    let said = RwSignal::new(String::new());
    let weight = RwSignal::new(None);
    Effect::new(move || weight.set(page::marked("weight").filter(|weight| !weight.is_empty())));
    let says = Signal::derive(move || {
        let about = weight.get().map(|weight| format!(", about {weight} MB"));
        let about = about.unwrap_or_default();
        format!("Keep a copy aboard (one file{about})")
    });
    let save = move |()| {
        said.set("It is being put together.".to_string());
        spawn_local(async move {
            let outcome = match single_file::save().await {
                Ok(()) => "It is among your downloads. Opened from there, it needs no network.",
                Err(why) => {
                    leptos::logging::error!("{why:?}");
                    "It could not be put together: part of the page is not here. Reload the page and try again."
                }
            };
            said.set(outcome.to_string());
        });
    };
    view! {
        <p class="buttons">
            <Button says id="aboard" press=save />
            <span class="said" role="status" id="aboard-said">
                {said}
            </span>
        </p>
    }
}
