#![forbid(unsafe_code)]
//! What the task runner and the browser tests share.

pub mod bundle;
#[cfg(feature = "browser")]
pub mod driver;
pub mod places;
pub mod programs;
pub mod server;
pub mod troubled;
