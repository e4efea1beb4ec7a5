//! A list with something of each alternator.

use arrayvec::ArrayVec;

use crate::boat::WhichAlternator;

/// The most alternators on one engine.
pub const MOST_ALTERNATORS: usize = 3;

const _: () = assert!(WhichAlternator::ALL.len() <= MOST_ALTERNATORS);

/// Something of each alternator, in their order.
pub type PerAlternator<T> = ArrayVec<T, MOST_ALTERNATORS>;
