//! Which steps of the commissioning list are done. They belong to one boat's
//! progress: a file and the browser's storage keep them, a link tells a boat
//! and leaves them out.

use super::Worksheet;
use crate::first_run::place_of;

impl Worksheet {
    /// Whether a step of the commissioning list is ticked.
    pub fn is_done(&self, id: &str) -> bool {
        self.done.iter().any(|done| done == id)
    }

    /// Ticks a step or takes its tick back; says whether there is such a step.
    pub fn tick(&mut self, id: &str, done: bool) -> bool {
        let Some(place) = place_of(id) else {
            return false;
        };
        self.done.retain(|kept| kept != id);
        if done {
            // In the order of the list, so that the same ticks are the same worksheet.
            let at = self
                .done
                .partition_point(|before| place_of(before) < Some(place));
            self.done.insert(at, id.to_string());
        }
        true
    }
}
