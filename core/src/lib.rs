#![forbid(unsafe_code)]
#![warn(missing_docs)]
//! How long must the engine run, and will the alternator survive it?
//!
//! One pure function answers: [`report()`] turns a [`Worksheet`] (all that is
//! known about the boat) into a [`Report`] (all that follows from it). Nothing
//! in this crate reads a clock, storage, the locale or a screen.
//!
//! The folders tell the job in order:
//! [`fields`] says what an input is, [`worksheet`] lists the inputs of a boat,
//! [`energy`] adds up its day, [`physics`] holds the formulas with their
//! sources, [`charge`] runs the engine and watches what gets hot, [`mod@report`]
//! gathers the answers and says what to mind, [`sure`] says how sure they are, [`trial`] corrects the model by
//! readings of a real run, [`mod@wiring`] finds cables and fuses, [`share`]
//! writes texts and tables to take along.

pub mod arrange;
pub mod charge;
pub mod energy;
pub mod fields;
pub mod goal;
pub mod physics;
pub mod report;
pub mod share;
pub mod sky;
pub mod sure;
pub mod trial;
pub mod wiring;
pub mod worksheet;
pub mod year;

pub use report::{Report, report};
pub use wiring::{Wiring, wiring};
pub use worksheet::{Inputs, Worksheet};
pub use year::{Year, year};
