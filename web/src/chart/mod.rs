//! Drawings of sections that are still text.

pub(crate) mod drawing;
pub(crate) mod plot;
pub(crate) use crate::components::chart::scale;
