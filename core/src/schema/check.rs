//! Reading what a user typed: a value, or a plain sentence about what is wrong.

use std::fmt;

use crate::schema::{FieldSpec, Kind, Value};
use crate::units::Other;

/// Why a value was not taken, as a sentence for the user.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InputError(pub String);

impl fmt::Display for InputError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// Reads a number as people type it: a comma or a dot for decimals, blanks
/// around it, a leading plus or a typographic minus. Anything else is `None`.
pub fn parse_number(text: &str) -> Option<f64> {
    let tidy: String = text
        .trim()
        .chars()
        .map(|c| match c {
            ',' => '.',
            '\u{2212}' => '-',
            other => other,
        })
        .filter(|c| !matches!(c, ' ' | '\u{a0}' | '\u{202f}'))
        .collect();
    let numeric = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | 'e' | 'E');
    if tidy.is_empty() || !tidy.chars().all(numeric) {
        return None;
    }
    tidy.parse().ok()
}

impl FieldSpec {
    /// Reads a typed text; an empty one means "left empty" where the field allows it.
    ///
    /// # Errors
    /// A sentence that names the field, what was typed and what it takes.
    pub fn read(&self, text: &str) -> Result<Value, InputError> {
        self.read_in(None, text)
    }

    /// Reads a text typed in another unit than the value is kept in.
    ///
    /// # Errors
    /// As [`FieldSpec::read`].
    pub fn read_in(&self, other: Option<Other>, text: &str) -> Result<Value, InputError> {
        let text = text.trim();
        match self.kind {
            Kind::Choice { options, .. } => options
                .iter()
                .position(|option| option.key == text)
                .map(Value::Choice)
                .ok_or_else(|| {
                    let keys: Vec<_> = options.iter().map(|option| option.key).collect();
                    InputError(format!(
                        "{} takes one of {}, not “{}”.",
                        self.label,
                        keys.join(", "),
                        shorten(text)
                    ))
                }),
            Kind::Optional { .. } if text.is_empty() => Ok(Value::Absent),
            Kind::Number { .. } if text.is_empty() => Err(InputError(format!(
                "{} is empty; it takes {}.",
                self.label,
                self.span()
            ))),
            Kind::Number { .. } | Kind::Optional { .. } => match parse_number(text)
                .map(|number| other.map_or(number, |other| other.back(number)))
            {
                // A figure out of range is told as it was typed.
                Some(number) => self
                    .check_range(number)
                    .map_or(Ok(Value::Number(number)), |wrong| {
                        Err(self.complaint(text, wrong))
                    }),
                None => Err(InputError(format!(
                    "“{}” is not a number; {} takes {}.",
                    shorten(text),
                    self.label,
                    self.span()
                ))),
            },
        }
    }

    /// Takes a value if the field accepts it.
    ///
    /// # Errors
    /// A sentence that names the field, the value and what it takes.
    pub fn accept(&self, value: Value) -> Result<Value, InputError> {
        match (self.kind, value) {
            (Kind::Number { .. } | Kind::Optional { .. }, Value::Number(number)) => {
                match self.check_range(number) {
                    Some(wrong) => Err(self.complaint(&number.to_string(), wrong)),
                    None => Ok(value),
                }
            }
            (Kind::Optional { .. }, Value::Absent) => Ok(value),
            (Kind::Choice { options, .. }, Value::Choice(at)) if at < options.len() => Ok(value),
            _ => Err(InputError(format!(
                "{} does not take that kind of value.",
                self.label
            ))),
        }
    }

    /// What is wrong with a number, if anything.
    fn check_range(&self, number: f64) -> Option<&'static str> {
        let (low, high) = self.range()?;
        if !number.is_finite() {
            Some("is not a number that can be worked with")
        } else if number < low {
            Some("is too little")
        } else if number > high {
            Some("is too much")
        } else {
            None
        }
    }

    fn complaint(&self, figure: &str, wrong: &str) -> InputError {
        InputError(format!(
            "{} {wrong}; {} takes {}.",
            shorten(figure),
            self.label,
            self.span()
        ))
    }

    /// The accepted range in words: "20 to 4000 A·h".
    pub fn span(&self) -> String {
        match (self.range(), self.unit()) {
            (Some((low, high)), Some(unit)) => {
                let gap = if unit.symbol.is_empty() { "" } else { " " };
                format!("{low} to {high}{gap}{}", unit.symbol)
            }
            _ => String::new(),
        }
    }

    /// A value as a field shows it that is filled in in another unit.
    pub fn write_in(&self, other: Option<Other>, value: Value) -> String {
        match (other, value) {
            (Some(other), Value::Number(number)) => other.to(number).to_string(),
            _ => self.write(value),
        }
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
        match (self.kind, self.unit(), value) {
            (_, Some(unit), Value::Number(number)) if !unit.symbol.is_empty() => {
                format!("{number} {}", unit.symbol)
            }
            (Kind::Choice { options, .. }, _, Value::Choice(at)) => options
                .get(at)
                .map_or("", |option| option.label)
                .to_string(),
            (_, _, Value::Absent) => "empty".to_string(),
            _ => self.write(value),
        }
    }
}

impl FieldSpec {
    /// What stands in place of a value that was not taken.
    pub(crate) fn stays(&self, value: Value) -> String {
        match value {
            Value::Absent => "It stays empty.".to_string(),
            _ => format!("It stays at {}.", self.shown(value)),
        }
    }
}

/// What is said of a name that no input has.
pub(crate) fn no_input(name: &str) -> String {
    format!("No input is called {}; it is left out.", quoted(name))
}

/// The first few characters of what somebody wrote, in quotes.
pub fn quoted(text: &str) -> String {
    format!("“{}”", shorten(text))
}

/// The first few characters of what was typed.
fn shorten(text: &str) -> String {
    const MOST: usize = 24;
    if text.chars().count() <= MOST {
        text.to_string()
    } else {
        text.chars().take(MOST).chain(['…']).collect()
    }
}
