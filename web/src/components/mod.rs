//! The parts the page is built of.

mod changes_table;
mod copy_text;
mod entry_link;
mod field;
mod fold;

pub use changes_table::ChangesTable;
pub use copy_text::CopyText;
pub use entry_link::EntryLink;
pub use field::{Entered, Entry, FieldRow};
pub use fold::Fold;
