//! Drives a real browser, Chromium as a rule, through the WebDriver protocol, step by step: each
//! call returns when the browser has done it.
//!
//! Every [`Browser`] has its own driver process, its own port and its own
//! profile folder, and takes them all away when it is dropped.

mod browser;
mod command;
mod element;
mod engine;
mod logs;
mod paper;
mod picture;
mod process;
mod profile;
mod role;
mod screen;
mod touch;
mod waiting;
mod windows;

pub use browser::Browser;
pub use element::{Element, keys};
pub use engine::Engine;
pub use logs::Note;
pub use paper::Paper;
pub use profile::Profile;
pub use role::{Role, Scope};
pub use screen::Screen;
pub use waiting::patiently;

/// What every step answers: the reason in plain words when it went wrong.
pub type Result<T> = std::result::Result<T, String>;
