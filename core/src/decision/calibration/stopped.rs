//! Winding and rotor by their resistance: what is measured right after stopping, and
//! of the field while it works, as somebody types it.

use crate::boat::{Worksheet, key};
use crate::physics::winding::{by_resistance_c, field_ohm, when_stopped_c};
use crate::schema::{Confidence, Excerpt, Value, parse_number};
use crate::units::{CELSIUS, Reader};

/// A single reading this soon after stopping needs no leading back \[s\]: IEC 60034-1
/// for machines up to 50 kW (from memory).
const SOON_S: f64 = 30.0;
/// Later than this after stopping says nothing of how hot it was \[s\]: own reasoning,
/// the winding is as cool as the case by then.
const LATEST_S: f64 = 600.0;
/// What a winding can be \[°C\].
const BELIEVED_C: (f64, f64) = (-30.0, 350.0);

/// How much hotter the rotor runs than the case \[K\], in whole kelvin; none where that
/// is more, or less, than a worksheet takes.
pub fn rotor_rise_k(rotor_c: f64, case_c: f64) -> Option<f64> {
    let rise_k = (rotor_c - case_c).round();
    let (low, high) = key!(alt.rotor_rise_k).spec().range()?;
    (low..=high).contains(&rise_k).then_some(rise_k)
}

/// Puts that into a worksheet, as measured.
pub fn take_rotor_rise(sheet: &mut Worksheet, rise_k: f64) {
    let key = key!(alt.rotor_rise_k);
    if sheet.state(key, Value::Number(rise_k)).is_ok() {
        sheet.know(key, Confidence::Measured);
    }
}

/// A field of the form.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StoppedField {
    /// Resistance of the winding, cold.
    ColdOhm,
    /// What it was measured at.
    ColdC,
    /// Air around the alternator when stopped.
    AirC,
    /// Seconds after stopping and resistance, a line each.
    Readings,
    /// Resistance of the field, cold.
    FieldColdOhm,
    /// Voltage at the field while it works.
    FieldV,
    /// Current through it.
    FieldA,
}

impl StoppedField {
    /// All of them, as they stand in the form.
    pub const ALL: [StoppedField; 7] = [
        StoppedField::ColdC,
        StoppedField::ColdOhm,
        StoppedField::AirC,
        StoppedField::Readings,
        StoppedField::FieldColdOhm,
        StoppedField::FieldV,
        StoppedField::FieldA,
    ];

    /// Whether it is a temperature.
    pub fn is_temperature(self) -> bool {
        matches!(self, StoppedField::ColdC | StoppedField::AirC)
    }

    /// What it can be: °C, V, A, s and any unit of resistance.
    fn range(self) -> (f64, f64) {
        match self {
            StoppedField::ColdC | StoppedField::AirC => (-30.0, 100.0),
            StoppedField::FieldV => (0.1, 100.0),
            StoppedField::FieldA => (0.05, 100.0),
            StoppedField::ColdOhm | StoppedField::Readings | StoppedField::FieldColdOhm => {
                (1e-6, 1e6)
            }
        }
    }
}

/// What is typed: a text for each field.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Stopped {
    texts: [String; 7],
}

/// Why nothing follows from what is typed.
#[derive(Debug, Clone, PartialEq)]
pub enum StoppedError {
    /// A field is still empty.
    Missing(StoppedField),
    /// What stands in a field is no number that it takes.
    NotPossible(StoppedField, Excerpt),
    /// A line has no seconds and resistance.
    Line(Excerpt),
    /// One reading that came too late.
    TooFew,
    /// The readings do not fall towards the air's temperature.
    DoesNotCool,
    /// The resistances give a temperature that cannot be \[°C\].
    NotBelieved(f64),
}

impl Stopped {
    /// The text of a field.
    pub fn text(&self, field: StoppedField) -> &str {
        self.texts.get(field as usize).map_or("", String::as_str)
    }

    /// A text was typed.
    pub fn set(&mut self, field: StoppedField, text: String) {
        if let Some(slot) = self.texts.get_mut(field as usize) {
            *slot = text;
        }
    }

