//! Numerics that know nothing of boats: roots, linear equations, stepping
//! through time, least squares, a line through points, statistics. They use
//! nothing of this crate.

pub mod bracketed_root;
pub mod hermite;
mod interpolation;
pub mod least_squares;
pub mod line;
pub mod linear;
pub mod ode;
mod rodas;
mod statistics;

pub use bracketed_root::bracketed_root;
pub use interpolation::{interpolate, interpolate_evenly};
pub use statistics::mean_and_deviation;
