//! The sheet for the readings of the hot run: its columns and times are those
//! the sea trial reads, and what is calculated stands beside each line.

use serde::Serialize;

use crate::analysis::Moment;
use crate::boat::{SecondRole, Worksheet};
use crate::report::Report;

/// Minutes at which to read.
const MINUTES: [f64; 13] = [
    0.0, 1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 10.0, 14.0, 18.0, 22.0, 26.0, 30.0,
];

/// The sheet for the readings.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Form {
    /// Engine speed to hold \[rpm\].
    pub engine_rpm: f64,
    /// Its lines.
    pub rows: Vec<FormRow>,
}

/// One line: when to read, and what is calculated for then.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FormRow {
    /// \[min\]
    pub minute: f64,
    /// The alternator \[A\]; none where another one charges beside it, or once
    /// the run is over.
    pub alternator_a: Option<f64>,
    /// Its case \[°C\]; none once the run is over.
    pub case_c: Option<f64>,
    /// Air of the engine space \[°C\]; none once the run is over.
    pub air_c: Option<f64>,
    /// At the alternator \[V\]; none once the run is over.
    pub volts: Option<f64>,
}

/// The sheet for a boat.
pub fn form(sheet: &Worksheet, report: &Report) -> Form {
    let series = &report.analyses.run.series;
    let alone = sheet.inputs.two.role != SecondRole::House;
    let rows = MINUTES
        .map(|minute| {
            let read = |figure: fn(&Moment) -> f64| between(series, minute, figure);
            FormRow {
                minute,
                alternator_a: read(|moment| moment.alternator_a).filter(|_| alone),
                case_c: read(|moment| moment.alternators[0].case_c),
                air_c: read(|moment| moment.air_c),
                volts: read(|moment| moment.alternators[0].volts),
            }
        })
        .to_vec();
    Form {
        engine_rpm: sheet.inputs.eng.rpm,
        rows,
    }
}

/// A figure of the run at a time, straight between its moments; none outside.
fn between(series: &[Moment], minute: f64, figure: fn(&Moment) -> f64) -> Option<f64> {
    const SAME_MIN: f64 = 1e-9;
    let after = series.partition_point(|moment| moment.minute <= minute + SAME_MIN);
    let before = series.get(after.checked_sub(1)?)?;
    if before.minute >= minute - SAME_MIN {
        return Some(figure(before));
    }
    let next = series.get(after)?;
    let part = (minute - before.minute) / (next.minute - before.minute);
    Some(figure(before) + part * (figure(next) - figure(before)))
}
