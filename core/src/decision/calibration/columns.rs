//! What the columns of a log can hold, and where they stand in its lines.

use crate::decision::calibration::headings::{Heading, heading};
use crate::decision::calibration::log::MOST_REMARKS;
use crate::decision::calibration::log_remark::LogRemark;
use crate::schema::Excerpt;
use crate::units::UnitOfMeasure;
use crate::units::quantity::{Quantity, QuantityKind};

/// How many kinds of reading there are.
pub const COLUMNS: usize = 7;

/// A kind of reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// Current of the alternator \[A\].
    Amps,
    /// Temperature of its case \[°C\].
    Case,
    /// Temperature of the air near it \[°C\].
    Air,
    /// Speed \[rpm\], of the engine unless the heading says otherwise.
    Rpm,
    /// Voltage at the alternator \[V\].
    Volts,
    /// Temperature of its winding \[°C\].
    Winding,
    /// Temperature of its rectifier plate \[°C\].
    Rectifier,
}

impl Column {
    /// All of them; the first five in the order of a log without headings.
    pub const ALL: [Column; COLUMNS] = [
        Column::Amps,
        Column::Case,
        Column::Air,
        Column::Rpm,
        Column::Volts,
        Column::Winding,
        Column::Rectifier,
    ];

    /// What it is called.
    pub const fn name(self) -> &'static str {
        match self {
            Column::Amps => "amps",
            Column::Case => "case",
            Column::Air => "air",
            Column::Rpm => "rpm",
            Column::Volts => "volts",
            Column::Winding => "winding",
            Column::Rectifier => "rectifier",
        }
    }

    /// Its unit.
    pub const fn unit(self) -> &'static str {
        match self {
            Column::Amps => "A",
            Column::Rpm => "rpm",
            Column::Volts => "V",
            _ => "°C",
        }
    }

    /// What kind of quantity it is.
    pub const fn kind(self) -> QuantityKind {
        match self {
            Column::Amps => QuantityKind::Current,
            Column::Rpm => QuantityKind::Speed,
            Column::Volts => QuantityKind::Voltage,
            Column::Case | Column::Air | Column::Winding | Column::Rectifier => {
                QuantityKind::Temperature
            }
        }
    }

    /// The unit it is kept in, with the other one that readers may want.
    pub const fn measure(self) -> &'static UnitOfMeasure {
        self.kind().unit()
    }

    /// A reading with all the decimals it was read with, up to two.
    pub const fn quantity(self, reading: f64) -> Quantity {
        Quantity::new(reading, self.kind()).up_to(2)
    }

    /// What a reading can be, in its unit.
    pub const fn range(self) -> (f64, f64) {
        match self {
            Column::Amps => (0.0, 2000.0),
            Column::Rpm => (0.0, 30_000.0),
            Column::Volts => (5.0, 80.0),
            _ => (-30.0, 350.0),
        }
    }

    /// Whether it is read off a thermometer.
    pub fn is_temperature(self) -> bool {
        self.unit() == "°C"
    }
}

/// The order without headings, in words.
pub const USUAL_ORDER: &str = "minute, alternator amps, case °C, air °C, rpm, volts";

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
