//! One folder or file for each part of the page, named as the page names it.

pub mod cautions;
pub mod contents;
pub mod findings;
pub mod foot;
pub mod glossary;
pub mod loads;
pub mod masthead;
pub mod notices;
pub mod questions;
pub mod saved_boats;
pub mod share;
pub mod units;
pub mod worksheet;
