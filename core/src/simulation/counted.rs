//! How often it was worked out what flows, by which tests hold the effort of an
//! answer: unlike its time, that is the same on every machine. No part of a build
//! that is not a test.

use std::cell::Cell;

thread_local! {
    static FLOWS: Cell<u64> = const { Cell::new(0) };
}

/// One more.
pub(super) fn note_flow() {
    FLOWS.set(FLOWS.get() + 1);
}

/// How many a piece of work takes.
pub(crate) fn flows_in<T>(work: impl FnOnce() -> T) -> u64 {
    let before = FLOWS.get();
    work();
    FLOWS.get() - before
}
