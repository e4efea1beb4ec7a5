//! The second part of the program, with what is below the first screen.

use leptos::prelude::*;

use crate::state::{Explain, ExplainedAt};

/// What makes it.
#[derive(Clone, Copy)]
pub struct LaterParts {
    /// The part of the page that has a turn.
    pub part: fn(usize) -> AnyView,
    /// How the figure that is asked for came about; of the open boat, where
    /// nobody says otherwise.
    pub panel: fn(ExplainedAt, Option<Explain>) -> AnyView,
}

/// How it is with the second part of the program.
#[derive(Clone, Copy)]
pub enum Rest {
    /// It is on its way.
    Coming,
    /// It did not arrive.
    Missing,
    /// It is here.
    Here(LaterParts),
}
