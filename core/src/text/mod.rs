//! What the words of the trade mean. It may use everything above it; nothing
//! but the page and the command line uses it.

#[cfg(feature = "words")]
pub mod glossary;
