//! A figure that a working used.

use serde::Serialize;

use crate::boat::{Key, Worksheet};
use crate::formula::Constant;
use crate::schema::{Confidence, Kind, Value};

/// A figure that a working used.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Used {
    /// Its sign in the formula; empty when it is not in there itself.
    pub symbol: String,
    /// What it is.
    pub name: String,
    /// The figure in its unit; none for a choice and for "none".
    pub value: Option<f64>,
    /// Its unit.
    pub unit: &'static str,
    /// What was chosen, or what an empty field stands for.
    pub says: &'static str,
    /// How well it is known, if it is an input that is a fact.
    pub known: Option<Confidence>,
    /// The input it is.
    pub key: Option<String>,
    /// The working that explains it.
    pub working: Option<&'static str>,
    /// Whether it is the second alternator's.
    #[serde(skip)]
    pub(super) of_second: bool,
}

impl Used {
    /// A figure described in words.
    pub(super) fn described(name: &str, unit: &'static str, value: f64) -> Used {
        Used {
            name: name.to_string(),
            value: Some(value).filter(|value| !value.is_nan()),
            unit,
            ..Used::default()
        }
    }

    /// A constant of a formula.
    pub(super) fn constant(constant: &Constant) -> Used {
        Used {
            symbol: constant.symbol.to_string(),
            ..Used::described(constant.words, constant.unit, constant.value)
        }
    }

    /// An input of a worksheet.
    pub(super) fn input(sheet: &Worksheet, key: Key) -> Used {
        let spec = key.spec();
        let says = match (sheet.inputs.get(key), spec.kind) {
            (Value::Choice(at), Kind::Choice { options, .. }) => {
                options.get(at).map_or("", |option| option.label)
            }
            (Value::Absent, Kind::Optional { empty_says, .. }) => empty_says,
            _ => "",
        };
        Used {
            name: spec.label.to_string(),
            value: sheet.figure(key),
            unit: spec.unit().map_or("", |unit| unit.symbol),
            says,
            known: spec.is_fact().then(|| sheet.knowledge(key)),
            key: Some(key.name()),
            ..Used::default()
        }
    }

    /// The figure as formulas take it: per cent are hundredths.
    pub(super) fn share(&self) -> f64 {
        let value = self.value.unwrap_or(f64::NAN);
        if self.unit == "%" {
            value / 100.0
        } else {
            value
        }
    }
}
