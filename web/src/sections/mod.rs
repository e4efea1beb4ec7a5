//! One folder or file for each part of the page, named as the page names it.

pub mod answer;
pub mod arrangements;
pub mod cautions;
pub mod charging_run;
pub mod contents;
pub mod entered;
pub mod figures;
pub mod findings;
pub mod foot;
pub mod glossary;
pub mod goal_search;
pub mod installation;
pub mod loads;
pub mod masthead;
pub mod notices;
pub mod output_by_speed;
pub mod questions;
pub mod saved_boats;
pub mod sea_trial;
pub mod share;
pub mod summary;
pub mod uncertainty;
pub mod units;
pub mod worksheet;
pub mod year;
