//! What a reader wants: units, a decimal point or comma, the sign of a currency. Uses
//! the units.

use crate::units::quantity::QuantityKind;
use crate::units::{AMPERE_HOUR, CHOICES, Other, UnitOfMeasure};

/// A space at which no line ends.
const UNBROKEN: char = '\u{a0}';

/// How a reader wants figures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reader {
    /// For each group of [`CHOICES`], whether its other units are wanted.
    pub(super) other: [bool; CHOICES.len()],
    /// Whether decimals stand behind a comma.
    pub(super) decimal_comma: bool,
    /// Charge is told as energy at this voltage \[V\].
    pub(super) energy_v: Option<f64>,
    /// The sign of the worksheet's currency, where it has one.
    pub(super) currency: Option<&'static str>,
    /// Whether no line ends between a figure and its unit.
    pub(super) unbroken: bool,
}

impl Default for Reader {
    fn default() -> Reader {
        Reader::METRIC
    }
}

impl Reader {
    /// °C, metres, litres, and a decimal point.
    pub const METRIC: Reader = Reader {
        other: [false; CHOICES.len()],
        decimal_comma: false,
        energy_v: None,
        currency: None,
        unbroken: false,
    };
    /// °F, feet, US gallons, cubic feet a minute, pounds, and a decimal point.
    pub const US: Reader = Reader {
        other: [true; CHOICES.len()],
        decimal_comma: false,
        energy_v: None,
        currency: None,
        unbroken: false,
    };

    /// This reader, who wants a group of [`CHOICES`], by its place there, in
    /// its other units or not. A place beyond the list changes nothing.
    pub fn with_other(mut self, group: usize, wanted: bool) -> Reader {
        if let Some(other) = self.other.get_mut(group) {
            *other = wanted;
        }
        self
    }

    /// This reader, who wants a decimal comma or not.
    pub const fn with_decimal_comma(mut self, wanted: bool) -> Reader {
        self.decimal_comma = wanted;
        self
    }

    /// This reader, for whom no line ends between a figure and its unit, as on a
    /// narrow screen; elsewhere an ordinary space stands there.
    pub const fn with_unbroken_units(mut self) -> Reader {
        self.unbroken = true;
        self
    }

    /// What stands between a figure and its unit.
    pub(super) const fn gap(&self) -> char {
        if self.unbroken { UNBROKEN } else { ' ' }
    }

    /// This reader, who wants charge told as energy at a voltage \[V\]:
    /// W·h in place of A·h.
    pub const fn with_charge_as_energy(mut self, volts: Option<f64>) -> Reader {
        self.energy_v = volts;
        self
    }

    /// The sign of the worksheet's currency, where it has one.
    pub const fn currency(&self) -> Option<&'static str> {
        self.currency
    }

    /// This reader, before whose money stands the sign of a currency; none
    /// where amounts are in no named one.
    pub const fn with_currency(mut self, sign: Option<&'static str>) -> Reader {
        self.currency = sign;
        self
    }

    /// The other unit, where this reader wants it.
    pub fn other(&self, unit: &UnitOfMeasure) -> Option<Other> {
        if let (Some(scale), true) = (self.energy_v, unit == AMPERE_HOUR) {
            return Some(Other {
                symbol: "W·h",
                scale,
                offset: 0.0,
            });
        }
        let wanted = CHOICES
            .iter()
            .zip(self.other)
            .any(|((_, units), other)| other && units.contains(&unit));
        unit.other.filter(|_| wanted)
    }

    /// The symbol of a kind's unit for this reader.
    pub fn unit(&self, kind: QuantityKind) -> &'static str {
        let unit = kind.unit();
        self.other(unit).map_or(unit.symbol, |other| other.symbol)
    }

    /// Whether decimals stand behind a comma.
    pub const fn has_decimal_comma(&self) -> bool {
        self.decimal_comma
    }

    /// A number that was written with a decimal point, with this reader's sign.
    pub fn decimal(&self, number: &str) -> String {
        if self.decimal_comma {
            number.replace('.', ",")
        } else {
            number.to_string()
        }
    }
}
