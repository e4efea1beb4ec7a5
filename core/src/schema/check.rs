//! Reading what a user typed: a value, or what is wrong with it.

use crate::schema::typed::read_figure;
use crate::schema::{Choice, Excerpt, FieldSpec, InputError, InputRange, KeptValue, Kind, Value};
use crate::units::{Other, Reader};

/// How a figure and its opposite differ on paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// By a minus.
    Sign,
    /// North or south.
    HalfOfTheGlobe,
}

impl FieldSpec {
    /// Reads a typed text; an empty one means "left empty" where the field allows it.
    ///
    /// # Errors
    /// What is wrong with it, with what was typed and what the field takes.
    pub fn read(&self, text: &str) -> Result<Value, InputError> {
        self.read_in(None, text)
    }

    /// Reads a text typed in another unit than the value is kept in.
    ///
    /// # Errors
    /// As [`FieldSpec::read`]; a figure out of range is told as it was typed.
    pub fn read_in(&self, other: Option<Other>, text: &str) -> Result<Value, InputError> {
        let text = text.trim();
        match self.kind {
            Kind::Choice { options, .. } => self.read_option(options, text),
            Kind::Optional { .. } if text.is_empty() => Ok(Value::Absent),
            Kind::Number {
                low, high, unit, ..
            }
            | Kind::Optional {
                low, high, unit, ..
            } => self.read_number(InputRange { low, high, unit }, other, text),
        }
    }

    fn read_option(&self, options: &'static [Choice], text: &str) -> Result<Value, InputError> {
        let at = options.iter().position(|option| option.key == text);
        at.map(Value::Choice)
            .ok_or_else(|| InputError::NotAnOption {
                label: self.label,
                typed: Excerpt::of(text),
                options,
            })
    }

    fn read_number(
        &self,
        range: InputRange,
        other: Option<Other>,
        text: &str,
    ) -> Result<Value, InputError> {
        let label = self.label;
        if text.is_empty() {
            return Err(InputError::Empty { label, range });
        }
        let typed = || Excerpt::of(text);
        let number =
            read_figure(text, range.unit, other).ok_or_else(|| InputError::NotANumber {
                label,
                typed: typed(),
                range,
            })?;
        self.check_range(range, number, typed)?;
        Ok(Value::Number(number))
    }

    /// Takes a value if the field accepts it.
    ///
    /// # Errors
    /// What is wrong with it, with the value and what the field takes.
    pub fn accept(&self, value: Value) -> Result<Value, InputError> {
        match (self.kind, value) {
            (
                Kind::Number {
                    low, high, unit, ..
                }
                | Kind::Optional {
                    low, high, unit, ..
                },
                Value::Number(number),
            ) => {
                let range = InputRange { low, high, unit };
                self.check_range(range, number, || Excerpt::of(&number.to_string()))?;
                Ok(value)
            }
            (Kind::Optional { .. }, Value::Absent) => Ok(value),
            (Kind::Choice { options, .. }, Value::Choice(at)) if at < options.len() => Ok(value),
            _ => Err(InputError::WrongKind { label: self.label }),
        }
    }

    /// Whether a number is finite and in a range; `typed` is how it was given.
    fn check_range(
        &self,
        range: InputRange,
        number: f64,
        typed: impl FnOnce() -> Excerpt,
    ) -> Result<(), InputError> {
        let label = self.label;
        let typed = if number.is_finite() && (range.low..=range.high).contains(&number) {
            return Ok(());
        } else {
            typed()
        };
        Err(if !number.is_finite() {
            InputError::NotFinite {
                label,
                typed,
                range,
            }
        } else if number < range.low {
            InputError::TooLow {
                label,
                typed,
                range,
            }
        } else {
            InputError::TooHigh {
                label,
                typed,
                range,
            }
        })
    }

    /// The numbers it takes; none for a choice.
    pub fn accepted(&self) -> Option<InputRange> {
        match self.kind {
            Kind::Number {
                low, high, unit, ..
            }
            | Kind::Optional {
                low, high, unit, ..
            } => Some(InputRange { low, high, unit }),
            Kind::Choice { .. } => None,
        }
    }

    /// A value with its unit or the name of its option.
    pub(crate) fn kept(&self, value: Value) -> KeptValue {
        match (self.kind, value) {
            (Kind::Number { unit, .. } | Kind::Optional { unit, .. }, Value::Number(number)) => {
                KeptValue::Number { number, unit }
            }
            (Kind::Choice { options, .. }, Value::Choice(at)) if at < options.len() => {
                KeptValue::Option(options[at])
            }
            _ => KeptValue::Empty,
        }
    }

    /// A value as its field shows it, which may be filled in in another unit: a
    /// latitude with its half of the globe.
    pub fn write_in(&self, other: Option<Other>, value: Value) -> String {
        match (other, value) {
            (Some(other), Value::Number(number)) => other.to(number).to_string(),
            (None, Value::Number(number)) if self.unit().is_some_and(|unit| unit.is_latitude) => {
                let half = if number < 0.0 { "S" } else { "N" };
                format!("{} {half}", number.abs())
            }
            _ => self.write(value),
        }
    }

    /// What turns a figure of this field into its opposite; none where it may
    /// not be negative. Keyboards of phones for figures often have no minus.
    pub fn turns(&self) -> Option<Turn> {
        let (low, high) = self.range()?;
        match self.unit() {
            _ if low >= 0.0 || high <= 0.0 => None,
            Some(unit) if unit.is_latitude => Some(Turn::HalfOfTheGlobe),
            _ => Some(Turn::Sign),
        }
    }

    /// The opposite of a value, in the unit it is filled in in and no further
    /// than the field takes.
    pub fn turned(&self, other: Option<Other>, value: Value) -> Value {
        let (Value::Number(number), Some((low, high))) = (value, self.range()) else {
            return value;
        };
        let opposite = match other {
            Some(other) => other.back(0.0 - other.to(number)),
            None => 0.0 - number,
        };
        Value::Number(opposite.clamp(low, high))
    }

    /// A value as plain text: what a field, a link or a file shows.
    pub fn write(&self, value: Value) -> String {
        match (self.kind, value) {
            (_, Value::Number(number)) => number.to_string(),
            (Kind::Choice { options, .. }, Value::Choice(at)) => {
                options.get(at).map_or("", |option| option.key).to_string()
            }
            _ => String::new(),
        }
    }

    /// A value in words: "2.4", "120 A", "On the case", "empty".
    pub fn shown(&self, value: Value) -> String {
        self.shown_to(&Reader::METRIC, value)
    }

    /// A value in words, in a reader's units: "250 °F".
    pub fn shown_to(&self, reader: &Reader, value: Value) -> String {
        match (self.kind, self.unit(), value) {
            (_, Some(unit), Value::Number(number)) => reader.entered(number, unit),
            (Kind::Choice { options, .. }, _, Value::Choice(at)) => options
                .get(at)
                .map_or("", |option| option.label)
                .to_string(),
            (_, _, Value::Absent) => "empty".to_string(),
            _ => self.write(value),
        }
    }
}
