//! A range in a few words.

use crate::units::brief_clock;

/// What a figure is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Hours of a day, for the engine.
    EngineHours,
    /// Amperes, of the hot alternator.
    HotAmperes,
}

/// "1 h 20 to 2 h 10", "none to 50 min", "3 h to never", "45 to 60 A".
pub fn range(kind: Kind, low: f64, high: f64) -> String {
    let step = step(kind, low, high);
    let (low, high) = (one(kind, low, step), one(kind, high, step));
    if low == high {
        return low;
    }
    format!("{} to {high}", low.trim_end_matches(" A"))
}

/// The range and the answer as it stands, as a sentence; `never_pct` of all
/// runs have no answer.
pub fn sentence(kind: Kind, low: f64, high: f64, stands: f64, never_pct: f64) -> String {
    let what = match kind {
        Kind::EngineHours => "Engine time a day",
        Kind::HotAmperes => "Alternator, hot",
    };
    let range = range(kind, low, high);
    let inside = stands >= low && stands <= high;
    let stands = one(kind, stands, step(kind, low, high));
    let likely = match (stands == range, inside) {
        (true, _) => String::new(),
        (_, true) => format!(", most likely {stands}"),
        (_, false) => format!("; the figures as they stand give {stands}"),
    };
    let never = match never_pct.round() {
        0.0 => String::new(),
        pct => format!(" In {pct:.0} of 100 cases no run of a day is long enough."),
    };
    format!("{what}: {range}{likely}.{never}")
}

/// How wide a range is, in words.
pub fn width(kind: Kind, width: f64) -> String {
    // As fine as a range of a sixth of that: two widths are to be compared.
    one(kind, width, step(kind, 0.0, width / 6.0))
}

/// Finest part worth writing: five minutes of a wide range, one of a narrow
/// one; an ampere.
fn step(kind: Kind, low: f64, high: f64) -> f64 {
    const MINUTE: f64 = 1.0 / 60.0;
    match kind {
        Kind::HotAmperes => 1.0,
        Kind::EngineHours if high - low < 20.0 * MINUTE => MINUTE,
        Kind::EngineHours => 5.0 * MINUTE,
    }
}

fn one(kind: Kind, figure: f64, step: f64) -> String {
    if figure.is_infinite() {
        return "never".to_string();
    }
    let figure = ((figure / step).round() * step).max(0.0);
    if kind == Kind::HotAmperes {
        return format!("{figure:.0} A");
    }
    let minutes = (figure * 60.0).round();
    if minutes == 0.0 {
        return "none".to_string();
    }
    brief_clock(minutes)
}

#[cfg(test)]
mod tests {
    use crate::decision::uncertainty::words::{Kind, range, sentence};

    #[track_caller]
    fn check(kind: Kind, low: f64, high: f64, expected: &str) {
        assert_eq!(range(kind, low, high), expected);
    }

    #[test]
    fn ranges() {
        use Kind::{EngineHours, HotAmperes};
        check(EngineHours, 1.33, 2.18, "1 h 20 to 2 h 10");
        check(EngineHours, 0.0, 0.83, "none to 50 min");
        check(EngineHours, 1.51, 1.60, "1 h 31 to 1 h 36");
        check(EngineHours, 2.0, 2.001, "2 h");
        check(EngineHours, 3.0, f64::INFINITY, "3 h to never");
        check(EngineHours, f64::INFINITY, f64::INFINITY, "never");
        check(EngineHours, 0.0, 0.0, "none");
        check(HotAmperes, 44.6, 59.6, "45 to 60 A");
        check(HotAmperes, 45.4, 45.1, "45 A");
    }

    #[test]
    fn sentences() {
        let hours =
            |low, high, stands, never| sentence(Kind::EngineHours, low, high, stands, never);
        assert_eq!(
            hours(1.33, 2.18, 1.66, 0.0),
            "Engine time a day: 1 h 20 to 2 h 10, most likely 1 h 40."
        );
        assert_eq!(
            hours(1.33, 2.18, 2.5, 0.2),
            "Engine time a day: 1 h 20 to 2 h 10; the figures as they stand give 2 h 30."
        );
        assert_eq!(
            hours(3.0, f64::INFINITY, 4.0, 12.3),
            "Engine time a day: 3 h to never, most likely 4 h. In 12 of 100 cases no run of a day is long enough."
        );
        assert_eq!(hours(0.0, 0.0, 0.0, 0.0), "Engine time a day: none.");
        assert_eq!(
            sentence(Kind::HotAmperes, 44.6, 59.6, 50.0, 0.0),
            "Alternator, hot: 45 to 60 A, most likely 50 A."
        );
    }
}
