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
//! 2. [`units`]: the units of inputs and how they are converted
//! 3. [`schema`]: what an input is, without any boat
//! 4. [`physics`]: formulas with their sources, plain numbers in and out
//! 5. [`boat`]: the worksheet, everything the user says about the boat
//! 6. [`simulation`]: the engine runs; what flows, what limits it, what gets hot
//! 7. [`analysis`]: the day, the run, the year, belt, cable, load dump
//! 8. [`findings`]: what follows from the analyses for safety
//! 9. [`mod@report`]: analyses, findings and the verdict as one
//! 10. [`decision`]: arrangements, goal search, uncertainty, calibration
//! 11. [`guidance`]: settings, commissioning, cautions
//! 12. [`working`]: how each figure came about
//! 13. [`text`]: findings, verdict and headline as sentences, and the glossary
//! 14. [`exchange`]: link, file, forum text, table and JSON to take along

pub mod analysis;
pub mod boat;
pub mod decision;
pub mod exchange;
pub mod findings;
pub mod guidance;
pub mod numerics;
pub mod physics;
pub mod report;
pub mod schema;
pub mod simulation;
pub mod text;
pub mod units;
pub mod working;

pub use boat::{Inputs, Worksheet};
pub use report::{Report, report};
