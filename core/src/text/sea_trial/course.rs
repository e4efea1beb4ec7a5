//! Where the case is heading, in words.

use crate::decision::calibration::outlook::Outlook;
use crate::decision::calibration::stop::StopLimits;
use crate::units::quantity::{celsius, kelvin, minutes};
use crate::units::{Quantity, QuantityKind, Reader};

/// Older than this a reading says little about now \[min\]. Own reasoning.
const OLD_MIN: f64 = 10.0;

/// Where the case is heading, counted from now. `case_c` is its last reading and
/// `next_c` the level it was held against \[°C\], `since_min` how long ago the
/// reading was taken.
pub fn outlook(
    outlook: &Outlook,
    limits: &StopLimits,
    (case_c, next_c): (f64, f64),
    since_min: f64,
    reader: &Reader,
) -> String {
    let level = reader.show(celsius(next_c));
    let at = |case_c: f64| reader.show(celsius(case_c));
    let rate = |k_min: f64| format!("{} a minute", reader.show(kelvin(k_min).to(1)));
    if since_min > OLD_MIN {
        return format!(
            "The last reading is {} old: take another one.",
            reader.show(minutes(since_min))
        );
    }
    match *outlook {
        Outlook::TooFew => {
            "Two readings of the case, a minute or more apart, tell how fast it warms; four tell where it levels off.".to_string()
        }
        Outlook::Reached { case_c } => format!("The case is at {}, over the stop line.", at(case_c)),
        Outlook::Falls { case_c, k_min } => {
            format!("The case is at {} and cools by {}.", at(case_c), rate(k_min))
        }
        Outlook::Steady { case_c } => format!("The case holds steady at {}.{}", at(case_c), held(limits, case_c, reader)),
        Outlook::LevelsOff { at_c } => format!(
            "The case is levelling off at about {}, below {level}.",
            at(at_c)
        ),
        Outlook::Rises {
            k_min,
            earliest_min,
            likely_min,
            latest_min,
        } => {
            let meaning = meaning(limits, next_c);
            let left = |minutes: f64| (minutes - since_min).max(0.0);
            let time = match (likely_min, latest_min) {
                (Some(likely), Some(latest)) if is_narrow(earliest_min, latest) => {
                    format!(" in {}", about(left(likely), reader))
                }
                (_, Some(latest)) => format!(" in {}", span(left(earliest_min), left(latest), reader)),
                (_, None) => format!(
                    " in {} at the earliest; it may also level off before",
                    about(left(earliest_min), reader)
                ),
            };
            format!(
                "The case rises by {}. At this rate it reaches {level}{meaning}{time}.{}",
                rate(k_min),
                held(limits, case_c, reader)
            )
        }
    }
}

/// What it means that the case is hotter than its regulator should let it get.
fn held(limits: &StopLimits, case_c: f64, reader: &Reader) -> String {
    match limits.holds_c {
        Some(holds_c) if limits.is_not_held(case_c) => format!(
            " The regulator should hold {}: check that its sensor sits bare and tight on the case.",
            reader.show(celsius(holds_c))
        ),
        _ => String::new(),
    }
}

/// What happens at a level.
fn meaning(limits: &StopLimits, next_c: f64) -> &'static str {
    match limits.holds_c {
        Some(holds_c) if holds_c == next_c && next_c < limits.case_c => {
            ", where the regulator begins to hold it,"
        }
        _ => ", the stop line,",
    }
}

/// Whether a range of times is told as one time.
fn is_narrow(earliest_min: f64, latest_min: f64) -> bool {
    latest_min - earliest_min <= (0.25 * latest_min).max(2.0)
}

fn about(minutes_left: f64, reader: &Reader) -> String {
    match minutes_left.round() {
        left if left < 1.0 => "less than a minute".to_string(),
        left => reader.show(minutes(left)),
    }
}

fn span(earliest_min: f64, latest_min: f64, reader: &Reader) -> String {
    let (earliest, latest) = (earliest_min.round().max(1.0), latest_min.round().max(1.0));
    if earliest == latest {
        return about(latest, reader);
    }
    let earliest = Quantity::new(earliest, QuantityKind::Count);
    format!(
        "{} to {}",
        reader.number(earliest),
        reader.show(minutes(latest))
    )
}

