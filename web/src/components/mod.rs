//! The parts the page is built of.

mod button;
mod caution;
mod changes_table;
pub mod chart;
mod copy_text;
mod entry_link;
pub mod explanation;
mod field;
mod fold;
mod later;
mod name_entry;
#[cfg(test)]
mod tests;
mod text_table;

pub use button::Button;
pub use caution::Caution;
pub use changes_table::ChangesTable;
pub use copy_text::CopyText;
pub use entry_link::EntryLink;
pub use field::{Entered, Entry, FieldRow, NumberEntry};
pub use fold::Fold;
pub use later::Later;
pub use name_entry::NameEntry;
pub use text_table::{ScrollingTable, TextRow, TextTable, texts};
