//! How a reader wants figures: in which units, and with a decimal point or comma.

use crate::units::quantity::{Decimals, Quantity, QuantityKind};
use crate::units::{AMPERE_HOUR, CHOICES, Other, UnitOfMeasure, clock};

/// How a reader wants figures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reader {
    /// For each group of [`CHOICES`], whether its other units are wanted.
    other: [bool; CHOICES.len()],
    /// Whether decimals stand behind a comma.
    decimal_comma: bool,
    /// Charge is told as energy at this voltage \[V\].
    energy_v: Option<f64>,
    /// The sign of the worksheet's currency, where it has one.
    currency: Option<&'static str>,
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
    };
    /// °F, feet, US gallons, cubic feet a minute, pounds, and a decimal point.
    pub const US: Reader = Reader {
        other: [true; CHOICES.len()],
        decimal_comma: false,
        energy_v: None,
        currency: None,
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

    /// The same reader, who wants charge told as energy at a voltage \[V\]:
    /// W·h in place of A·h.
    pub const fn with_charge_as_energy(mut self, volts: Option<f64>) -> Reader {
        self.energy_v = volts;
        self
    }

    /// The sign of the worksheet's currency, where it has one.
    pub const fn currency(&self) -> Option<&'static str> {
        self.currency
    }

    /// The same reader, before whose money stands the sign of a currency; none
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

    /// The figure without its unit. Nothing is never minus nought, and the minus
    /// sign is a true one. Money is grouped by thousands.
    pub fn number(&self, quantity: Quantity) -> String {
        if quantity.kind == QuantityKind::Time {
            return clock(quantity.value);
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
        match self.other(unit).map_or(unit.symbol, |other| other.symbol) {
            "" => number,
            symbol => format!("{number} {symbol}"),
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
        let text = shortened(&text, most - least);
        let minus = if value < 0.0 && text.contains(|digit| ('1'..='9').contains(&digit)) {
            "−"
        } else {
            ""
        };
        self.decimal(&format!("{minus}{text}"))
    }

    /// Whether decimals stand behind a comma.
    pub const fn has_decimal_comma(&self) -> bool {
        self.decimal_comma
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
            self.decimal(&value.to_string().replace('-', "−"))
        };
        let symbol = other.map_or(unit.symbol, |other| other.symbol);
        let gap = if symbol.is_empty() { "" } else { " " };
        format!("{} to {}{gap}{symbol}", bound(low), bound(high))
    }

    /// A number that was entered, with every decimal it has, in this reader's
    /// unit: "2.4", "120 A".
    pub fn entered(&self, number: f64, unit: &UnitOfMeasure) -> String {
        let (number, symbol) = match self.other(unit) {
            Some(other) => (other.to(number), other.symbol),
            None => (number, unit.symbol),
        };
        let text = self.decimal(&number.to_string());
        match symbol {
            "" => text,
            symbol => format!("{text} {symbol}"),
        }
    }

    /// A number that was written with a decimal point, with this reader's sign.
    pub fn decimal(&self, number: &str) -> String {
        if self.decimal_comma {
            number.replace('.', ",")
        } else {
            number.to_string()
        }
    }

    fn with_unit(&self, text: String, kind: QuantityKind) -> String {
        match (kind, self.unit(kind)) {
            (QuantityKind::Money, _) => self
                .currency
                .map_or(text.clone(), |sign| format!("{sign}{THIN}{text}")),
            // A clock says its units itself.
            (QuantityKind::Time, _) | (_, "") => text,
            (QuantityKind::Angle, degree) => format!("{text}{degree}"),
            (_, unit) => format!("{text} {unit}"),
        }
    }
}

/// A narrow space that keeps together what it stands between.
const THIN: char = '\u{202f}';

/// The digits before the decimal sign in groups of three.
fn by_thousands(number: &str) -> String {
    let is_digit = |letter: char| letter.is_ascii_digit();
    let first = number.find(is_digit).unwrap_or(number.len());
    let (minus, digits) = number.split_at(first);
    let whole = digits.chars().take_while(|digit| is_digit(*digit)).count();
    let mut grouped = minus.to_string();
    for (at, digit) in digits.chars().enumerate() {
        if at > 0 && at < whole && (whole - at).is_multiple_of(3) {
            grouped.push(THIN);
        }
        grouped.push(digit);
    }
    grouped
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
        Quantity, QuantityKind, ampere_hours, amperes, celsius, count, kelvin, millimetres,
        minutes, money, percent, volts,
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
    fn charge_as_energy_is_told_at_the_voltage() {
        let reader = Reader::METRIC.with_charge_as_energy(Some(24.0));
        assert_eq!(reader.show(ampere_hours(100.0)), "2400 W·h");
        assert_eq!(reader.show(amperes(100.0)), "100 A");
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
    fn money_has_its_sign_and_thousands() {
        let euro = Reader::METRIC.with_currency(Some("€"));
        let show = |amount| euro.show(money(amount));
        assert_eq!(
            [0.4, 999.6, 12_345.0, 1_234_567.0, -90.0, -1234.0].map(show),
            [
                "€ 0",
                "€ 1 000",
                "€ 12 345",
                "€ 1 234 567",
                "€ −90",
                "€ −1 234"
            ]
            .map(|text| text.replace(' ', "\u{202f}"))
        );
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(comma.show(money(0.456).to(2)), "0,46");
        assert_eq!(comma.show(money(1234.5).to(2)), "1\u{202f}234,50");
        assert_eq!(euro.range(money(5.0), money(20.0)), "€\u{202f}5 to 20");
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
