#![forbid(unsafe_code)]
//! Whole worksheets and messages, kept as text and compared.
//!
//! REGRESSION VALUES OF OUR OWN OUTPUT. Nothing here was published or measured
//! by anyone; a change means that results or words changed, not that they are
//! wrong. To take a change over: `INSTA_UPDATE=always cargo test --test
//! snapshots`, then read the difference before keeping it, and name changed
//! results in the changelog.

mod fields;
mod fit;
mod legs;
mod messages;
mod refusals;
mod reports;
mod round;
mod sources;
mod version1;
mod version2;
mod wiring;
mod workings;
