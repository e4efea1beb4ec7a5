#![forbid(unsafe_code)]
//! What must hold for every input, tried on many drawn at random.
//!
//! The same ones every time, so that a change of the code and not chance makes
//! a test fail. `PROPTEST_RNG_SEED=4711` draws others, as `cargo xtask nightly`
//! does, and `PROPTEST_CASES` more. A failure prints the smallest worksheet found
//! as a link, which any build of the program opens. What was drawn is noted in
//! `tests/proptest-regressions`, is drawn first from then on, and belongs with
//! the mending change. The link belongs in a test: once a worksheet has another
//! input, the same numbers draw another boat.

mod alternators;
mod arrange;
mod balance;
mod belt;
mod built_in;
mod commissioning;
mod day;
mod disconnect;
mod draw;
mod engine_loads;
mod finite;
mod fit;
mod formulas;
mod garbage;
mod goal;
mod goal_plans;
mod lead;
mod legs;
mod link;
mod loads;
mod management;
mod mass;
mod months;
mod numbers;
mod order;
mod packs;
mod readers;
mod regulated;
mod remarks;
mod round_trip;
mod said;
mod service;
mod settings;
mod share;
mod signs;
mod smooth;
mod space;
mod steps;
mod sure;
mod trial;
mod verdict;
mod voltage;
mod wiring;
mod workings;
mod year;

use std::env::var_os;

use ampwright_core::findings::{Code, Finding};
use ampwright_core::text::findings::sentence;
use ampwright_core::units::Reader;
use proptest::prelude::ProptestConfig;
use proptest::test_runner::RngSeed;

/// The code of a finding, which must be one.
fn code(name: &str) -> Code {
    Code::named(name).unwrap_or_else(|| panic!("no finding is named {name}"))
}

/// The sentence of a finding.
fn said(finding: &Finding) -> String {
    sentence(finding, &Reader::METRIC)
}

/// A configuration of this many cases unless the environment says otherwise.
fn cases(usual: u32) -> ProptestConfig {
    let mut config = ProptestConfig {
        max_shrink_iters: 3000,
        // Milliseconds.
        max_shrink_time: 60_000,
        ..ProptestConfig::default()
    };
    if var_os("PROPTEST_CASES").is_none() {
        config.cases = usual;
    }
    if var_os("PROPTEST_RNG_SEED").is_none() {
        config.rng_seed = RngSeed::Fixed(1);
    }
    config
}
