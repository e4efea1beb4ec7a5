#![forbid(unsafe_code)]
//! What must hold for every input, tried on many drawn at random.
//!
//! `PROPTEST_CASES` overrides how many. A failure prints the smallest
//! worksheet found as a link, which any build of the program opens.

mod draw;
mod finite;
mod garbage;
mod numbers;
mod order;
mod round_trip;
mod smooth;
mod steps;

use proptest::prelude::ProptestConfig;

/// A configuration of this many cases unless `PROPTEST_CASES` says otherwise.
fn cases(usual: u32) -> ProptestConfig {
    let config = ProptestConfig {
        failure_persistence: None,
        max_shrink_iters: 3000,
        ..ProptestConfig::default()
    };
    match std::env::var_os("PROPTEST_CASES") {
        Some(_) => config,
        None => ProptestConfig {
            cases: usual,
            ..config
        },
    }
}
