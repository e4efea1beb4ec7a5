//! A list with something of each alternator.

use arrayvec::ArrayVec;

use crate::boat::WhichAlternator;

/// The most alternators on one engine.
pub const MOST_ALTERNATORS: usize = 3;

const _: () = assert!(WhichAlternator::ALL.len() <= MOST_ALTERNATORS);

/// Something of each alternator, in their order.
pub type PerAlternator<T> = ArrayVec<T, MOST_ALTERNATORS>;

/// Lists what an iterator gives of each alternator: `collect` for the inner loop of
/// a run, where that takes a sixth of the time.
pub(crate) fn listed<T>(each: impl Iterator<Item = T>) -> PerAlternator<T> {
    let mut list = PerAlternator::new();
    for one in each {
        list.push(one);
    }
    list
}
