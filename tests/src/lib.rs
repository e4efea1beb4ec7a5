#![forbid(unsafe_code)]
//! What the tests and the programs around them share.

#[cfg(feature = "browser")]
pub mod driver;
#[cfg(feature = "server")]
pub mod server;
pub mod troubled;
