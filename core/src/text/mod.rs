//! What is said to people: the settings sheet, the commissioning list and the
//! cautions as sentences, and the glossary. It may use everything above it; only
//! `exchange`, the page and the command line use it.
//!
//! A sentence is made of quantities, each shown by the
//! [`Reader`](crate::units::Reader): nobody has to search a text for figures.

pub mod cautions;
pub mod commissioning;
pub mod glossary;
pub mod settings;
