//! The goal search: combinations of changes, each worked out with the real
//! charging run, and the few that no other beats on money and hours.
//!
//! Nothing that does harm is ever a plan, and harm is judged by itself, not
//! against how bad the boat is today. It is looked for in two stages: `rules`
//! are quick and spare most of the work, and whatever would become a plan is
//! verified with the whole report.
//!
//! `lever` lists what may be changed and by how much, `weigh` works one
//! combination out, `front` keeps those that nothing beats, `queue` numbers the
//! combinations and says which is next, `search` goes through them in pieces,
//! `found` says what came of it and `plan`
//! tells each plan step by step.

mod found;
mod front;
mod lever;
mod plan;
mod queue;
mod rules;
mod search;
mod weigh;

pub use found::{Found, Unmet};
pub use lever::Change;
pub use plan::{Plan, Step};
pub use search::Search;
