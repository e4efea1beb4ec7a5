//! How a reader wants figures: in which units, and with a decimal point or comma.

use crate::units::quantity::{Quantity, QuantityKind};
use crate::units::{CHOICES, Other, UnitOfMeasure, clock};

/// How a reader wants figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reader {
    /// For each group of [`CHOICES`], whether its other units are wanted.
    other: [bool; CHOICES.len()],
    /// Whether decimals stand behind a comma.
    decimal_comma: bool,
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
    };
    /// °F, feet, US gallons, cubic feet a minute, pounds, and a decimal point.
    pub const US: Reader = Reader {
        other: [true; CHOICES.len()],
        decimal_comma: false,
    };

    /// The same reader, who wants a group of [`CHOICES`], by its place there, in
    /// its other units or not. A place beyond the list changes nothing.
    pub fn with_other(mut self, group: usize, wanted: bool) -> Reader {
        if let Some(other) = self.other.get_mut(group) {
            *other = wanted;
        }
        self
    }

    /// The same reader, who wants a decimal comma or not.
    pub const fn with_decimal_comma(mut self, wanted: bool) -> Reader {
        self.decimal_comma = wanted;
        self
    }

    /// The other unit, where this reader wants it.
    fn other(&self, unit: &UnitOfMeasure) -> Option<Other> {
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

    /// The figure without its unit. Nothing is never minus nought, and the minus
    /// sign is a true one.
    pub fn number(&self, quantity: Quantity) -> String {
        if quantity.kind == QuantityKind::Time {
            return clock(quantity.value);
        }
        let (mut least, mut most) = (quantity.decimals.least, quantity.decimals.most);
        let mut value = quantity.value;
        if let Some(other) = self.other(quantity.kind.unit()) {
            value = value * other.scale + other.offset;
            let more = more_decimals(&other);
            (least, most) = (least + more, most + more);
        }
        let text = format!("{:.most$}", value.abs());
        let text = shortened(&text, most - least);
        let minus = if value < 0.0 && text.contains(|digit| ('1'..='9').contains(&digit)) {
            "−"
        } else {
            ""
        };
        let text = format!("{minus}{text}");
        if self.decimal_comma {
            text.replace('.', ",")
        } else {
            text
        }
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
        let other = self.other(unit);
        let bound = |value: f64| {
            let value = other.map_or(value, |other| other.to(value));
            let text = value.to_string().replace('-', "−");
            if self.decimal_comma {
                text.replace('.', ",")
            } else {
                text
            }
        };
        let symbol = other.map_or(unit.symbol, |other| other.symbol);
        let gap = if symbol.is_empty() { "" } else { " " };
        format!("{} to {}{gap}{symbol}", bound(low), bound(high))
    }

    fn with_unit(&self, text: String, kind: QuantityKind) -> String {
        match (kind, self.unit(kind)) {
            // A clock says its units itself.
            (QuantityKind::Time, _) | (_, "") => text,
            (QuantityKind::Angle, degree) => format!("{text}{degree}"),
            (_, unit) => format!("{text} {unit}"),
        }
    }
}

/// How many more decimals the other unit needs so that its last digit is not
/// more than twice as coarse as the first unit's: two for inches, one for
/// gallons, none for feet.
fn more_decimals(other: &Other) -> usize {
    let mut step = 1.0 / other.scale;
    let mut more = 0;
    while step > 2.0 {
        step *= 0.1;
        more += 1;
    }
    more
}

/// Without noughts at the end, at most so many.
fn shortened(text: &str, most: usize) -> &str {
    let mut text = text;
    for _ in 0..most {
        let Some(shorter) = text.strip_suffix('0') else {
            break;
        };
        text = shorter;
    }
    text.strip_suffix('.').unwrap_or(text)
}

#[cfg(test)]
mod tests {
    use crate::units::quantity::{
        Quantity, QuantityKind, amperes, celsius, count, kelvin, millimetres, minutes, percent,
        volts,
    };
    use crate::units::{CHOICES, Reader};

    fn length(value: f64) -> Quantity {
        Quantity::new(value, QuantityKind::Length).to(1)
    }

    #[test]
    fn a_difference_of_temperatures_has_no_offset() {
        assert_eq!(Reader::US.show(celsius(100.0)), "212 °F");
        assert_eq!(Reader::US.show(kelvin(100.0)), "180 °F");
        assert_eq!(Reader::METRIC.show(kelvin(5.0)), "5 K");
    }

    #[test]
    fn minus_is_a_true_one_and_never_stands_before_nought() {
        let show = |value| Reader::METRIC.show(celsius(value));
        assert_eq!(
            [-7.0, -0.4, -0.0, 0.4].map(show),
            ["−7 °C", "0 °C", "0 °C", "0 °C"]
        );
        assert_eq!(Reader::US.show(celsius(-17.8)), "0 °F");
        assert_eq!(Reader::US.show(celsius(-40.0)), "−40 °F");
    }

    #[test]
    fn the_other_units_of_each_group() {
        let of = |value, kind| Reader::US.show(Quantity::new(value, kind));
        assert_eq!(Reader::US.show(length(3.0)), "9.8 ft");
        assert_eq!(Reader::US.show(millimetres(71.0)), "2.80 in");
        assert_eq!(of(38.0, QuantityKind::Fuel), "10.0 US gal");
        assert_eq!(of(170.0, QuantityKind::AirFlow), "100 cfm");
        assert_eq!(Reader::US.show(amperes(70.0)), "70 A");
    }

    #[test]
    fn one_group_changes_alone() {
        let lengths = CHOICES
            .iter()
            .position(|(name, _)| *name == "Length")
            .unwrap();
        let reader = Reader::METRIC
            .with_other(lengths, true)
            .with_other(99, true);
        assert_eq!(reader.show(length(3.0)), "9.8 ft");
        assert_eq!(reader.show(celsius(20.0)), "20 °C");
    }

    #[test]
    fn decimals_and_comma() {
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(comma.show(volts(14.25)), "14,25 V");
        assert_eq!(comma.show(percent(80.0).up_to(2)), "80 %");
        assert_eq!(comma.show(percent(80.5).up_to(2)), "80,5 %");
        assert_eq!(comma.show(count(2.5).to(2)), "2,50");
        assert_eq!(comma.show(minutes(125.0)), "2 h 05 min");
        assert_eq!(comma.show(amperes(100.0).up_to(1)), "100 A");
    }

    #[test]
    fn ranges_of_inputs_are_in_the_unit_they_are_typed_in() {
        let (celsius, none) = (crate::units::CELSIUS, crate::units::NONE);
        assert_eq!(
            Reader::METRIC.input_range(-40.0, 60.0, celsius),
            "−40 to 60 °C"
        );
        assert_eq!(
            Reader::US.input_range(-40.0, 60.0, celsius),
            "−40 to 140 °F"
        );
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(comma.input_range(0.1, 0.6, none), "0,1 to 0,6");
    }

    #[test]
    fn two_figures_share_a_unit() {
        let reader = Reader::METRIC;
        assert_eq!(reader.range(amperes(1.0), amperes(5.0)), "1 to 5 A");
        assert_eq!(
            reader.both(millimetres(68.0), millimetres(150.0)),
            "68 and 150 mm"
        );
        let angle = Quantity::new(120.0, QuantityKind::Angle);
        assert_eq!(reader.show(angle), "120°");
    }
}
