//! The screen, kept awake while the clock runs.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::browser::wake_lock::WakeLock;
use crate::state::trial::Trial;

impl Trial {
    /// Keeps the screen awake, where the browser can.
    pub(super) fn keep_awake(self) {
        spawn_local(async move {
            let Some(lock) = WakeLock::ask().await else {
                return;
            };
            // The clock may have been stopped meanwhile.
            if self.draft.try_with_untracked(|draft| draft.runs) == Some(true) {
                let before = self.awake.try_update_value(|awake| awake.replace(lock));
                if let Some(Some(before)) = before {
                    before.release();
                }
            } else {
                lock.release();
            }
        });
    }

    /// Lets it sleep again.
    pub(super) fn let_sleep(self) {
        let lock = self.awake.try_update_value(Option::take).flatten();
        if let Some(lock) = lock {
            lock.release();
        }
    }
}
