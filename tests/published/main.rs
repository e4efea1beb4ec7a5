#![forbid(unsafe_code)]
//! Values taken from published sources, each with its origin and tolerance;
//! README.md lists them and says what is not covered.
//!
//! One module a source or topic. What no source says but anybody can work out
//! from the same formula stands apart, in `by_hand`; rules of the trade that
//! have no source stand in `trade`.

mod battery;
mod belt;
mod by_hand;
mod cable;
mod climate;
mod dump;
mod efficiency;
mod engine;
mod generator;
mod heat;
mod lead;
mod machine_180a;
mod machine_28v;
mod money;
mod plates;
mod solar_radiation;
mod standards;
mod table;
mod trade;

#[track_caller]
fn near(what: &str, ours: f64, theirs: f64, tolerance: f64) {
    assert!(
        (ours - theirs).abs() <= tolerance,
        "{what}: ours {ours:.5}, theirs {theirs:.5}, allowed {tolerance:.5}"
    );
}

/// Within a part of theirs: `near_part("…", 0.99, 1.0, 0.02)`.
#[track_caller]
fn near_part(what: &str, ours: f64, theirs: f64, part: f64) {
    near(what, ours, theirs, part * theirs.abs());
}

#[track_caller]
fn within(what: &str, ours: f64, low: f64, high: f64) {
    assert!(
        (low..=high).contains(&ours),
        "{what}: ours {ours:.4}, expected {low} to {high}"
    );
}

/// Root of the mean square.
fn rms(values: &[f64]) -> f64 {
    (values.iter().map(|x| x * x).sum::<f64>() / values.len() as f64).sqrt()
}
