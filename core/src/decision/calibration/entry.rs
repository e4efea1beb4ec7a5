//! A reading as somebody types it aboard, and what is wrong with it.

use crate::boat::{Inputs, RegulatorKind, SensorPlace};
use crate::decision::calibration::columns::{COLUMNS, Column};
use crate::decision::calibration::log::{LONGEST_MIN, Row};
use crate::decision::calibration::log_remark::LineError;
use crate::schema::{Excerpt, parse_number};
use crate::units::Reader;

/// A reading as it is typed: texts, so that "1." and "0,5" stay as they are.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Entry {
    /// Minutes since the engine started.
    pub minute: String,
    /// A text for each [`Column`], in its order.
    pub figures: [String; COLUMNS],
}

/// A field of the form.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EntryField {
    /// The minute.
    Minute,
    /// A reading.
    Figure(Column),
}

/// What is wrong with an entry, and where.
#[derive(Debug, Clone, PartialEq)]
pub struct EntryError {
    /// The field.
    pub field: EntryField,
    /// Why its text is no reading.
    pub why: LineError,
}

impl Entry {
    /// A reading that was taken, as texts a reader types.
    pub fn of(row: &Row, reader: &Reader) -> Entry {
        let figure = |column: Column| Some(as_typed(column, row.get(column)?, reader));
        Entry {
            minute: reader.decimal(&row.minute.to_string()),
            figures: Column::ALL.map(|column| figure(column).unwrap_or_default()),
        }
    }

    /// Whether no reading is typed in it.
    pub fn is_empty(&self) -> bool {
        self.figures.iter().all(|text| text.trim().is_empty())
    }

    /// The text of a column.
    pub fn text(&self, column: Column) -> &str {
        self.figures.get(column as usize).map_or("", String::as_str)
    }

    /// What is typed, as a reading.
    ///
    /// # Errors
    /// The first field that is none, and why.
    pub fn read(&self, reader: &Reader) -> Result<Row, EntryError> {
        let wrong = |field: EntryField, why: LineError| EntryError { field, why };
        let mut figures = [None; COLUMNS];
        for (column, text) in Column::ALL.into_iter().zip(&self.figures) {
            figures[column as usize] = figure(column, text, reader)
                .map_err(|why| wrong(EntryField::Figure(column), why))?;
        }
        let minute = minute(&self.minute).map_err(|why| wrong(EntryField::Minute, why))?;
        if figures.iter().all(Option::is_none) {
            let amps = EntryField::Figure(Column::Amps);
            return Err(wrong(amps, LineError::OnlyATime));
        }
        Ok(Row::new(1, minute, figures))
    }

    /// As much of it as is a reading already; none before there is a time.
    pub fn so_far(&self, reader: &Reader) -> Option<Row> {
        let read = |column| figure(column, self.text(column), reader).ok().flatten();
        let figures = Column::ALL.map(read);
        let minute = minute(&self.minute).ok()?;
        let some = figures.iter().any(Option::is_some);
        some.then(|| Row::new(1, minute, figures))
    }
}

/// A figure as a reader types it, in their unit.
pub fn as_typed(column: Column, figure: f64, reader: &Reader) -> String {
    let other = reader.other(column.measure());
    let figure = other.map_or(figure, |other| other.to(figure));
    reader.decimal(&figure.to_string())
}

/// Minutes since the engine started, as a text: to a tenth.
pub fn stamp(elapsed_min: f64) -> Option<String> {
    let minute = (10.0 * elapsed_min.max(0.0)).round() / 10.0;
    (minute <= LONGEST_MIN).then(|| minute.to_string())
}

/// Which readings a boat's instruments give, those that matter most first: the
/// regulator's own sensor can be read where it does not sit on the case.
pub fn wanted_columns(inputs: &Inputs) -> Vec<Column> {
    let own = match (inputs.reg.kind, inputs.reg.sensor) {
        (RegulatorKind::External, SensorPlace::Winding) => Some(Column::Winding),
        (RegulatorKind::External, SensorPlace::Rectifier) => Some(Column::Rectifier),
        _ => None,
    };
    [Column::Amps, Column::Case]
        .into_iter()
        .chain(own)
        .chain([Column::Volts, Column::Air, Column::Rpm])
        .collect()
}

