//! Figures and words as the page writes them.

/// A number with so many decimals and a real minus sign.
pub fn figure(number: f64, decimals: usize) -> String {
    format!("{number:.decimals$}").replace('-', "\u{2212}")
}

/// Hours as a share of an axis: "0", "30 min", "2 h".
pub fn axis_time(minutes: f64) -> String {
    let whole = minutes.round() as i64;
    match (whole / 60, whole % 60) {
        (0, 0) => "0".to_string(),
        (0, minutes) => format!("{minutes} min"),
        (hours, 0) => format!("{hours} h"),
        (hours, minutes) => format!("{hours} h {minutes:02}"),
    }
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
