//! What only the browser can do, each behind a small module with types of its
//! own. Nothing here runs while the page is printed.

pub mod clipboard;
pub mod clock;
pub mod early;
pub mod files;
// Only the browser asks for all of it.
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code))]
pub mod journal;
pub mod locale;
pub mod page;
pub mod place;
// Only the start asks for it.
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code))]
pub mod printed;
pub mod printing;
pub mod share;
pub mod single_file;
pub mod storage;
pub mod wake_lock;
pub mod worker;
