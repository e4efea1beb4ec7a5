//! The second part of the program, with what is below the first screen.

use leptos::prelude::*;

/// Makes the part of the page that has a turn.
pub type LaterParts = fn(usize) -> AnyView;

/// How it is with the second part of the program.
#[derive(Clone, Copy)]
pub enum Rest {
    /// It is on its way.
    Coming,
    /// It did not arrive.
    Missing,
    /// It is here, and makes the parts of the page.
    Here(LaterParts),
}
