//! The cheapest way to a goal: combinations of changes, each worked out with
//! the real charging run, and the few that no other beats on money and hours.
//!
//! `lever` lists what may be changed and by how much, `weigh` works one
//! combination out, `front` keeps those that nothing beats, `search` goes
//! through the combinations in pieces, `plan` tells what came of it.

mod front;
mod lever;
mod plan;
mod search;
mod weigh;

pub use plan::{Found, Plan, Step};
pub use search::Search;
