//! How a reader wants figures: in which units, and with a decimal point or comma.
//! This is the one place that writes a figure.
//!
//! `wishes` is what a reader wants, `write` writes figures so, `digits` sets their
//! digits. Uses the units and quantities.

mod digits;
#[cfg(test)]
mod tests;
mod wishes;
mod write;

pub use wishes::Reader;
