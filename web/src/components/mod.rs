//! The parts the page is built of.

mod caution;
pub mod chart;
mod entry_link;
mod field;
mod fold;

pub use caution::Caution;
pub use entry_link::EntryLink;
pub use field::{Entered, Entry, FieldRow};
pub use fold::Fold;
