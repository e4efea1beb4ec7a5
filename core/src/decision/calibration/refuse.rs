//! Logs that say nothing, and why, in a sentence.

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::{Log, Row};
use crate::schema::InputError;

/// Fewest rows and shortest time a log has to hold.
const LEAST_ROWS: usize = 6;
const LEAST_MIN: f64 = 8.0;
/// Spread of the speed that a steady run may have, over its mean.
const STEADY: f64 = 0.05;
/// Speeds that are taken for an engine's and an alternator's \[rpm\].
const ENGINE_RPM: (f64, f64) = (300.0, 6000.0);
const SHAFT_RPM: (f64, f64) = (600.0, 25_000.0);
/// A case that warms by less, and stands no more above the air, says nothing \[K\].
const LEAST_RISE_K: f64 = 5.0;
const LEAST_ABOVE_AIR_K: f64 = 10.0;

/// Mean and standard deviation.
pub(super) fn spread(figures: impl Iterator<Item = f64> + Clone) -> Option<(f64, f64)> {
    let count = figures.clone().count();
    if count == 0 {
        return None;
    }
    let mean = figures.clone().sum::<f64>() / count as f64;
    let square: f64 = figures.map(|figure| (figure - mean).powi(2)).sum();
    Some((
        mean,
        (square / count.saturating_sub(1).max(1) as f64).sqrt(),
    ))
}

/// Why nothing can be learnt from a log, if so. `around_c` is the air the
/// worksheet begins with, for logs without any.
pub(super) fn complaint(log: &Log, around_c: f64) -> Option<InputError> {
    let say = |words: &str| Some(InputError(words.to_string()));
    let rows = &log.rows;
    let of = |column: Column| rows.iter().filter_map(move |row| row.get(column));
    if rows.len() < LEAST_ROWS {
        return Some(InputError(format!(
            "{} readings were understood; at least {LEAST_ROWS} are needed, best one a minute for half an hour.",
            rows.len()
        )));
    }
    if let Some([before, after]) = falls(rows) {
        return Some(InputError(format!(
            "The times have to rise: line {} is at minute {:.1}, after minute {:.1}.",
            after.line, after.minute, before.minute
        )));
    }
    let minutes = match (rows.first(), rows.last()) {
        (Some(first), Some(last)) => last.minute - first.minute,
        _ => 0.0,
    };
    if minutes < LEAST_MIN {
        return Some(InputError(format!(
            "The readings span {minutes:.1} min; at least {LEAST_MIN} min are needed, best half an hour."
        )));
    }
    if of(Column::Case).count() < LEAST_ROWS {
        return say(
            "The temperature of the case is missing: it is what the model is fitted to. A thermometer gun on black tape will do.",
        );
    }
    match spread(of(Column::Amps)) {
        None => return say("The alternator's amps are missing: they are what heats it."),
        Some((mean, _)) if mean < 1.0 => {
            return say("The amps are all nought: a machine that gives nothing teaches nothing.");
        }
        Some(_) => {}
    }
    if let Some((mean, deviation)) = spread(of(Column::Rpm)) {
        let whose = if log.shaft_speed {
            SHAFT_RPM
        } else {
            ENGINE_RPM
        };
        if !(whose.0..=whose.1).contains(&mean) {
            return Some(InputError(format!(
                "{mean:.0} rpm is not the speed of {}. Speeds are the engine's, unless the heading says alternator rpm.",
                if log.shaft_speed {
                    "an alternator"
                } else {
                    "an engine that charges"
                }
            )));
        }
        if deviation > STEADY * mean {
            return Some(InputError(format!(
                "The speed wandered by {deviation:.0} rpm around {mean:.0}, more than 5 %: the fan's cooling went with it. Hold the engine steady and log again."
            )));
        }
    }
    // By the mean of three: one reading may be off.
    let case: Vec<f64> = of(Column::Case).collect();
    let of_three = |three: &[f64]| three.iter().sum::<f64>() / three.len().max(1) as f64;
    let begin_c = of_three(case.get(..3).unwrap_or(&case));
    let end_c = of_three(case.get(case.len().saturating_sub(3)..).unwrap_or(&case));
    let air_c = spread(of(Column::Air)).map_or(around_c, |(mean, _)| mean);
    if end_c - begin_c < LEAST_RISE_K && end_c - air_c < LEAST_ABOVE_AIR_K {
        return say(
            "The case neither warmed up nor stood above the air: there is no heat to learn from.",
        );
    }
    None
}

/// The first two neighbours whose times fall.
fn falls(rows: &[Row]) -> Option<[&Row; 2]> {
    rows.windows(2).find_map(|pair| match pair {
        [before, after] if after.minute < before.minute => Some([before, after]),
        _ => None,
    })
}