fn minute(text: &str) -> Result<f64, LineError> {
    if text.trim().is_empty() {
        return Err(LineError::NoTime);
    }
    let minute = parse_number(text).filter(|minute| (0.0..=LONGEST_MIN).contains(minute));
    minute.ok_or_else(|| LineError::NotATime {
        typed: Excerpt::of(text.trim()),
    })
}

fn figure(column: Column, text: &str, reader: &Reader) -> Result<Option<f64>, LineError> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let typed = || Excerpt::of(text.trim());
    let number = parse_number(text).ok_or_else(|| LineError::NotANumber { typed: typed() })?;
    let number = match reader.other(column.measure()) {
        Some(other) => other.back(number),
        None => number,
    };
    let (low, high) = column.range();
    if (low..=high).contains(&number) {
        Ok(Some(number))
    } else {
        let typed = typed();
        Err(LineError::OutOfRange { column, typed })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boat::{RegulatorKind, SensorPlace, Worksheet};

    fn typed(minute: &str, figures: &[(Column, &str)]) -> Entry {
        let mut entry = Entry {
            minute: minute.to_string(),
            ..Entry::default()
        };
        for (column, text) in figures {
            entry.figures[*column as usize] = (*text).to_string();
        }
        entry
    }

    #[test]
    fn what_is_typed_becomes_a_reading_and_back() {
        let entry = typed("12.5", &[(Column::Amps, "80,5"), (Column::Case, "95")]);
        let row = entry.read(&Reader::METRIC).unwrap();
        assert_eq!(row.minute, 12.5);
        assert_eq!(row.get(Column::Amps), Some(80.5));
        assert_eq!(row.get(Column::Case), Some(95.0));
        assert_eq!(row.get(Column::Air), None);
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(Entry::of(&row, &comma).text(Column::Amps), "80,5");
        assert_eq!(Entry::of(&row, &comma).minute, "12,5");
    }

    /// 212 °F is 100 °C.
    #[test]
    fn temperatures_are_typed_in_the_readers_unit() {
        let entry = typed("3", &[(Column::Case, "212"), (Column::Amps, "80")]);
        let row = entry.read(&Reader::US).unwrap();
        assert_eq!(row.get(Column::Case), Some(100.0));
        assert_eq!(row.get(Column::Amps), Some(80.0));
        assert_eq!(Entry::of(&row, &Reader::US), entry);
    }

    #[test]
    fn what_is_wrong_is_told_with_its_field() {
        let wrong = |entry: Entry| entry.read(&Reader::METRIC).unwrap_err();
        let error = wrong(typed("3", &[(Column::Case, "950")]));
        assert_eq!(error.field, EntryField::Figure(Column::Case));
        assert!(matches!(error.why, LineError::OutOfRange { .. }));
        let error = wrong(typed("", &[(Column::Case, "95")]));
        assert_eq!(
            (error.field, error.why),
            (EntryField::Minute, LineError::NoTime)
        );
        assert_eq!(wrong(typed("3", &[])).why, LineError::OnlyATime);
        let typing = typed("3", &[(Column::Case, "95"), (Column::Amps, "x")]);
        assert!(typing.read(&Reader::METRIC).is_err());
        let so_far = typing.so_far(&Reader::METRIC).unwrap();
        assert_eq!(so_far.get(Column::Case), Some(95.0));
        assert_eq!(
            typed("", &[(Column::Case, "95")]).so_far(&Reader::METRIC),
            None
        );
    }

    #[test]
    fn stamps_are_tenths_of_a_minute() {
        assert_eq!(stamp(12.34).as_deref(), Some("12.3"));
        assert_eq!(stamp(-2.0).as_deref(), Some("0"));
        assert_eq!(stamp(1e9), None);
    }

    #[test]
    fn amps_and_case_come_first() {
        let mut sheet = Worksheet::default();
        sheet.inputs.reg.kind = RegulatorKind::External;
        let columns = wanted_columns(&sheet.inputs);
        assert_eq!(columns[..2], [Column::Amps, Column::Case]);
        assert!(!columns.contains(&Column::Winding));
        sheet.inputs.reg.sensor = SensorPlace::Winding;
        assert_eq!(wanted_columns(&sheet.inputs)[2], Column::Winding);
        sheet.inputs.reg.kind = RegulatorKind::Internal;
        assert!(!wanted_columns(&sheet.inputs).contains(&Column::Winding));
    }
}
