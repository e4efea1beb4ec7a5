//! What takes too long for every change, or would fail by chance: properties
//! with other numbers than usual, and the readers for longer.

use crate::{
    Result, fuzz,
    run::{cargo_command, say, succeed},
};
use std::time::{SystemTime, UNIX_EPOCH};

/// Tries both with this seed, or with one that is other each time; each reader
/// for so long \[s\].
pub fn nightly(seed: Option<u32>, fuzz_s: u64) -> Result<()> {
    let seed = seed.unwrap_or_else(of_now);
    say(&format!(
        "Drawing from the seed {seed}; `cargo xtask nightly --seed {seed}` draws the same again."
    ));
    let mut properties = cargo_command(&[
        "test",
        "--quiet",
        "--locked",
        "--package=ampwright-tests",
        "--test=properties",
        "--no-fail-fast",
    ]);
    properties.env("PROPTEST_RNG_SEED", seed.to_string());
    let held = succeed(properties);
    // The readers are tried even so.
    let bore = fuzz::fuzz(fuzz::Bound::Seconds(Some(fuzz_s)), seed);
    held.and(bore)
}

/// One that nobody has drawn from, most likely.
fn of_now() -> u32 {
    let now = SystemTime::now().duration_since(UNIX_EPOCH);
    let drawn = now.map_or(2, |since| since.as_secs() as u32 ^ since.subsec_nanos());
    // Libfuzzer takes 0 for no seed.
    drawn.max(2)
}
