//! The clock since the engine started.

use std::time::Duration;

use ampwright_core::decision::calibration::entry::stamp;
use leptos::prelude::*;

use crate::browser::clock::wall_ms;
use crate::state::trial::Trial;

/// How often the clock is looked at.
const TICK: Duration = Duration::from_secs(1);

impl Trial {
    /// The engine has just started.
    pub fn start_clock(self) {
        self.now_ms.set(wall_ms());
        self.change(|draft| {
            draft.started_ms = Some(wall_ms());
            draft.runs = true;
        });
    }

    /// The engine was stopped, or turns on unobserved. Minutes still count from
    /// its start when the clock goes on.
    pub fn stop_clock(self) {
        self.change(|draft| draft.runs = false);
    }

    /// The clock goes on where it would be by now.
    pub fn resume_clock(self) {
        self.now_ms.set(wall_ms());
        self.change(|draft| draft.runs = true);
    }

    /// Whether it runs.
    pub fn is_running(self) -> bool {
        self.draft.with(|draft| draft.runs)
    }

    /// Whether it was started.
    pub fn was_started(self) -> bool {
        self.draft.with(|draft| draft.started_ms.is_some())
    }

    /// Minutes since the engine started, while the clock runs.
    pub fn elapsed_min(self) -> Option<f64> {
        let started_ms = self
            .draft
            .with(|draft| draft.started_ms.filter(|_| draft.runs))?;
        Some(((self.now_ms.get() - started_ms) / 60_000.0).max(0.0))
    }

    /// Those minutes as a text, by the clock as it stands now.
    pub(super) fn stamp_now(self) -> Option<String> {
        self.draft.with_untracked(|draft| {
            let started_ms = draft.started_ms.filter(|_| draft.runs)?;
            stamp((wall_ms() - started_ms) / 60_000.0)
        })
    }

    /// Looks at the clock while it runs, and keeps the screen awake.
    pub(super) fn follow_clock(self) {
        let runs = Memo::new(move |_| self.is_running());
        Effect::new(move |_| {
            if !runs.get() {
                self.let_sleep();
                return;
            }
            self.now_ms.set(wall_ms());
            self.keep_awake();
            let tick = move || self.now_ms.set(wall_ms());
            if let Ok(timer) = set_interval_with_handle(tick, TICK) {
                on_cleanup(move || timer.clear());
            }
            // The browser lets the screen sleep once the page was out of sight.
            let shown = window_event_listener_untyped("visibilitychange", move |_| {
                if !document().hidden() {
                    self.now_ms.set(wall_ms());
                    self.keep_awake();
                }
            });
            on_cleanup(move || shown.remove());
        });
    }
}
