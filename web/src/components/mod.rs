//! The parts the page is built of.

mod caution;
pub mod chart;
mod entry_link;
pub mod explanation;
mod field;
mod fold;
mod on_demand;

pub use caution::Caution;
pub use entry_link::EntryLink;
pub use field::{Entered, Entry, FieldRow};
pub use fold::Fold;
pub use on_demand::OnDemand;
