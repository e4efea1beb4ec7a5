//! Whether a log says anything.

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::{Log, Row};
use crate::decision::calibration::refusal::Refusal;
use crate::numerics::mean_and_deviation;

/// Fewest rows and shortest time a log has to hold.
const LEAST_ROWS: usize = 6;
const LEAST_MIN: f64 = 8.0;
/// Least mean current \[A\].
const LEAST_A: f64 = 1.0;
/// Spread of the speed that a steady run may have, over its mean.
const STEADY: f64 = 0.05;
/// Speeds that are taken for an engine's and an alternator's \[rpm\].
const ENGINE_RPM: (f64, f64) = (300.0, 6000.0);
const SHAFT_RPM: (f64, f64) = (600.0, 25_000.0);
/// A case that warms by less, and stands no more above the air, says nothing \[K\].
const LEAST_RISE_K: f64 = 5.0;
const LEAST_ABOVE_AIR_K: f64 = 10.0;

/// Whether something can be learnt from a log. `around_c` is the air the
/// worksheet begins with, for logs without any.
pub(super) fn check(log: &Log, around_c: f64) -> Result<(), Refusal> {
    times(&log.rows)?;
    if readings(log, Column::Case).count() < LEAST_ROWS {
        return Err(Refusal::NoCase);
    }
    match mean_and_deviation(readings(log, Column::Amps)) {
        None => return Err(Refusal::NoAmps),
        Some((mean, _)) if mean < LEAST_A => return Err(Refusal::NoCurrent),
        Some(_) => {}
    }
    speed(log)?;
    heat(log, around_c)
}

/// The readings of a column.
fn readings(log: &Log, column: Column) -> impl Iterator<Item = f64> + Clone {
    log.rows.iter().filter_map(move |row| row.get(column))
}

/// Whether there are enough rows, one after the other, over a long enough time.
fn times(rows: &[Row]) -> Result<(), Refusal> {
    if rows.len() < LEAST_ROWS {
        return Err(Refusal::FewReadings {
            count: rows.len(),
            least: LEAST_ROWS,
        });
    }
    if let Some([before, after]) = falls(rows) {
        return Err(Refusal::TimesFall {
            line: after.line,
            minute: after.minute,
            before: before.minute,
        });
    }
    let minutes = match (rows.first(), rows.last()) {
        (Some(first), Some(last)) => last.minute - first.minute,
        _ => 0.0,
    };
    if minutes < LEAST_MIN {
        return Err(Refusal::TooShort {
            minutes,
            least: LEAST_MIN,
        });
    }
    Ok(())
}

/// Whether the speed, if there is one, can be and was steady.
fn speed(log: &Log) -> Result<(), Refusal> {
    let Some((mean_rpm, deviation_rpm)) = mean_and_deviation(readings(log, Column::Rpm)) else {
        return Ok(());
    };
    let (low, high) = if log.shaft_speed {
        SHAFT_RPM
    } else {
        ENGINE_RPM
    };
    if !(low..=high).contains(&mean_rpm) {
        return Err(Refusal::WrongSpeed {
            rpm: mean_rpm,
            shaft: log.shaft_speed,
        });
    }
    if deviation_rpm > STEADY * mean_rpm {
        return Err(Refusal::SpeedWanders {
            deviation_rpm,
            mean_rpm,
            most: STEADY,
        });
    }
    Ok(())
}

/// Whether the case warmed up or stood above the air; by the mean of three
/// readings, as one may be off.
fn heat(log: &Log, around_c: f64) -> Result<(), Refusal> {
    let case: Vec<f64> = readings(log, Column::Case).collect();
    let of_three = |three: &[f64]| three.iter().sum::<f64>() / three.len().max(1) as f64;
    let begin_c = of_three(case.get(..3).unwrap_or(&case));
    let end_c = of_three(case.get(case.len().saturating_sub(3)..).unwrap_or(&case));
    let air_c = mean_and_deviation(readings(log, Column::Air)).map_or(around_c, |(mean, _)| mean);
    if end_c - begin_c < LEAST_RISE_K && end_c - air_c < LEAST_ABOVE_AIR_K {
        return Err(Refusal::NoHeat);
    }
    Ok(())
}

/// The first two neighbours whose times fall.
fn falls(rows: &[Row]) -> Option<[&Row; 2]> {
    rows.windows(2).find_map(|pair| match pair {
        [before, after] if after.minute < before.minute => Some([before, after]),
        _ => None,
    })
}
