//! What comes in and goes out: links, files, the texts and tables to take along.
//!
//! Every reader is strict in what it writes and forgiving in what it reads: what
//! is not understood is remarked on and left out, and nothing else is lost. Version 1
//! keeps its meaning, see `version1`.

mod analyses_json;
mod collection;
mod csv;
mod decision_json;
mod differences;
mod entered;
mod file;
mod forum;
mod guidance_json;
mod limits;
mod link;
mod outcomes;
mod remarks;
mod report_json;
mod style;
mod ticks;
mod version1;

pub use crate::boat::reading::{Listed, ReadError, Remark, TextKind};
pub use analyses_json::{belts_json, cables_json, legs_json, load_dump_json, year_json};
pub use collection::{Collected, MOST_SHEETS, collect_texts, read_file, to_collection};
pub use csv::{arrangements_csv, day_csv, legs_csv, output_csv, run_csv, year_csv};
pub use decision_json::{arrangements_json, decisions_json, goal_search_json, uncertainty_json};
pub use differences::{Difference, differences};
pub use entered::{EnteredPart, entered};
pub use file::{Reading, read_json, read_value, to_json};
pub use forum::{differences_text, forum_text};
pub use guidance_json::{commissioning_json, form_json, settings_json};
pub use limits::{LONGEST_NAME, MOST_ARRANGEMENTS, MOST_LEGS, MOST_LOADS};
pub use link::{Opened, open_link, to_link};
pub use outcomes::outcomes;
pub use report_json::{REPORT_SCHEMA, report_json};
pub use style::Style;
