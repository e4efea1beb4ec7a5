#![forbid(unsafe_code)]
#![warn(missing_docs)]
//! How long must the engine run, and will the alternator survive it?
//!
//! One pure function answers: [`report()`] turns a [`Worksheet`] (all that is
//! known about the boat) into a [`Report`] (all that follows from it). Nothing
//! in this crate reads a clock, storage, the locale or a screen.
//!
//! The folders tell the job in order, and each uses only those above it; a test
//! (`tests/layers`) reads the imports and holds them to it:
//!
//! 1. [`numerics`]: roots, linear equations, stepping through time, least squares
//! 2. [`formula`]: a formula as data beside the function that runs
//! 3. [`units`]: the units of inputs and how they are converted
//! 4. [`schema`]: what an input is, without any boat
//! 5. [`physics`]: formulas with their sources, plain numbers in and out
//! 6. [`boat`]: the worksheet, everything the user says about the boat
//! 7. [`simulation`]: the engine runs; what flows, what limits it, what gets hot
//! 8. [`analysis`]: the day, the run, the year, belt, cable, load dump
//! 9. [`findings`]: what follows from the analyses for safety
//! 10. [`mod@report`]: analyses, findings and the verdict as one
//! 11. [`decision`]: arrangements, goal search, uncertainty, calibration
//! 12. [`guidance`]: settings, commissioning, cautions
//! 13. [`text`]: every sentence: findings, verdict, headline, guidance; the glossary
//! 14. [`explain`]: how each figure came about
//! 15. [`exchange`]: link, file, forum text, table and JSON to take along

// The formulas of the physics name this crate by its full name.
extern crate self as ampwright_core;

pub mod analysis;
pub mod boat;
pub mod decision;
pub mod exchange;
pub mod explain;
pub mod findings;
pub mod formula;
pub mod guidance;
pub mod numerics;
pub mod physics;
pub mod report;
pub mod schema;
pub mod simulation;
pub mod text;
pub mod units;

pub use boat::{Inputs, Worksheet};
pub use report::{Report, report};
