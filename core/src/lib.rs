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
//! gathers the answers and says what to mind, [`arrange`] puts arrangements
//! beside each other and [`goal`] looks for the cheapest, [`mod@wiring`] finds
//! cables and fuses, [`mod@belt`] and [`mod@disconnect`] look at what turns the
//! machine and what happens when its battery goes, [`sure`] says how sure the
//! answers are, [`trial`] corrects the model by readings of a real run,
//! [`explain`] shows how each result came about,
//! [`mod@settings`] says what to set in each device, [`mod@first_run`] how to put
//! it into service, [`share`] writes texts and tables to take along, `glossary` tells what the
//! words of the trade mean.

// The formulas of the physics name this crate by its full name.
extern crate self as ampwright_core;

pub mod arrange;
pub mod belt;
pub mod charge;
pub mod disconnect;
pub mod energy;
pub mod explain;
pub mod fields;
pub mod first_run;
pub mod formula;
#[cfg(feature = "words")]
pub mod glossary;
pub mod goal;
mod most;
pub mod numerics;
pub mod physics;
pub mod report;
pub mod settings;
pub mod share;
pub mod sky;
pub mod sure;
pub mod trial;
pub mod wiring;
pub mod worksheet;
pub mod year;

pub use belt::belts;
pub use disconnect::disconnect;
pub use first_run::first_run;
pub use report::{Report, report};
pub use settings::{Settings, settings};
pub use wiring::{Wiring, wiring};
pub use worksheet::{Inputs, Worksheet};
pub use year::{Year, year};
