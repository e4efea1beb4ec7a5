//! How time passes while the page works.

/// Milliseconds since the page was opened; endless where the browser has no
/// such clock, so that work in slices gives way after each step.
pub fn now_ms() -> f64 {
    let performance = leptos::prelude::window().performance();
    performance.map_or(f64::INFINITY, |clock| clock.now())
}
