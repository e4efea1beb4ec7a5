//! What is said to people: findings, verdict, open questions, the headline, the
//! settings sheet, the commissioning list and the cautions as sentences,
//! errors and remarks of readers, what things are called, and the glossary. It may
//! use everything above it; only `exchange`, the page and the command line use it.
//!
//! A sentence is made of quantities, each shown by the
//! [`Reader`](crate::units::Reader): nobody has to search a text for figures.

pub mod arrangements;
pub mod ask_makers;
pub mod belt;
pub mod cable;
pub mod calibration;
pub mod cautions;
pub mod charging_run;
pub mod commissioning;
pub mod errors;
pub mod findings;
pub mod glossary;
mod goal_search;
pub mod headings;
mod headline;
pub mod legs;
pub mod load_dump;
pub mod packs;
mod purchase;
mod questions;
pub mod remarks;
pub mod sea_trial;
pub mod sensor;
pub mod settings;
pub mod sources;
pub mod uncertainty;
mod verdict;
pub mod words;
pub mod year;

pub use goal_search::{goal_search, plan_step, step_change};
pub use headline::{
    Answer, EXAMPLE_FIRST, InShort, answer, boat, in_runs, in_short, output_at_speed, sentence,
};
pub use purchase::purchase;
pub use questions::question;
pub use verdict::verdict;
