#![forbid(unsafe_code)]
//! The finished page in a real browser.
//!
//! Run with `cargo xtask test browser`, which builds the page first. Every test
//! has its own server and so a page at an address of its own, and a browser
//! that knows nothing of it yet, so that none depends on another.

mod aboard;
mod access;
mod arrange;
mod by_resistance;
mod contents;
mod desk;
mod engines;
mod entry;
mod files;
mod first_minute;
mod fit;
mod folds;
mod job;
mod keep;
mod legs;
mod offline;
mod page;
mod paper;
mod pool;
mod role;
mod sea_trial_course;
mod sea_trial_form;
mod service;
mod shell;
mod site;
mod steps;
mod store;
mod sure;
mod text;
mod travel;
mod trial;
mod units;
mod verdict;
mod words;
mod working;
mod year;
