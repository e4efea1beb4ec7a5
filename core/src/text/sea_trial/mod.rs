//! What is said while a sea trial goes on: when to stop, where the case is
//! heading, and what is wrong with a reading that was typed.

mod course;
mod stop;
mod stopped;

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::entry::{EntryError, EntryField};
use crate::decision::calibration::{LineError, Log};
use crate::units::{CELSIUS, Quantity, QuantityKind, Reader};

pub use course::{against_calculation, outlook};
pub use stop::{BEFORE, STOP_ANYWAY, how_to_stop, stop_line, stop_now, why_stop};
pub use stopped::{STOPPED_HOW, rotor_is, stopped_error, stopped_label, winding_was};

/// What a field of the form is called.
pub const fn field_label(column: Column, shaft_speed: bool) -> &'static str {
    match column {
        Column::Amps => "Amps",
        Column::Case => "Case",
        Column::Air => "Air",
        Column::Rpm if shaft_speed => "Alternator rpm",
        Column::Rpm => "Engine rpm",
        Column::Volts => "Volts",
        Column::Winding => "Winding",
        Column::Rectifier => "Rectifier",
    }
}

/// A reading in a line: "80 A, case 95 °C, 13.4 V".
pub fn reading(log: &Log, at: usize, reader: &Reader) -> String {
    let Some(row) = log.rows.get(at) else {
        return String::new();
    };
    let figure = |column: Column| {
        let figure = reader.show(column.quantity(row.get(column)?));
        Some(match column {
            Column::Amps | Column::Volts | Column::Rpm => figure,
            column => format!("{} {figure}", column.name()),
        })
    };
    let figures: Vec<String> = Column::ALL.into_iter().filter_map(figure).collect();
    figures.join(", ")
}

/// When a reading was taken: "minute 12.5".
pub fn reading_time(minute: f64, reader: &Reader) -> String {
    let minute = Quantity::new(minute, QuantityKind::Count).up_to(1);
    format!("minute {}", reader.number(minute))
}

/// What is wrong with a reading that was typed, and what to do.
pub fn entry_error(error: &EntryError, shaft_speed: bool, reader: &Reader) -> String {
    let field = match error.field {
        EntryField::Minute => "Minute",
        EntryField::Figure(column) => field_label(column, shaft_speed),
    };
    match &error.why {
        LineError::NoTime => {
            "No minute yet: press “Engine started”, or type the minutes since the engine started."
                .to_string()
        }
        LineError::NotATime { typed } => {
            format!("Minute: “{typed}” is not a number of minutes. Type it as 12 or 12.5.")
        }
        LineError::NotANumber { typed } => format!("{field}: “{typed}” is not a number."),
        LineError::OutOfRange { column, typed } => {
            let (low, high) = column.range();
            format!(
                "{field}: “{typed}” cannot be; it takes {}.",
                reader.input_range(low, high, column.measure())
            )
        }
        LineError::OnlyATime => "Type at least one reading.".to_string(),
    }
}

/// What is asked before readings are replaced, or deleted for a new trial.
pub fn ask_to_replace(count: usize, new_trial: bool) -> String {
    let readings = match count {
        1 => "the reading".to_string(),
        count => format!("the {count} readings"),
    };
    match new_trial {
        true => format!("A new trial deletes {readings} you have here."),
        false => format!("This takes the place of {readings} you have here."),
    }
}

/// What to know of readings that nobody took.
pub const EXAMPLE_READINGS: &str = "These are example readings of an invented boat: nobody has taken them. Fit the model to see how it works, and do not use the values for your boat.";

/// How long the engine has run: "Engine on for 12:05".
pub fn engine_clock(elapsed_min: f64) -> String {
    let seconds = (60.0 * elapsed_min).floor().max(0.0) as u64;
    let (hours, minutes, seconds) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    let time = match hours {
        0 => format!("{minutes}:{seconds:02}"),
        hours => format!("{hours}:{minutes:02}:{seconds:02}"),
    };
    format!("Engine on for {time}")
}

/// The unit a column is typed in.
pub fn entry_unit(column: Column, reader: &Reader) -> &'static str {
    match column.kind() {
        QuantityKind::Temperature => reader
            .other(CELSIUS)
            .map_or(CELSIUS.symbol, |other| other.symbol),
        kind => kind.unit().symbol,
    }
}
