#![forbid(unsafe_code)]
//! How long the calculations take.

fn main() {
    println!("calculation                time");
}
