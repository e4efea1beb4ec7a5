//! What to choose, how sure the answers are, and what readings teach.
//!
//! It puts whole boats through [`report`](mod@crate::report) and compares them;
//! it knows nothing of settings, links or pages.

pub mod arrangements;
pub mod calibration;
#[cfg(test)]
mod effort_tests;
pub mod goal_search;
pub mod uncertainty;
