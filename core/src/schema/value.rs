//! What an input holds, in a form that any field can be read into and set from.

use serde::Serializer;

use crate::units::UnitOfMeasure;

/// The value of one input.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Value {
    /// A number in the field's unit.
    Number(f64),
    /// Left empty on purpose: the worksheet works the figure out itself.
    Absent,
    /// One of the field's options, by position.
    Choice(usize),
}

/// What an input holds instead of a value it did not take.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum KeptValue {
    /// Nothing: it is left empty.
    Empty,
    /// A number.
    Number {
        /// In the unit.
        number: f64,
        /// The unit.
        #[serde(serialize_with = "symbol")]
        unit: &'static UnitOfMeasure,
    },
    /// One of a choice's options.
    Option(Choice),
}

/// Writes a unit as its symbol.
pub(super) fn symbol<S: Serializer>(unit: &UnitOfMeasure, to: S) -> Result<S::Ok, S::Error> {
    to.serialize_str(unit.symbol)
}

/// One option of a choice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
pub struct Choice {
    /// Its name in links and files.
    pub key: &'static str,
    /// What the form shows.
    pub label: &'static str,
}

/// A Rust type that an input can be kept in.
pub trait FieldType: Copy {
    /// As a [`Value`].
    fn to_value(self) -> Value;
    /// From a checked [`Value`]; one of another kind gives the type's plainest value.
    fn from_value(value: Value) -> Self;
}

impl FieldType for f64 {
    fn to_value(self) -> Value {
        Value::Number(self)
    }
    fn from_value(value: Value) -> Self {
        match value {
            Value::Number(number) => number,
            _ => 0.0,
        }
    }
}

impl FieldType for Option<f64> {
    fn to_value(self) -> Value {
        self.map_or(Value::Absent, Value::Number)
    }
    fn from_value(value: Value) -> Self {
        match value {
            Value::Number(number) => Some(number),
            _ => None,
        }
    }
}
