//! Figures as a reader wants them. Uses what the reader wants, and the digits.

use crate::units::quantity::{Decimals, Quantity, QuantityKind};
use crate::units::reader::digits::{THIN, by_thousands, more_decimals, shortened};
use crate::units::reader::wishes::Reader;
use crate::units::{UnitOfMeasure, clock};

/// From here on the digits of a figure are grouped by thousands.
const GROUPED_FROM: f64 = 10_000.0;

impl Reader {
    /// The figure without its unit. Nothing is never minus nought, and the minus
    /// sign is a true one. Digits are grouped by thousands from 10 000 on, of money
    /// from 1 000 on.
    pub fn number(&self, quantity: Quantity) -> String {
        if quantity.kind == QuantityKind::Time {
            return self.clock(quantity.value);
        }
        if quantity.kind == QuantityKind::Money {
            let kind = QuantityKind::Count;
            return by_thousands(&self.number(Quantity { kind, ..quantity }));
        }
        self.written(quantity.kind.unit(), quantity.value, quantity.decimals)
    }

    /// A figure of a unit that no [`QuantityKind`] has, without its unit.
    pub fn number_in(&self, unit: &UnitOfMeasure, value: f64, decimals: usize) -> String {
        let decimals = Decimals {
            least: decimals,
            most: decimals,
        };
        self.written(unit, value, decimals)
    }

    /// A figure of a unit that no [`QuantityKind`] has, with its unit.
    pub fn show_in(&self, unit: &UnitOfMeasure, value: f64, decimals: usize) -> String {
        let number = self.number_in(unit, value, decimals);
        let symbol = self.other(unit).map_or(unit.symbol, |other| other.symbol);
        self.with_symbol(number, symbol)
    }

    /// Minutes as "2 h 05 min" or "35 min"; a line may end between hours and minutes.
    fn clock(&self, minutes: f64) -> String {
        let told = clock(minutes);
        match self.unbroken {
            true => told
                .replace(" h", &format!("{}h", self.gap()))
                .replace(" min", &format!("{}min", self.gap())),
            false => told,
        }
    }

    fn written(&self, unit: &UnitOfMeasure, value: f64, decimals: Decimals) -> String {
        let (mut least, mut most) = (decimals.least, decimals.most);
        let mut value = value;
        if let Some(other) = self.other(unit) {
            value = value * other.scale + other.offset;
            let more = more_decimals(&other);
            (least, most) = (least + more, most + more);
        }
        let text = format!("{:.most$}", value.abs());
        let text = match value.abs() < GROUPED_FROM {
            true => shortened(&text, most - least).to_string(),
            false => by_thousands(shortened(&text, most - least)),
        };
        let minus = if value < 0.0 && text.contains(|digit| ('1'..='9').contains(&digit)) {
            "−"
        } else {
            ""
        };
        self.decimal(&format!("{minus}{text}"))
    }

    /// The figure with its unit.
    pub fn show(&self, quantity: Quantity) -> String {
        self.with_unit(self.number(quantity), quantity.kind)
    }

    /// Two figures of one kind with their unit: "68 to 86 V".
    pub fn range(&self, low: Quantity, high: Quantity) -> String {
        let numbers = format!("{} to {}", self.number(low), self.number(high));
        self.with_unit(numbers, high.kind)
    }

    /// Two figures of one kind with their unit: "68 and 150 mm".
    pub fn both(&self, one: Quantity, other: Quantity) -> String {
        let numbers = format!("{} and {}", self.number(one), self.number(other));
        self.with_unit(numbers, other.kind)
    }

    /// The range of an input in the unit this reader types it in: "20 to 4000 A·h",
    /// "−40 to 140 °F". As many decimals as the bounds have.
    pub fn input_range(&self, low: f64, high: f64, unit: &UnitOfMeasure) -> String {
        if unit.is_latitude {
            return format!(
                "{} to {}",
                self.entered(low, unit),
                self.entered(high, unit)
            );
        }
        let other = self.other(unit);
        let bound = |value: f64| {
            let value = other.map_or(value, |other| other.to(value));
            self.decimal(&value.to_string().replace('-', "−"))
        };
        let symbol = other.map_or(unit.symbol, |other| other.symbol);
        let numbers = format!("{} to {}", bound(low), bound(high));
        self.with_symbol(numbers, symbol)
    }

    /// A number that was entered, with every decimal it has, in this reader's
    /// unit: "2.4", "120 A", "18° S".
    pub fn entered(&self, number: f64, unit: &UnitOfMeasure) -> String {
        if unit.is_latitude {
            let half = if number < 0.0 { "S" } else { "N" };
            return format!("{}° {half}", self.decimal(&number.abs().to_string()));
        }
        let (number, symbol) = match self.other(unit) {
            Some(other) => (other.to(number), other.symbol),
            None => (number, unit.symbol),
        };
        let text = self.decimal(&number.to_string().replace('-', "−"));
        self.with_symbol(text, symbol)
    }

    fn with_unit(&self, text: String, kind: QuantityKind) -> String {
        match (kind, self.unit(kind)) {
            (QuantityKind::Money, _) => self
                .currency
                .map_or(text.clone(), |sign| format!("{sign}{THIN}{text}")),
            // A clock says its units itself.
            (QuantityKind::Time, _) => text,
            (_, unit) => self.with_symbol(text, unit),
        }
    }

    /// A figure and the symbol of its unit, where it has one; the sign of an angle
    /// stands close.
    fn with_symbol(&self, figure: String, symbol: &str) -> String {
        match symbol {
            "" => figure,
            "°" => format!("{figure}°"),
            symbol => format!("{figure}{}{symbol}", self.gap()),
        }
    }
}
