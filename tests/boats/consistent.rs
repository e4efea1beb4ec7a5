//! What must hold of every boat, whatever an expert says of it: no part of the
//! answer contradicts another one.

mod chemistry;
mod day;
mod heat;
pub mod proposals;
mod sentences;
mod sheet;

use crate::says::Says;

/// Notes every contradiction.
pub fn check(says: &Says) {
    sentences::check(says);
    day::check(says);
    heat::check(says);
    sheet::check(says);
    chemistry::check(says);
    proposals::check(says);
}
