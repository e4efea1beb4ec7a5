//! What only the browser can do, each behind a small module with types of its
//! own. Nothing here runs while the page is printed.

pub mod clipboard;
pub mod clock;
pub mod early;
pub mod files;
pub mod journal;
pub mod locale;
pub mod page;
pub mod place;
pub mod printing;
pub mod share;
pub mod single_file;
pub mod storage;
pub mod worker;
