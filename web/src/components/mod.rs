//! The parts the page is built of.

mod caution;
mod changes_table;
pub mod chart;
mod copy_text;
mod entry_link;
pub mod explanation;
mod field;
mod fold;
mod on_demand;

pub use caution::Caution;
pub use changes_table::ChangesTable;
pub use copy_text::CopyText;
pub use entry_link::EntryLink;
pub use field::{Entered, Entry, FieldRow};
pub use fold::Fold;
pub use on_demand::OnDemand;
