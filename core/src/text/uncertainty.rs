//! How certain the answers are: ranges in a few words and as a sentence.

use crate::decision::uncertainty::{Range, UncertainAnswer};
use crate::units::brief_clock;

/// A range from low to high: "1 h 20 to 2 h 10", "none to 50 min", "3 h to
/// never", "45 to 60 A".
pub fn range(range: &Range) -> String {
    let (low, high) = ends(range);
    let step = step(range.answer, low, high);
    let (low, high) = in_steps(
        (low, high),
        or_never(range.stands),
        step,
        finest(range.answer),
    );
    let (low, high) = (one(range.answer, low, step), one(range.answer, high, step));
    if low == high {
        return low;
    }
    format!("{} to {high}", low.trim_end_matches(" A"))
}

/// The range and the answer as it stands, as a sentence, and how many of all
/// cases have no answer.
pub fn sentence(of: &Range) -> String {
    let (answer, (low, high)) = (of.answer, ends(of));
    let what = match answer {
        UncertainAnswer::EngineTime => "Engine time a day",
        UncertainAnswer::HotCurrent => "Alternator, hot",
    };
    let range = range(of);
    let stands = or_never(of.stands);
    let inside = stands >= low && stands <= high;
    let stands = one(answer, stands, step(answer, low, high));
    let likely = match (stands == range, inside) {
        (true, _) => String::new(),
        (_, true) => format!(", most likely {stands}"),
        (_, false) => format!("; your figures as they stand give {stands}"),
    };
    let never = match of.never_pct.round() {
        0.0 => String::new(),
        pct => format!(" In {pct:.0} of 100 cases no engine time in a day is long enough."),
    };
    format!("{what}: {range}{likely}.{never}")
}

/// What lies at both ends of a range; infinite for "never".
fn ends(range: &Range) -> (f64, f64) {
    (or_never(range.low), or_never(range.high))
}

/// Both ends in whole steps, the nearest ones that leave the answer as it stands, told
/// as finely as any, inside where it is.
fn in_steps((low, high): (f64, f64), stands: f64, step: f64, finest: f64) -> (f64, f64) {
    let steps = |end: f64, round: fn(f64) -> f64| round(end / step) * step;
    let (mut from, mut to) = (steps(low, f64::round), steps(high, f64::round));
    if stands >= low && stands < from - 0.5 * finest {
        from = steps(low, f64::floor);
    }
    if stands <= high && stands > to + 0.5 * finest {
        to = steps(high, f64::ceil);
    }
    (from, to)
}

fn or_never(figure: Option<f64>) -> f64 {
    figure.unwrap_or(f64::INFINITY)
}

/// How wide a range is, in words.
pub fn width(answer: UncertainAnswer, width: f64) -> String {
    // As fine as a range of a sixth of that: two widths are to be compared.
    one(answer, width, step(answer, 0.0, width / 6.0))
}

/// A minute \[h\].
const MINUTE: f64 = 1.0 / 60.0;

/// Finest part worth writing of a range: five minutes of a wide one, one of a narrow
/// one; an ampere.
fn step(answer: UncertainAnswer, low: f64, high: f64) -> f64 {
    match answer {
        UncertainAnswer::EngineTime if high - low >= 20.0 * MINUTE => 5.0 * MINUTE,
        answer => finest(answer),
    }
}

/// Finest part worth writing of an answer: a minute, an ampere.
const fn finest(answer: UncertainAnswer) -> f64 {
    match answer {
        UncertainAnswer::HotCurrent => 1.0,
        UncertainAnswer::EngineTime => MINUTE,
    }
}

fn one(answer: UncertainAnswer, figure: f64, step: f64) -> String {
    if figure.is_infinite() {
        return "never".to_string();
    }
    let figure = ((figure / step).round() * step).max(0.0);
    if answer == UncertainAnswer::HotCurrent {
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
    use crate::decision::uncertainty::{Range, UncertainAnswer};
    use crate::text::uncertainty::{range, sentence};

    const ENGINE: UncertainAnswer = UncertainAnswer::EngineTime;
    const HOT: UncertainAnswer = UncertainAnswer::HotCurrent;

    fn of(answer: UncertainAnswer, low: f64, high: f64, stands: f64, never_pct: f64) -> Range {
        let finite = |figure: f64| figure.is_finite().then_some(figure);
        Range {
            answer,
            stands: finite(stands),
            low: finite(low),
            middle: finite(stands),
            high: finite(high),
            width: high - low,
            never_pct,
            readings: Vec::new(),
        }
    }

    #[track_caller]
    fn check(answer: UncertainAnswer, low: f64, high: f64, expected: &str) {
        assert_eq!(range(&of(answer, low, high, low, 0.0)), expected);
    }

    #[test]
    fn ranges() {
        check(ENGINE, 1.33, 2.18, "1 h 20 to 2 h 10");
        check(ENGINE, 0.0, 0.83, "none to 50 min");
        check(ENGINE, 1.51, 1.60, "1 h 31 to 1 h 36");
        check(ENGINE, 2.0, 2.001, "2 h");
        check(ENGINE, 3.0, f64::INFINITY, "3 h to never");
        check(ENGINE, f64::INFINITY, f64::INFINITY, "never");
        check(ENGINE, 0.0, 0.0, "none");
        check(HOT, 44.6, 59.6, "45 to 60 A");
        check(HOT, 45.4, 45.1, "45 A");
        // The answer itself, 49 min, is not left outside.
        assert_eq!(
            range(&of(ENGINE, 0.805, f64::INFINITY, 0.816, 0.0)),
            "45 min to never"
        );
    }

    #[test]
    fn sentences() {
        let hours = |low, high, stands, never| sentence(&of(ENGINE, low, high, stands, never));
        assert_eq!(
            hours(1.33, 2.18, 1.66, 0.0),
            "Engine time a day: 1 h 20 to 2 h 10, most likely 1 h 40."
        );
        assert_eq!(
            hours(1.33, 2.18, 2.5, 0.2),
            "Engine time a day: 1 h 20 to 2 h 10; your figures as they stand give 2 h 30."
        );
        assert_eq!(
            hours(3.0, f64::INFINITY, 4.0, 12.3),
            "Engine time a day: 3 h to never, most likely 4 h. In 12 of 100 cases no engine time in a day is long enough."
        );
        assert_eq!(hours(0.0, 0.0, 0.0, 0.0), "Engine time a day: none.");
        assert_eq!(
            sentence(&of(HOT, 44.6, 59.6, 50.0, 0.0)),
            "Alternator, hot: 45 to 60 A, most likely 50 A."
        );
    }
}
