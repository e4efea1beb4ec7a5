//! What is costly to work out: only while a component that shows it is on the
//! page, and only once typing rests.

use std::sync::Arc;
use std::time::Duration;

use ampwright_core::Worksheet;
use leptos::prelude::*;

use crate::state::AppState;

impl AppState {
    /// Something costly that follows from the worksheet; none until it is first
    /// worked out. That happens after the frame that shows the component which
    /// asks, and again whenever the worksheet has rested so long after a change,
    /// for as long as that component is on the page. Until then the last one
    /// stands, but never that of another boat. On paper nothing waits.
    pub fn at_rest<T: Send + Sync + 'static>(
        self,
        rest: Duration,
        work: fn(&Worksheet) -> T,
    ) -> ReadSignal<Option<Arc<T>>> {
        let (result, set_result) = signal(None);
        Effect::new(move |before: Option<u32>| {
            let opened = self.opened.get();
            self.sheet.track();
            let wait = before.map_or(Duration::ZERO, |_| rest);
            let act = move || set_result.set(Some(Arc::new(self.sheet.with_untracked(work))));
            if self.printing.get_untracked() {
                act();
                return opened;
            }
            if before.is_some_and(|before| before != opened) {
                set_result.set(None);
            }
            // Given up when the worksheet changes before, or the component goes.
            if let Ok(timer) = set_timeout_with_handle(act, wait) {
                on_cleanup(move || timer.clear());
            }
            opened
        });
        result
    }
}
