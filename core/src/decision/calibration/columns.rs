//! What the columns of a log can hold.

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