/// How the case compares with what was calculated for the same minute; nothing
/// within what a thermometer can tell.
pub fn against_calculation(read_c: f64, calculated_c: f64, reader: &Reader) -> String {
    /// What thermometer and taped spot are off by \[K\]: own reasoning.
    const SAME_K: f64 = 3.0;
    let more_k = read_c - calculated_c;
    let by = reader.show(kelvin(more_k.abs()));
    if more_k.abs() < SAME_K {
        "That is what was calculated for this minute.".to_string()
    } else if more_k > 0.0 {
        format!("That is {by} hotter than calculated for this minute.")
    } else {
        format!("That is {by} cooler than calculated for this minute.")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::analysis::Part;
    use crate::decision::calibration::stop::StopWay;

    const LIMITS: StopLimits = StopLimits {
        case_c: 117.0,
        decided_by: Part::Rectifier,
        part_limit_c: 135.0,
        winding_c: 155.0,
        rectifier_c: 135.0,
        volts: 14.7,
        disconnects: true,
        holds_c: Some(105.0),
        way: StopWay::CutField,
    };

    #[track_caller]
    fn says(found: Outlook, next_c: f64, since_min: f64, sentence: &str) {
        let case_c = match found {
            Outlook::Steady { case_c } => case_c,
            _ => next_c - 25.0,
        };
        let said = outlook(
            &found,
            &LIMITS,
            (case_c, next_c),
            since_min,
            &Reader::METRIC,
        );
        assert_eq!(said, sentence);
    }

    fn rises(likely_min: Option<f64>, latest_min: Option<f64>) -> Outlook {
        Outlook::Rises {
            k_min: 2.94,
            earliest_min: 8.6,
            likely_min,
            latest_min,
        }
    }

    #[test]
    fn a_rise_is_told_as_certainly_as_it_is() {
        says(
            rises(Some(9.0), Some(10.2)),
            105.0,
            0.0,
            "The case rises by 2.9 K a minute. At this rate it reaches 105 °C, where the regulator begins to hold it, in 9 min.",
        );
        says(
            rises(Some(9.0), Some(10.2)),
            117.0,
            5.0,
            "The case rises by 2.9 K a minute. At this rate it reaches 117 °C, the stop line, in 4 min.",
        );
        says(
            rises(Some(11.0), Some(15.8)),
            117.0,
            0.0,
            "The case rises by 2.9 K a minute. At this rate it reaches 117 °C, the stop line, in 9 to 16 min.",
        );
        says(
            rises(Some(11.0), None),
            117.0,
            0.0,
            "The case rises by 2.9 K a minute. At this rate it reaches 117 °C, the stop line, in 9 min at the earliest; it may also level off before.",
        );
    }

    #[test]
    fn a_steady_case_above_what_the_regulator_holds_is_a_fault() {
        let steady = |case_c| Outlook::Steady { case_c };
        says(
            steady(104.0),
            105.0,
            0.0,
            "The case holds steady at 104 °C.",
        );
        says(
            steady(112.0),
            117.0,
            0.0,
            "The case holds steady at 112 °C. The regulator should hold 105 °C: check that its sensor sits bare and tight on the case.",
        );
    }

    #[test]
    fn a_case_that_passes_what_the_regulator_holds_is_told_on() {
        let said = outlook(
            &rises(Some(9.0), Some(10.0)),
            &LIMITS,
            (111.0, 117.0),
            0.0,
            &Reader::METRIC,
        );
        assert!(said.ends_with("bare and tight on the case."), "{said}");
    }

    #[test]
    fn an_old_reading_says_nothing_of_now() {
        says(
            rises(Some(9.0), Some(10.0)),
            105.0,
            14.0,
            "The last reading is 14 min old: take another one.",
        );
    }

    #[test]
    fn small_differences_from_the_calculation_are_none() {
        let told = |read_c| against_calculation(read_c, 90.0, &Reader::METRIC);
        assert_eq!(told(92.0), "That is what was calculated for this minute.");
        assert_eq!(
            told(97.0),
            "That is 7 K hotter than calculated for this minute."
        );
        assert_eq!(
            told(80.0),
            "That is 10 K cooler than calculated for this minute."
        );
    }
}
