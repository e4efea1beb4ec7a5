//! What leaves the page as text: a short text for a forum, what was changed
//! between two worksheets, and the series of results as CSV.

mod csv;
mod differences;
mod forum;
mod outcomes;
mod style;

pub use csv::{arrangements_csv, day_csv, output_csv, run_csv, year_csv};
pub use differences::{Difference, differences};
pub use forum::{differences_text, forum_text};
pub use outcomes::outcomes;
pub use style::Style;
