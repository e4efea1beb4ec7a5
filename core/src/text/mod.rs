//! What the words of the trade mean. It may use everything above it; nothing
//! but the page and the command line uses it.

pub mod glossary;
