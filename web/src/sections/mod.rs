//! One folder or file for each part of the page, named as the page names it.

pub mod cautions;
pub mod contents;
pub mod findings;
pub mod glossary;
pub mod installation;
pub mod loads;
pub mod masthead;
pub mod questions;
pub mod sea_trial;
pub mod uncertainty;
pub mod units;
pub mod worksheet;
pub mod year;
