#![forbid(unsafe_code)]
//! What the task runner and the tests share.

pub mod bundle;
pub mod files;
pub mod places;
pub mod programs;
