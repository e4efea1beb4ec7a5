//! Long work in slices, so that the page stays alive meanwhile.

use std::ops::ControlFlow;
use std::time::Duration;

use leptos::prelude::*;

use crate::browser::clock::now_ms;

/// A place for one long work at a time. It belongs to the component that makes
/// it: when that leaves the page, the work is given up.
#[derive(Clone, Copy)]
pub struct Slices {
    /// Counts works begun or stopped: a slice of an earlier one does nothing.
    turn: StoredValue<u32>,
    running: RwSignal<bool>,
}

impl Slices {
    /// Nothing to do yet.
    pub fn new() -> Slices {
        Slices {
            turn: StoredValue::new(0),
            running: RwSignal::new(false),
        }
    }

    /// Whether a work is under way, its rest included; followed.
    pub fn are_running(self) -> bool {
        self.running.get()
    }

    /// Gives up what is under way.
    pub fn stop(self) {
        self.next_turn();
        self.running.set(false);
    }

    /// Begins a work in place of the one before, after a rest. `begin` makes its
    /// first state and gives what does one step of it; a slice is so many steps
    /// as fit into the budget \[ms\], one at least.
    pub fn start<Step>(self, rest: Duration, budget_ms: f64, begin: impl FnOnce() -> Step + 'static)
    where
        Step: FnMut() -> ControlFlow<()> + 'static,
    {
        let turn = self.next_turn();
        self.running.set(true);
        let first = move || {
            if self.is_turn(turn) {
                self.slice(turn, budget_ms, begin());
            }
        };
        set_timeout(first, rest);
    }

    /// One slice, and the next one when the page has had its turn.
    fn slice<Step>(self, turn: u32, budget_ms: f64, mut step: Step)
    where
        Step: FnMut() -> ControlFlow<()> + 'static,
    {
        let end_ms = now_ms() + budget_ms;
        loop {
            if step().is_break() {
                // A step may have begun another work.
                if self.is_turn(turn) {
                    self.running.set(false);
                }
                return;
            }
            if now_ms() >= end_ms {
                break;
            }
        }
        let next = move || {
            if self.is_turn(turn) {
                self.slice(turn, budget_ms, step);
            }
        };
        set_timeout(next, Duration::ZERO);
    }

    fn next_turn(self) -> u32 {
        let turn = self.turn.get_value().wrapping_add(1);
        self.turn.set_value(turn);
        turn
    }

    /// Whether the work of that turn is still wanted; never once the component
    /// is gone.
    fn is_turn(self, turn: u32) -> bool {
        self.turn.try_get_value() == Some(turn)
    }
}
