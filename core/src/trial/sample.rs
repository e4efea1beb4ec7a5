//! A log to try the sea trial with.

/// Readings of an invented boat: nobody has taken them.
pub const SAMPLE: &str = "";
