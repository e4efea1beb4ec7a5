//! Units an input can have. Values are always kept in the first unit; the
//! other one is for showing and typing.

mod format;
pub mod quantity;
mod reader;

pub(crate) use format::{after, down};
pub use format::{axis_clock, brief_clock, clock};
pub use quantity::{Decimals, Quantity, QuantityKind};
pub use reader::Reader;

/// A unit with its symbol and, where sailors use two, the other one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UnitOfMeasure {
    /// The symbol, as in the SI brochure or common use.
    pub symbol: &'static str,
    /// The other unit in use and how to get there: `other = value·scale + offset`.
    pub other: Option<Other>,
    /// Least that a figure of it is stepped by; 0 where any step makes sense.
    pub least_step: f64,
    /// Whether it is money, or money for something: its symbol stands behind
    /// the sign of the worksheet's currency.
    pub is_money: bool,
    /// Whether it is a latitude: told as north or south, never with a sign.
    pub is_latitude: bool,
}

impl UnitOfMeasure {
    const fn by(mut self, least_step: f64) -> UnitOfMeasure {
        self.least_step = least_step;
        self
    }

    const fn of_money(mut self) -> UnitOfMeasure {
        self.is_money = true;
        self
    }

    const fn of_latitude(mut self) -> UnitOfMeasure {
        self.is_latitude = true;
        self
    }

    /// The unit that differences of its figures are told in.
    pub fn of_differences(&self) -> &UnitOfMeasure {
        if self == CELSIUS { KELVIN } else { self }
    }
}

/// The other unit of a [`UnitOfMeasure`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Other {
    /// The symbol.
    pub symbol: &'static str,
    /// Factor from the first unit.
    pub scale: f64,
    /// Offset after the factor.
    pub offset: f64,
}

impl Other {
    /// A value of the first unit in this one, to three decimals.
    pub fn to(&self, value: f64) -> f64 {
        rounded(value * self.scale + self.offset, 1e3)
    }

    /// A value of this unit in the first one, to six decimals, so that
    /// [`Other::to`] gives back what was typed.
    pub fn back(&self, value: f64) -> f64 {
        rounded((value - self.offset) / self.scale, 1e6)
    }
}

fn rounded(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts
}

const fn plain(symbol: &'static str) -> UnitOfMeasure {
    UnitOfMeasure {
        symbol,
        other: None,
        least_step: 0.0,
        is_money: false,
        is_latitude: false,
    }
}

const fn paired(
    symbol: &'static str,
    other: &'static str,
    scale: f64,
    offset: f64,
) -> UnitOfMeasure {
    UnitOfMeasure {
        symbol,
        other: Some(Other {
            symbol: other,
            scale,
            offset,
        }),
        least_step: 0.0,
        is_money: false,
        is_latitude: false,
    }
}

