//! Where the case is heading: never more certain than the readings are.

use super::*;
use crate::draw::any_sheet;
use ampwright_core::decision::calibration;
use ampwright_core::decision::calibration::outlook::{Outlook, outlook};
use ampwright_core::decision::calibration::stop::StopLimits;
use ampwright_core::text::sea_trial::{stop_line, why_stop};
use ampwright_core::units::Reader;

/// Whole degrees of a case that warms by 1 − exp(−t/τ), and when it reaches a
/// level after the last reading; none when it never does.
fn warming(
    from_c: f64,
    rise_k: f64,
    tau_min: f64,
    every_min: f64,
    count: usize,
    level_c: f64,
) -> (String, Option<f64>) {
    let mut text = String::from("minute;case\n");
    let minutes = (0..count).map(|k| every_min * k as f64);
    let mut last = 0.0;
    for minute in minutes {
        let case_c = from_c + rise_k * (1.0 - (-minute / tau_min).exp());
        writeln!(text, "{minute};{:.0}", case_c).expect("a text");
        last = minute;
    }
    let left_k = from_c + rise_k - level_c;
    let reached = (left_k > 0.0).then(|| tau_min * (rise_k / left_k).ln() - last);
    (text, reached)
}

proptest! {
    #![proptest_config(crate::cases(300))]

    /// Own reasoning: a time that is said for certain holds for the case that
    /// the readings were taken of; whole degrees are what a thermometer gives.
    #[test]
    fn a_certain_time_is_the_right_one(
        from_c in 5.0..45.0f64,
        rise_k in 30.0..140.0f64,
        tau_min in 4.0..40.0f64,
        every_min in 1.0..3.0f64,
        count in 3usize..16,
        level_share in 0.3..1.2f64,
    ) {
        let level_c = from_c + level_share * rise_k;
        let (text, reached) = warming(from_c, rise_k, tau_min, every_min, count, level_c);
        let log = calibration::read(&text);
        prop_assert!(log.remarks.is_empty(), "{:?}", log.remarks);
        let found = outlook(&log.rows, level_c);
        // Half a degree of rounding moves a time by half a minute or more.
        match (found, reached) {
            (Outlook::Rises { earliest_min, latest_min, k_min, .. }, reached) => {
                prop_assert!(earliest_min >= 0.0 && k_min > 0.0);
                let slack = 1.0 + 1.0 / k_min;
                if let Some(reached) = reached {
                    prop_assert!(earliest_min <= 1.15 * reached.max(0.0) + slack, "{found:?} {reached}\n{text}");
                }
                if let Some(latest) = latest_min {
                    prop_assert!(earliest_min <= latest);
                    let reached = reached.unwrap_or(f64::INFINITY);
                    prop_assert!(reached <= 1.15 * latest + slack, "{found:?} {reached}\n{text}");
                }
            }
            (Outlook::LevelsOff { at_c }, reached) => {
                let settles_c = from_c + rise_k;
                let late = reached.is_none_or(|reached| reached > 20.0);
                prop_assert!(at_c < level_c && (settles_c < level_c + 5.0 || late), "{found:?} {settles_c}\n{text}");
            }
            (Outlook::Reached { .. }, reached) => prop_assert!(reached.is_some_and(|reached| reached <= 0.5 / (rise_k / tau_min) + every_min)),
            (Outlook::Steady { .. } | Outlook::TooFew, _) => {}
            (Outlook::Falls { .. }, _) => prop_assert!(false, "{text}"),
        }
    }

    /// Any readings at all: finite times, the earliest first.
    #[test]
    fn any_readings_have_an_outlook(
        rows in proptest::collection::vec((0.0..60.0f64, -30.0..350.0f64), 0..40),
        level_c in 40.0..200.0f64,
    ) {
        let mut text = String::from("minute;case\n");
        for (minute, case_c) in rows {
            writeln!(text, "{minute:.1};{case_c:.1}").expect("a text");
        }
        if let Outlook::Rises { k_min, earliest_min, likely_min, latest_min } = outlook(&calibration::read(&text).rows, level_c) {
            for time in [Some(earliest_min), likely_min, latest_min].into_iter().flatten() {
                prop_assert!(time.is_finite() && time >= earliest_min - 1e-9, "{time}");
            }
            prop_assert!(k_min.is_finite());
        }
    }

    /// What is kept of a log is read back as it was.
    #[test]
    fn a_log_survives_being_kept(
        rows in proptest::collection::vec((0.0..2880.0f64, 0.0..2000.0f64, -30.0..350.0f64), 1..40),
    ) {
        let mut text = String::from("minute;amps;case\n");
        for (minute, amps, case_c) in rows {
            writeln!(text, "{minute};{amps};{case_c}").expect("a text");
        }
        let log = calibration::read(&text);
        let again = calibration::read(&log.to_text());
        prop_assert!(again.remarks.is_empty());
        prop_assert_eq!(log.rows, again.rows);
    }
}

proptest! {
    #![proptest_config(crate::cases(60))]

    /// Every boat has a stop line that can be read off a thermometer and a
    /// voltmeter, no higher than what its case and its winding withstand.
    #[test]
    fn every_boat_has_a_stop_line(sheet in any_sheet()) {
        let limits = StopLimits::of(&sheet.0.inputs, &report(&sheet.0));
        let alt = &sheet.0.inputs.alt;
        prop_assert!(limits.case_c <= alt.case_limit_c && limits.case_c >= 60.0, "{limits:?}");
        prop_assert!(limits.case_c <= alt.class.limit_c() || limits.case_c == 60.0, "{limits:?}");
        let blocks = sheet.0.inputs.first_alternator().battery_blocks();
        let block_v = limits.volts / blocks;
        prop_assert!((14.5..17.5).contains(&block_v), "{limits:?}");
        for reader in [Reader::METRIC, Reader::US] {
            for sentence in [stop_line(&limits, &reader), why_stop(&limits, &reader)] {
                prop_assert!(sentence.ends_with('.') && !sentence.contains("NaN"), "{sentence}");
            }
        }
    }
}
