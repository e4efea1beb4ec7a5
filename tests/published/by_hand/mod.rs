//! Arithmetic of the formulas, worked independently of this program: by hand,
//! or by stepping through time. No published values stand here.

mod bridge;
mod cable;
mod day;
pub mod fit;
mod heat;
mod output;
mod pulls;
mod sums;
