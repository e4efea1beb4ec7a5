//! Figures in words: the one place where volts, amperes, degrees and times become
//! text.

/// Minutes as "2 h 05 min" or "35 min".
pub fn clock(minutes: f64) -> String {
    let whole = minutes.round().max(0.0) as u64;
    match (whole / 60, whole % 60) {
        (0, minutes) => format!("{minutes} min"),
        (hours, minutes) => format!("{hours} h {minutes:02} min"),
    }
}

/// Longest time that is told in seconds \[s\].
const MOST_S: f64 = 90.0;

/// Seconds as "40 s", and as [`clock`] has them from a minute and a half on:
/// "2 min", "1 h 05 min".
pub(crate) fn after(seconds: f64) -> String {
    if seconds < MOST_S {
        format!("{seconds:.0} s")
    } else {
        clock(seconds / 60.0)
    }
}

/// Minutes as briefly as a range or an axis has room for: "35 min", "2 h",
/// "2 h 05". Below nought as nought.
pub fn brief_clock(minutes: f64) -> String {
    let whole = minutes.round().max(0.0) as u64;
    match (whole / 60, whole % 60) {
        (0, minutes) => format!("{minutes} min"),
        (hours, 0) => format!("{hours} h"),
        (hours, minutes) => format!("{hours} h {minutes:02}"),
    }
}

/// Minutes as an axis names its ticks: as [`brief_clock`] has them, and nought
/// bare: "0", "30 min", "2 h".
pub fn axis_clock(minutes: f64) -> String {
    if minutes.round() == 0.0 {
        return "0".to_string();
    }
    brief_clock(minutes)
}

/// Amperes cut to what [`amperes`](crate::units::quantity::amperes) writes.
pub(crate) fn down(a: f64) -> f64 {
    let step = if a < 10.0 { 10.0 } else { 1.0 };
    (a * step).floor() / step
}

#[cfg(test)]
mod tests {
    use crate::units::format::{after, axis_clock, brief_clock};

    #[test]
    fn times() {
        assert_eq!(
            [5.2, 89.0, 90.0, 3900.0].map(after),
            ["5 s", "89 s", "2 min", "1 h 05 min"]
        );
        assert_eq!(
            [-3.0, 0.4, 59.4, 59.6, 125.0].map(brief_clock),
            ["0 min", "0 min", "59 min", "1 h", "2 h 05"]
        );
        assert_eq!([0.2, 30.0, 120.0].map(axis_clock), ["0", "30 min", "2 h"]);
    }
}
