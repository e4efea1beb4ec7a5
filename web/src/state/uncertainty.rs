//! How certain the answer is: worked out in slices while nobody types, so that
//! the page never stands still.

use std::ops::ControlFlow;
use std::sync::Arc;
use std::time::Duration;

use ampwright_core::decision::uncertainty::{Certainty, Uncertainty};
use ampwright_core::text;
use leptos::prelude::*;

use crate::state::{AppState, Slices};

/// How long typing must rest before it begins.
const REST: Duration = Duration::from_millis(400);
/// How long a slice may hold up the page \[ms\].
const SLICE_MS: f64 = 10.0;
/// Runs between two signs of progress: each costs the page a layout.
const RUNS_SHOWN: usize = 64;

/// What is known of how certain the answer is, and how far the next estimate is.
#[derive(Clone, Copy)]
pub struct UncertaintyState {
    latest: RwSignal<Option<Arc<Certainty>>>,
    under_way: RwSignal<Option<usize>>,
    slices: Slices,
}

impl UncertaintyState {
    /// Nothing is known yet, and the first estimate is about to begin.
    pub fn new() -> UncertaintyState {
        UncertaintyState {
            latest: RwSignal::new(None),
            under_way: RwSignal::new(Some(0)),
            slices: Slices::new(),
        }
    }

    /// What the last finished estimate of this boat gave, even if some of its
    /// figures have changed since; followed.
    pub fn latest(self) -> Option<Arc<Certainty>> {
        self.latest.get()
    }

    /// How many runs are done of the estimate that is under way; none once it
    /// is finished; followed.
    pub fn runs_done(self) -> Option<usize> {
        self.under_way.get()
    }

    /// How certain the answer is as the worksheet stands; none until that is
    /// worked out; followed.
    pub fn certainty(self) -> Option<Arc<Certainty>> {
        match self.runs_done() {
            Some(_) => None,
            None => self.latest(),
        }
    }

    /// The range of the engine time in a few words, as the worksheet stands;
    /// followed.
    pub fn engine_range(self) -> Option<String> {
        Some(text::uncertainty::range(&self.certainty()?.engine_h))
    }

    fn show(self, runs: Option<usize>) {
        if self.under_way.get_untracked() != runs {
            self.under_way.set(runs);
        }
    }

    /// Gives up the estimate that is under way, and begins another once typing
    /// rests.
    fn begin(self, state: AppState) {
        self.show(Some(0));
        self.slices.start(REST, SLICE_MS, move || {
            let mut uncertainty = state.sheet.with_untracked(Uncertainty::new);
            move || {
                uncertainty.step(1);
                if !uncertainty.done() {
                    let runs = uncertainty.runs();
                    self.show(Some(runs - runs % RUNS_SHOWN));
                    return ControlFlow::Continue(());
                }
                self.latest.set(Some(Arc::new(uncertainty.certainty())));
                self.show(None);
                ControlFlow::Break(())
            }
        });
    }
}

impl AppState {
    /// Works out how certain the answer is, now and after each change. What was
    /// worked out for another boat is gone at once.
    pub fn follow_uncertainty(self) {
        Effect::new(move |before: Option<u32>| {
            let opened = self.opened.get();
            self.sheet.track();
            if before.is_some_and(|before| before != opened) {
                self.uncertainty.latest.set(None);
            }
            self.uncertainty.begin(self);
            opened
        });
    }
}
