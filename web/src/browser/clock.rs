//! How time passes while the page works, and what the clock on the wall says.

/// Milliseconds since the page was opened; endless where the browser has no
/// such clock, so that work in slices gives way after each step.
pub fn now_ms() -> f64 {
    let performance = leptos::prelude::window().performance();
    performance.map_or(f64::INFINITY, |clock| clock.now())
}

/// Milliseconds since 1970 by the clock of the device: it goes on while the page
/// is closed.
pub fn wall_ms() -> f64 {
    js_sys::Date::now()
}
