//! What is said to the reader, in English: sentences for what the layers above
//! found, and what the words of the trade mean. It may use everything above it;
//! only [`crate::exchange`], the page and the command line use it.

pub mod calibration;
pub mod errors;
pub mod glossary;
pub mod remarks;
