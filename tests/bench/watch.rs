//! A stopwatch and plain table rows.

use std::hint::black_box;
use std::time::Instant;

/// Timings that a median is taken of.
const RUNS: usize = 200;

/// Median of the timings \[s\], after a few to warm up.
pub fn median_s<T>(mut work: impl FnMut() -> T) -> f64 {
    for _ in 0..RUNS / 10 {
        black_box(work());
    }
    let mut seconds: Vec<f64> = (0..RUNS)
        .map(|_| {
            let begin = Instant::now();
            black_box(work());
            begin.elapsed().as_secs_f64()
        })
        .collect();
    seconds.sort_by(f64::total_cmp);
    seconds[RUNS / 2]
}

/// A row of a table.
pub fn row(what: &str, cells: &[String]) {
    print!("{what:<44} {:>12}", cells.first().map_or("", |cell| cell));
    for cell in cells.iter().skip(1) {
        print!(" {cell:>10}");
    }
    println!();
}
