//! Where everything stands in the lines of a log, as its headings say.

use crate::decision::calibration::columns::{COLUMNS, Column};
use crate::decision::calibration::headings::{Heading, heading};
use crate::decision::calibration::log_remark::{LogRemark, MOST_REMARKS};
use crate::schema::Excerpt;

/// Where a kind of reading stands in a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Place {
    pub at: usize,
    pub fahrenheit: bool,
}

/// Where everything stands in a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Layout {
    pub time: usize,
    /// Minutes in one unit of time.
    pub time_scale: f64,
    pub places: [Option<Place>; COLUMNS],
    pub shaft_speed: bool,
}

impl Layout {
    /// That of a log without headings: minute, amps, case, air, speed, volts.
    pub(super) fn usual() -> Layout {
        let place = |at: usize| Place {
            at,
            fahrenheit: false,
        };
        Layout {
            time: 0,
            time_scale: 1.0,
            places: std::array::from_fn(|at| (at < 5).then(|| place(at + 1))),
            shaft_speed: false,
        }
    }
}

/// The layout a line of headings gives; `None` if it is a line of figures.
pub(super) fn headings(cells: &[String], remarks: &mut Vec<LogRemark>) -> Option<Layout> {
    if cells.iter().any(|cell| is_figure(cell)) {
        return None;
    }
    let mut layout = Layout {
        places: [None; COLUMNS],
        ..Layout::usual()
    };
    let mut time = None;
    let mut more = 0;
    let found: Vec<Heading> = cells.iter().map(|cell| heading(cell)).collect();
    let is_volts = |found: &Heading| {
        matches!(
            found,
            Heading::Reading {
                column: Column::Volts,
                ..
            }
        )
    };
    let has_volts = found.iter().any(is_volts);
    for (at, (cell, found)) in cells.iter().zip(found).enumerate() {
        if cell.is_empty() {
            continue;
        }
        let (column, fahrenheit) = match found {
            Heading::Time(scale) if time.is_none() => {
                time = Some(at);
                layout.time_scale = scale;
                continue;
            }
            Heading::Reading {
                column, fahrenheit, ..
            } => (Some(column), fahrenheit),
            Heading::BatteryVolts if !has_volts => (Some(Column::Volts), false),
            _ => (None, false),
        };
        match column {
            Some(column) if layout.places[column as usize].is_none() => {
                layout.places[column as usize] = Some(Place { at, fahrenheit });
                layout.shaft_speed |= matches!(found, Heading::Reading { shaft: true, .. });
            }
            _ if remarks.len() >= MOST_REMARKS => more += 1,
            _ => remarks.push(LogRemark::Column {
                heading: Excerpt::of(cell),
            }),
        }
    }
    if more > 0 {
        remarks.push(LogRemark::MoreColumns { count: more });
    }
    // Not one word was known: take the line for a title above the figures.
    if time.is_none() && layout.places.iter().all(Option::is_none) {
        return None;
    }
    layout.time = time.unwrap_or(usize::MAX);
    if time.is_none() {
        remarks.push(LogRemark::NoTimeColumn);
    }
    Some(layout)
}

/// Whether a cell is a figure; "1/min" is none.
fn is_figure(cell: &str) -> bool {
    cell.starts_with(|c: char| c.is_ascii_digit()) && cell != "1/min"
}
