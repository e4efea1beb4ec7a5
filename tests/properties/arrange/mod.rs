//! Arrangements beside each other.
//!
//! `boats` are those of the tests; `outcomes`, `proposals` and `bills` hold what comes
//! of an arrangement, what is proposed, and what would have to be bought.

mod bills;
mod boats;
mod outcomes;
mod proposals;
