//! The day closes: what goes in comes out, what asks more takes longer, a bank that
//! holds no day gets several runs, and the year runs the engine as the day says.
//!
//! `boats` draws the boats; the others hold one part each.

mod boats;
mod closing;
mod rule;
mod runs;
mod trouble;
mod year;
