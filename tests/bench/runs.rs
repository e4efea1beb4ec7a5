#![forbid(unsafe_code)]
//! Charging runs and nothing else, for the stopwatch: built as the page is, and
//! run by the browser; see `wasm.rs`.

mod boat;

/// As `wasm.rs` counts them.
const RUNS: u32 = 100;

fn main() {
    for _ in 0..RUNS {
        std::hint::black_box(boat::run(std::hint::black_box(&boat::plant())));
    }
}
