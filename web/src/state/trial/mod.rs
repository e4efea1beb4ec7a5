//! The sea trial that is going on: its readings, what is half typed, and the
//! clock since the engine started. Kept with the boat at every keystroke, so
//! that a reload or a discarded tab loses nothing.

mod awake;
mod clock;
mod kept;
mod readings;

use ampwright_core::decision::calibration::entry::{Entry, EntryError};
use ampwright_core::decision::calibration::{Log, SAMPLE, read};
use leptos::ev;
use leptos::prelude::*;
use web_sys::StorageEvent;

use crate::browser::storage::Storage;
use crate::browser::wake_lock::WakeLock;
use crate::state::AppState;
use kept::Draft;

/// The trial of the open boat. Every part of it is a signal.
#[derive(Clone, Copy)]
pub struct Trial {
    state: AppState,
    /// All that is kept.
    draft: RwSignal<Draft>,
    /// Milliseconds since 1970, followed while the clock runs.
    now_ms: RwSignal<f64>,
    /// What is wrong with the reading that was to be added.
    pub complaint: RwSignal<Option<EntryError>>,
    /// What is to take the place of readings, once the user agrees.
    pub asked: RwSignal<Option<Replacement>>,
    /// Keeps the screen awake while the clock runs.
    awake: StoredValue<Option<WakeLock>, LocalStorage>,
}

/// What can take the place of all readings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Replacement {
    /// Readings of an invented boat.
    Example,
    /// The log that was pasted.
    Pasted,
    /// Nothing: a new trial.
    Nothing,
}

impl Trial {
    /// Begins with none, as the page is printed, and hands it to every component
    /// below. In the browser it follows the open boat.
    pub fn provide(state: AppState) -> Trial {
        let trial = Trial {
            state,
            draft: RwSignal::new(Draft::default()),
            now_ms: RwSignal::new(0.0),
            complaint: RwSignal::new(None),
            asked: RwSignal::new(None),
            awake: StoredValue::new_local(None),
        };
        provide_context(trial);
        trial.follow_boat();
        trial.follow_clock();
        trial
    }

    /// The trial of the page that a component belongs to.
    pub fn expect() -> Trial {
        expect_context()
    }

    /// Something of the readings, followed.
    pub fn with_log<T>(self, read: impl FnOnce(&Log) -> T) -> T {
        self.draft.with(|draft| read(&draft.log))
    }

    /// How many readings there are.
    pub fn count(self) -> usize {
        self.with_log(|log| log.rows.len())
    }

    /// What is being typed.
    pub fn entry(self) -> Entry {
        self.draft.with(|draft| draft.entry.clone())
    }

    /// The place of the reading that is being corrected.
    pub fn correcting(self) -> Option<usize> {
        self.draft.with(|draft| draft.correcting)
    }

    /// The log as it was pasted.
    pub fn pasted(self) -> String {
        self.draft.with(|draft| draft.pasted.clone())
    }

    /// Whether the readings are the example's.
    pub fn is_example(self) -> bool {
        self.with_log(|log| !log.rows.is_empty() && log.rows == read(SAMPLE).rows)
    }

    /// Changes what is kept, and keeps it at once.
    fn change(self, change: impl FnOnce(&mut Draft)) {
        self.draft.update(change);
        self.keep();
    }

    /// Keeps the draft with the open boat, which is then kept as well.
    fn keep(self) {
        let is_blank = self.draft.with_untracked(Draft::is_blank);
        if self.state.saved.number.get_untracked().is_none() && !is_blank {
            self.state.save_now();
        }
        if let Some(number) = self.state.saved.number.get_untracked() {
            self.draft.with_untracked(|draft| kept::keep(number, draft));
        }
    }

    /// The readings are about to be changed in a way that can be taken back.
    fn can_undo(self, says: impl Into<String>) {
        // The step is kept under the number that the boat has from now on.
        self.keep();
        let before = self.draft.with_untracked(Draft::to_text);
        self.state.can_undo_readings(says.into(), before);
    }

    /// Takes up the trial of each boat that is opened, and goes on with this one
    /// where the boat gets a number of its own.
    fn follow_boat(self) {
        let saved = self.state.saved;
        Effect::new(move |before: Option<(u32, Option<u32>)>| {
            let now = (self.state.opened.get(), saved.number.get());
            if before.is_none_or(|(opened, _)| opened != now.0) {
                self.take_up(now.1);
            } else if before.is_some_and(|(_, number)| number != now.1) {
                self.keep();
            }
            if let Some(before) = self.state.undo.trial_to_put_back() {
                self.put_back(&before);
            }
            now
        });
        Effect::new(move |_| {
            let written = window_event_listener(ev::storage, move |event: StorageEvent| {
                self.look(event.key().as_deref());
            });
            on_cleanup(move || written.remove());
        });
    }

    fn take_up(self, number: Option<u32>) {
        let kept = number.zip(Storage::open().ok());
        let draft = kept.and_then(|(number, storage)| kept::recall(number, &storage));
        self.complaint.set(None);
        self.asked.set(None);
        self.draft.set(draft.unwrap_or_default());
    }

    /// Another tab wrote to the storage under this name: its readings are these.
    fn look(self, written: Option<&str>) {
        let number = self.state.saved.number.get_untracked();
        if number.is_some_and(|number| written == Some(&kept::name(number))) {
            self.take_up(number);
        }
    }
}