/// None.
pub const NONE: &UnitOfMeasure = &plain("");
/// Pieces of something.
pub const PIECE: &UnitOfMeasure = &plain("").by(1.0);
/// Percent.
pub const PERCENT: &UnitOfMeasure = &plain("%").by(1.0);
/// Ampere.
pub const AMPERE: &UnitOfMeasure = &plain("A");
/// Kiloampere.
pub const KILOAMPERE: &UnitOfMeasure = &plain("kA");
/// Ampere hour.
pub const AMPERE_HOUR: &UnitOfMeasure = &plain("A·h");
/// Volt.
pub const VOLT: &UnitOfMeasure = &plain("V");
/// Watt.
pub const WATT: &UnitOfMeasure = &plain("W");
/// Watt hour.
pub const WATT_HOUR: &UnitOfMeasure = &plain("W·h");
/// Hour.
pub const HOUR: &UnitOfMeasure = &plain("h").by(0.5);
/// Second.
pub const SECOND: &UnitOfMeasure = &plain("s");
/// Kilowatt.
pub const KILOWATT: &UnitOfMeasure = &plain("kW");
/// Kilowatt hour.
pub const KILOWATT_HOUR: &UnitOfMeasure = &plain("kW·h");
/// Minute.
pub const MINUTE: &UnitOfMeasure = &plain("min").by(1.0);
/// Rpm.
pub const RPM: &UnitOfMeasure = &plain("rpm");
/// Ohm.
pub const OHM: &UnitOfMeasure = &plain("Ω");
/// Milliohm.
pub const MILLIOHM: &UnitOfMeasure = &plain("mΩ");
/// Millivolt per cell kelvin.
pub const MILLIVOLT_PER_CELL_KELVIN: &UnitOfMeasure = &plain("mV/K");
/// Millivolt per kelvin.
pub const MILLIVOLT_PER_KELVIN: &UnitOfMeasure = &plain("mV/K");
/// Ohm ampere hour.
pub const OHM_AMPERE_HOUR: &UnitOfMeasure = &plain("Ω·A·h");
/// Watt per kelvin.
pub const WATT_PER_KELVIN: &UnitOfMeasure = &plain("W/K");
/// Kilojoule per kelvin.
pub const KILOJOULE_PER_KELVIN: &UnitOfMeasure = &plain("kJ/K");
/// Celsius.
pub const CELSIUS: &UnitOfMeasure = &paired("°C", "°F", 1.8, 32.0).by(1.0);
/// Kelvin.
pub const KELVIN: &UnitOfMeasure = &paired("K", "°F", 1.8, 0.0).by(1.0);
/// Cubic metre per hour.
pub const CUBIC_METRE_PER_HOUR: &UnitOfMeasure = &paired("m³/h", "cfm", 0.588_578, 0.0);
/// Litre.
pub const LITRE: &UnitOfMeasure = &paired("L", "US gal", 1.0 / 3.785_411_784, 0.0);
/// Litre per hour.
pub const LITRE_PER_HOUR: &UnitOfMeasure = &paired("L/h", "US gal/h", 1.0 / 3.785_411_784, 0.0);
/// What an engine sweeps is nowhere told in gallons.
pub const LITRE_SWEPT: &UnitOfMeasure = &plain("litres");
/// Millimetre.
pub const MILLIMETRE: &UnitOfMeasure = &paired("mm", "in", 1.0 / 25.4, 0.0);
/// Kilogram.
pub const KILOGRAM: &UnitOfMeasure = &paired("kg", "lb", 2.204_623, 0.0);
/// Kilogram per cubic metre.
pub const KILOGRAM_PER_CUBIC_METRE: &UnitOfMeasure = &plain("kg/m³");
/// Kilopascal.
pub const KILOPASCAL: &UnitOfMeasure = &plain("kPa");
/// Megajoule per kilogram.
pub const MEGAJOULE_PER_KILOGRAM: &UnitOfMeasure = &plain("MJ/kg");
/// Kilogram per litre.
pub const KILOGRAM_PER_LITRE: &UnitOfMeasure = &plain("kg/L");
/// Degree.
pub const DEGREE: &UnitOfMeasure = &plain("°").by(1.0);
/// Degree of latitude, north above zero.
pub const LATITUDE: &UnitOfMeasure = &plain("°").by(1.0).of_latitude();
/// Percent per kelvin.
pub const PERCENT_PER_KELVIN: &UnitOfMeasure = &plain("%/K");
/// Day.
pub const DAY: &UnitOfMeasure = &plain("days").by(1.0);
/// Year.
pub const YEAR: &UnitOfMeasure = &plain("years").by(1.0);
/// Cycle.
pub const CYCLE: &UnitOfMeasure = &plain("×");
/// Money carries no sign: the user's currency is one of the inputs.
pub const MONEY: &UnitOfMeasure = &plain("").of_money();
/// Money per litre.
pub const MONEY_PER_LITRE: &UnitOfMeasure = &plain("/L").of_money();
/// Money per hour.
pub const MONEY_PER_HOUR: &UnitOfMeasure = &plain("/h").of_money();
/// Money per kilowatt.
pub const MONEY_PER_KILOWATT: &UnitOfMeasure = &plain("/kW").of_money();
/// Money per ampere.
pub const MONEY_PER_AMPERE: &UnitOfMeasure = &plain("/A").of_money();
/// Money per ampere hour.
pub const MONEY_PER_AMPERE_HOUR: &UnitOfMeasure = &plain("/A·h").of_money();
/// Money per watt.
pub const MONEY_PER_WATT: &UnitOfMeasure = &plain("/W").of_money();
/// Money per kilowatt hour.
pub const MONEY_PER_KILOWATT_HOUR: &UnitOfMeasure = &plain("/kW·h").of_money();
/// Metre.
pub const METRE: &UnitOfMeasure = &paired("m", "ft", 1.0 / 0.3048, 0.0);
/// Newton.
pub const NEWTON: &UnitOfMeasure = &plain("N");
/// Newton metre.
pub const NEWTON_METRE: &UnitOfMeasure = &plain("N·m");
/// Metre per second.
pub const METRE_PER_SECOND: &UnitOfMeasure = &plain("m/s");
/// Joule.
pub const JOULE: &UnitOfMeasure = &plain("J");

/// What a reader may choose the other units of, together: a name, and the
/// units that change with it.
pub const CHOICES: &[(&str, &[&UnitOfMeasure])] = &[
    ("Temperature", &[CELSIUS, KELVIN]),
    ("Length", &[METRE, MILLIMETRE]),
    ("Fuel", &[LITRE, LITRE_PER_HOUR]),
    ("Air flow", &[CUBIC_METRE_PER_HOUR]),
    ("Weight", &[KILOGRAM]),
];

#[cfg(test)]
mod tests {
    use crate::units::{CELSIUS, CHOICES};

    /// 100 °C is 212 °F, and what was typed is shown again.
    #[test]
    fn there_and_back() {
        let other = CELSIUS.other.unwrap();
        assert_eq!((other.to(100.0), other.back(212.0)), (212.0, 100.0));
        for unit in CHOICES.iter().flat_map(|(_, units)| *units) {
            let other = unit.other.unwrap();
            for typed in [0.0, 0.1, 1.0, 7.5, 179.0, 2000.0, 12_345.5] {
                let shown = other.to(other.back(typed));
                assert_eq!(shown, typed, "{typed} {}", other.symbol);
            }
        }
    }
}
