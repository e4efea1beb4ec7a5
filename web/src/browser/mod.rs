//! What only the browser can do, each behind a small module with types of its
//! own. Nothing here runs while the page is printed.

pub mod clock;
pub mod early;
pub mod locale;
pub mod page;
pub mod place;
pub mod print;
