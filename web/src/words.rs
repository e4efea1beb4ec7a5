//! Figures as the page writes them.

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
