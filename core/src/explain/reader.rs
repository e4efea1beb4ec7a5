//! A working as its reader wants it: in the units and with the decimal sign of
//! their choice. Formulas keep the units they are made for.

use crate::boat::Key;
use crate::explain::digits::significant;
use crate::explain::{Used, Working};
use crate::units::quantity::{count, minutes};
use crate::units::{LATITUDE, Other, Quantity, QuantityKind, Reader};

/// Kinds that a reader may want in another unit.
const CHOSEN: [QuantityKind; 8] = [
    QuantityKind::Temperature,
    QuantityKind::TemperatureDifference,
    QuantityKind::Charge,
    QuantityKind::Fuel,
    QuantityKind::FuelRate,
    QuantityKind::AirFlow,
    QuantityKind::Length,
    QuantityKind::Size,
];

fn kind_of(unit: &str) -> Option<QuantityKind> {
    CHOSEN.into_iter().find(|kind| kind.unit().symbol == unit)
}

impl Working {
    /// The figure with its unit, as the page's tables have it: times as a clock
    /// has them. None where it does not happen.
    pub fn shown(&self, reader: &Reader) -> Option<String> {
        let value = self.value?;
        let is_time_of_sun = self.id == "inner.sun_full_hours";
        Some(match (self.unit, kind_of(self.unit)) {
            ("h", _) if !is_time_of_sun => reader.show(minutes(60.0 * value)),
            ("min", _) => reader.show(minutes(value)),
            (_, Some(kind)) => reader.show(Quantity::new(value, kind).to(self.decimals)),
            ("", None) => self.number(reader),
            (unit, None) => format!("{} {unit}", self.number(reader)),
        })
    }

    /// What the formula comes to, in the unit of the formula.
    pub fn result(&self, reader: &Reader) -> String {
        with_unit(self.number(reader), self.unit)
    }

    fn number(&self, reader: &Reader) -> String {
        let value = self.value.unwrap_or_default();
        reader.number(count(value).to(self.decimals))
    }
}

impl Used {
    /// The figure with its unit; none for a choice and for "none".
    pub fn shown(&self, reader: &Reader) -> Option<String> {
        let value = self.value?;
        // In a formula it keeps its sign.
        if self.symbol.is_empty() && self.is_latitude() {
            return Some(reader.entered(value, LATITUDE));
        }
        Some(match self.other(reader) {
            Some(other) => {
                let value = significant(value * other.scale + other.offset, 4);
                with_unit(reader.decimal(&value.replace('-', "−")), other.symbol)
            }
            None => self.in_formula(reader),
        })
    }

    /// The figure in the unit that its formula takes it in, where the reader
    /// wants it in another one and so needs both.
    pub fn shown_in_formula(&self, reader: &Reader) -> Option<String> {
        let differs = !self.symbol.is_empty() && self.value.is_some();
        let _ = self.other(reader).filter(|_| differs)?;
        Some(self.in_formula(reader))
    }

    fn is_latitude(&self) -> bool {
        let key = self.key.as_deref().and_then(Key::named);
        let unit = key.and_then(|key| key.spec().unit());
        unit.is_some_and(|unit| unit.is_latitude)
    }

    fn other(&self, reader: &Reader) -> Option<Other> {
        reader.other(kind_of(self.unit)?.unit())
    }

    fn in_formula(&self, reader: &Reader) -> String {
        with_unit(reader.decimal(&self.figure()), self.unit)
    }
}

fn with_unit(figure: String, unit: &str) -> String {
    match unit {
        "" => figure,
        // A figure and its unit stay on one line.
        unit => format!("{figure}\u{a0}{unit}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn used(value: f64, unit: &'static str) -> Used {
        Used {
            symbol: "T".to_string(),
            value: Some(value),
            unit,
            ..Used::default()
        }
    }

    #[test]
    fn a_figure_is_told_in_the_readers_unit_beside_the_formulas() {
        let hot = used(100.0, "°C");
        assert_eq!(hot.shown(&Reader::US).unwrap(), "212\u{a0}°F");
        assert_eq!(hot.shown_in_formula(&Reader::US).unwrap(), "100\u{a0}°C");
        assert_eq!(hot.shown_in_formula(&Reader::METRIC), None);
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(used(14.25, "V").shown(&comma).unwrap(), "14,25\u{a0}V");
        assert_eq!(used(-2.5, "K").shown(&comma).unwrap(), "−2,5\u{a0}K");
    }
}
