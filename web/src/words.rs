//! Figures and words as the page writes them.

use ampwright_core::units::brief_clock;

/// A number with so many decimals and a real minus sign.
pub fn figure(number: f64, decimals: usize) -> String {
    format!("{number:.decimals$}").replace('-', "\u{2212}")
}

/// Hours as a share of an axis: "0", "30 min", "2 h".
pub fn axis_time(minutes: f64) -> String {
    if minutes.round() == 0.0 {
        return "0".to_string();
    }
    brief_clock(minutes)
}

/// A text that may stand between tags: whoever named a load or a worksheet
/// wrote words, not markup.
pub fn escape(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
        .replace('\'', "&#39;")
}