    /// The winding when the engine stopped \[°C\]; none as long as no reading is typed.
    ///
    /// # Errors
    /// Why nothing follows.
    pub fn winding_c(&self, reader: &Reader) -> Result<Option<f64>, StoppedError> {
        let lines = self.text(StoppedField::Readings).lines();
        let lines: Vec<&str> = lines.filter(|line| !line.trim().is_empty()).collect();
        if lines.is_empty() {
            return Ok(None);
        }
        let cold_c = self.number(StoppedField::ColdC, reader)?;
        let cold_ohm = self.number(StoppedField::ColdOhm, reader)?;
        let read = |line: &&str| {
            let (seconds, ohm) = after_stop(line)?;
            Ok((seconds, by_resistance_c(ohm, cold_ohm, cold_c)))
        };
        let readings: Vec<(f64, f64)> = lines.iter().map(read).collect::<Result<_, _>>()?;
        let winding_c = match readings.as_slice() {
            [(seconds, winding_c)] if *seconds <= SOON_S => *winding_c,
            [_] => return Err(StoppedError::TooFew),
            _ => {
                let air_c = self.number(StoppedField::AirC, reader)?;
                when_stopped_c(&readings, air_c).ok_or(StoppedError::DoesNotCool)?
            }
        };
        believed(winding_c).map(Some)
    }

    /// The rotor while it works \[°C\]; none as long as no voltage and no current of the
    /// field is typed.
    ///
    /// # Errors
    /// Why nothing follows.
    pub fn rotor_c(&self, reader: &Reader) -> Result<Option<f64>, StoppedError> {
        let is_empty = |field| self.text(field).trim().is_empty();
        if is_empty(StoppedField::FieldV) && is_empty(StoppedField::FieldA) {
            return Ok(None);
        }
        let volts = self.number(StoppedField::FieldV, reader)?;
        let amperes = self.number(StoppedField::FieldA, reader)?;
        let cold_ohm = self.number(StoppedField::FieldColdOhm, reader)?;
        let cold_c = self.number(StoppedField::ColdC, reader)?;
        let rotor_c = by_resistance_c(field_ohm(volts, amperes), cold_ohm, cold_c);
        believed(rotor_c).map(Some)
    }

    fn number(&self, field: StoppedField, reader: &Reader) -> Result<f64, StoppedError> {
        let text = self.text(field).trim();
        if text.is_empty() {
            return Err(StoppedError::Missing(field));
        }
        let other = reader.other(CELSIUS).filter(|_| field.is_temperature());
        let number =
            parse_number(text).map(|number| other.map_or(number, |other| other.back(number)));
        let (low, high) = field.range();
        number
            .filter(|number| (low..=high).contains(number))
            .ok_or_else(|| StoppedError::NotPossible(field, Excerpt::of(text)))
    }
}

/// Seconds after stopping and a resistance.
fn after_stop(line: &str) -> Result<(f64, f64), StoppedError> {
    let not_read = || StoppedError::Line(Excerpt::of(line.trim()));
    let mut words = line.split([' ', '\t', ';']).filter(|word| !word.is_empty());
    let (Some(seconds), Some(ohm), None) = (words.next(), words.next(), words.next()) else {
        return Err(not_read());
    };
    let (low, high) = StoppedField::Readings.range();
    let seconds = parse_number(seconds).filter(|seconds| (0.0..=LATEST_S).contains(seconds));
    let ohm = parse_number(ohm).filter(|ohm| (low..=high).contains(ohm));
    seconds.zip(ohm).ok_or_else(not_read)
}

fn believed(celsius: f64) -> Result<f64, StoppedError> {
    let (low, high) = BELIEVED_C;
    match (low..=high).contains(&celsius) {
        true => Ok(celsius),
        false => Err(StoppedError::NotBelieved(celsius)),
    }
}

#[cfg(test)]
#[path = "stopped_tests.rs"]
mod tests;
