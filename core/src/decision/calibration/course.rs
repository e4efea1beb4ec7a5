//! A log's readings as figures that change with time.

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::Row;
use crate::numerics::interpolate;

/// Most readings that are kept apart; of a longer log neighbours are averaged.
const MOST_READINGS: usize = 300;

/// A figure that changes with time, straight between readings.
#[derive(Debug, Clone)]
pub struct Course(Vec<(f64, f64)>);

impl Course {
    /// A column of a log, its readings multiplied by a factor.
    pub fn of(rows: &[Row], column: Column, factor: f64) -> Course {
        let begin = rows.first().map_or(0.0, |row| row.minute);
        Course(
            rows.iter()
                .filter_map(|row| Some((60.0 * (row.minute - begin), factor * row.get(column)?)))
                .collect(),
        )
    }

    /// At a time \[s\]; before and after the readings, the nearest.
    pub fn at(&self, seconds: f64) -> Option<f64> {
        interpolate(&self.0, seconds)
    }

    /// The first reading.
    pub fn first(&self) -> Option<f64> {
        self.0.first().map(|(_, reading)| *reading)
    }

    /// The mean of all readings.
    pub fn mean(&self) -> Option<f64> {
        self.mean_from(f64::NEG_INFINITY)
    }

    /// The mean of the readings from a time on \[s\].
    pub fn mean_from(&self, seconds: f64) -> Option<f64> {
        let late = self.0.iter().filter(|(at, _)| *at >= seconds);
        let (count, sum) = late.fold((0.0, 0.0), |(count, sum), (_, reading)| {
            (count + 1.0, sum + reading)
        });
        (count > 0.0).then(|| sum / count)
    }
}

/// Neighbours averaged until no more than [`MOST_READINGS`] are left; readings
/// of one and the same minute become one.
pub(super) fn thinned(rows: &[Row]) -> Vec<Row> {
    let size = rows.len().div_ceil(MOST_READINGS).max(1);
    let mut same: Vec<Row> = Vec::new();
    for alike in rows.chunk_by(|a, b| a.minute == b.minute) {
        same.extend(mean(alike));
    }
    same.chunks(size).filter_map(mean).collect()
}

fn mean(rows: &[Row]) -> Option<Row> {
    let first = rows.first()?;
    let of = |column: Column| {
        let count = rows.iter().filter(|row| row.get(column).is_some()).count();
        let sum: f64 = rows.iter().filter_map(|row| row.get(column)).sum();
        (count > 0).then(|| sum / count as f64)
    };
    let minute = rows.iter().map(|row| row.minute).sum::<f64>() / rows.len() as f64;
    Some(Row::new(first.line, minute, Column::ALL.map(of)))
}
