//! The printed copies of what comes to life later; see
//! [`crate::components::Later`].

use web_sys::Element;

use crate::browser::early::{Early, all};

const LATER: &str = "[data-later]";

/// Printed copies, in the order of the page.
pub struct PrintedParts(Vec<Element>);

impl PrintedParts {
    /// Those of the printed page, to be kept while it is cleared away.
    pub fn find() -> PrintedParts {
        PrintedParts(all(LATER))
    }

    /// How many there are.
    pub fn count(&self) -> usize {
        self.0.len()
    }

    /// Puts each before the live part, which is empty still. Copies that tell of
    /// another boat than the open one keep their place and are not seen.
    pub fn put_back(&self, is_open_boat: bool) {
        for (live, printed) in all(LATER).into_iter().zip(&self.0) {
            let _ = printed.remove_attribute("data-later");
            let _ = printed.set_attribute("data-printed", "");
            if !is_open_boat {
                let _ = printed.class_list().add_1("stale");
            }
            if let Some(parent) = live.parent_node() {
                let _ = parent.insert_before(printed, Some(&live));
            }
        }
    }

    /// Takes one away for the live part to take its place, with what was done in
    /// it meanwhile.
    pub fn take(&self, turn: usize) -> Option<Early> {
        let printed = self.0.get(turn)?;
        let early = Early::collect(printed);
        printed.remove();
        Some(early)
    }
}
