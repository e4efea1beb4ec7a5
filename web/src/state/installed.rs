//! The page itself on this device: whether it opens without a network, and
//! whether a newer version of it waits.

use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::ServiceWorkerRegistration;

use crate::browser::worker::{self, News};
use crate::browser::{page, single_file};

/// Whether the page opens without a network.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Offline {
    /// It is a copy in one file, which needs none.
    SingleFile,
    /// It is being kept for the first time.
    Coming,
    /// It is kept.
    Ready,
    /// Part of it did not arrive as it should.
    Partly,
    /// This browser keeps no pages.
    Unavailable,
}

impl Offline {
    /// As the root element says it in `data-offline`.
    const fn word(self) -> &'static str {
        match self {
            Offline::SingleFile => "copy",
            Offline::Coming => "coming",
            Offline::Ready => "ready",
            Offline::Partly => "partly",
            Offline::Unavailable => "unavailable",
        }
    }
}

/// What is known of it.
#[derive(Clone, Copy)]
pub struct Installed {
    /// Whether it opens without a network; none while nothing is known.
    pub offline: RwSignal<Option<Offline>>,
    /// Whether a newer version waits.
    pub update_waits: RwSignal<bool>,
    /// Whether the user wants it.
    is_wanted: StoredValue<bool>,
    registration: StoredValue<Option<ServiceWorkerRegistration>, LocalStorage>,
}

impl Installed {
    /// Nothing is known yet.
    pub fn new() -> Installed {
        Installed {
            offline: RwSignal::new(None),
            update_waits: RwSignal::new(false),
            is_wanted: StoredValue::new(false),
            registration: StoredValue::new_local(None),
        }
    }

    /// Keeps the page for use without a network. Runs in the browser only.
    pub fn keep_page(self) {
        if single_file::is_open() {
            self.tell(Offline::SingleFile);
            return;
        }
        spawn_local(async move {
            match worker::keep_page(move |news| self.hear(news)).await {
                Ok(registration) => self.registration.set_value(Some(registration)),
                Err(_) => self.tell(Offline::Unavailable),
            }
        });
    }

    /// Takes the newer version. Other windows go on with theirs.
    pub fn take_update(self) {
        self.is_wanted.set_value(true);
        let asked = self
            .registration
            .with_value(|known| known.as_ref().is_some_and(worker::take_over));
        if !asked {
            worker::reload();
        }
    }

    fn hear(self, news: News) {
        match news {
            News::Coming => self.tell(Offline::Coming),
            News::Ready => self.tell(Offline::Ready),
            News::Partly => self.tell(Offline::Partly),
            // This window asked for it; another one only hears that it is there.
            News::TakenOver if self.is_wanted.get_value() => {
                self.is_wanted.set_value(false);
                worker::reload();
            }
            News::TakenOver | News::UpdateWaits => {
                self.update_waits.set(true);
                page::mark("update", "waiting");
            }
        }
    }

    fn tell(self, offline: Offline) {
        self.offline.set(Some(offline));
        page::mark("offline", offline.word());
    }
}
