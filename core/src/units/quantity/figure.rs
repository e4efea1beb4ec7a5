//! A figure with what it is of, and how finely it is told. Uses the kinds.

use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

use crate::units::quantity::kind::QuantityKind;

/// Decimals a figure is told with: at least so many, and more up to a most
/// where they are not nought.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Decimals {
    /// Always told.
    pub least: usize,
    /// Told unless they are nought.
    pub most: usize,
}

/// A figure that is shown. JSON has it as `{"value": 14.2, "unit": "V"}`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// In the unit of its kind.
    pub value: f64,
    /// What it is of.
    pub kind: QuantityKind,
    /// How finely it is told, in that unit.
    pub decimals: Decimals,
}

impl Quantity {
    /// A figure of a kind, whole.
    pub const fn new(value: f64, kind: QuantityKind) -> Quantity {
        let decimals = Decimals { least: 0, most: 0 };
        Quantity {
            value,
            kind,
            decimals,
        }
    }

    /// This figure with exactly so many decimals, whatever they are.
    pub const fn to(mut self, decimals: usize) -> Quantity {
        self.decimals = Decimals {
            least: decimals,
            most: decimals,
        };
        self
    }

    /// This figure with as many decimals as it has, up to a most: for what
    /// somebody has entered.
    pub const fn up_to(mut self, decimals: usize) -> Quantity {
        self.decimals = Decimals {
            least: 0,
            most: decimals,
        };
        self
    }
}

impl Serialize for Quantity {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut parts = serializer.serialize_struct("Quantity", 2)?;
        parts.serialize_field("value", &self.value)?;
        parts.serialize_field("unit", self.kind.unit().symbol)?;
        parts.end()
    }
}
