//! Units an input can have. Values are always kept in the first unit; the
//! other one is for showing and typing.

/// A unit with its symbol and, where sailors use two, the other one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// The symbol, as in the SI brochure or common use.
    pub symbol: &'static str,
    /// The other unit in use and how to get there: `other = value·scale + offset`.
    pub other: Option<Other>,
    /// Least that a figure of it is stepped by; 0 where any step makes sense.
    pub least_step: f64,
}

impl Unit {
    const fn by(mut self, least_step: f64) -> Unit {
        self.least_step = least_step;
        self
    }
}

/// The other unit of a [`Unit`].
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

const fn plain(symbol: &'static str) -> Unit {
    Unit {
        symbol,
        other: None,
        least_step: 0.0,
    }
}

const fn paired(symbol: &'static str, other: &'static str, scale: f64, offset: f64) -> Unit {
    Unit {
        symbol,
        other: Some(Other {
            symbol: other,
            scale,
            offset,
        }),
        least_step: 0.0,
    }
}

/// Every unit the worksheet uses.
#[allow(missing_docs)]
pub mod units {
    use super::{Unit, paired, plain};

    pub const NONE: &Unit = &plain("");
    /// Pieces of something.
    pub const PIECE: &Unit = &plain("").by(1.0);
    pub const PERCENT: &Unit = &plain("%").by(1.0);
    pub const AMPERE: &Unit = &plain("A");
    pub const AMPERE_HOUR: &Unit = &plain("A·h");
    pub const VOLT: &Unit = &plain("V");
    pub const WATT: &Unit = &plain("W");
    pub const HOUR: &Unit = &plain("h").by(0.5);
    pub const SECOND: &Unit = &plain("s");
    pub const KILOWATT: &Unit = &plain("kW");
    pub const MINUTE: &Unit = &plain("min").by(1.0);
    pub const RPM: &Unit = &plain("rpm");
    pub const MILLIOHM: &Unit = &plain("mΩ");
    pub const MILLIVOLT_PER_CELL_KELVIN: &Unit = &plain("mV/K");
    pub const MILLIVOLT_PER_KELVIN: &Unit = &plain("mV/K");
    pub const OHM_AMPERE_HOUR: &Unit = &plain("Ω·A·h");
    pub const WATT_PER_KELVIN: &Unit = &plain("W/K");
    pub const KILOJOULE_PER_KELVIN: &Unit = &plain("kJ/K");
    pub const CELSIUS: &Unit = &paired("°C", "°F", 1.8, 32.0).by(1.0);
    pub const KELVIN: &Unit = &paired("K", "°F", 1.8, 0.0).by(1.0);
    pub const CUBIC_METRE_PER_HOUR: &Unit = &paired("m³/h", "cfm", 0.588_578, 0.0);
    pub const LITRE: &Unit = &paired("L", "US gal", 1.0 / 3.785_411_784, 0.0);
    // What an engine sweeps is nowhere told in gallons.
    pub const LITRE_SWEPT: &Unit = &plain("litres");
    pub const MILLIMETRE: &Unit = &paired("mm", "in", 1.0 / 25.4, 0.0);
    pub const KILOGRAM: &Unit = &paired("kg", "lb", 2.204_623, 0.0);
    pub const KILOGRAM_PER_CUBIC_METRE: &Unit = &plain("kg/m³");
    pub const KILOPASCAL: &Unit = &plain("kPa");
    pub const MEGAJOULE_PER_KILOGRAM: &Unit = &plain("MJ/kg");
    pub const KILOGRAM_PER_LITRE: &Unit = &plain("kg/L");
    pub const DEGREE: &Unit = &plain("°").by(1.0);
    pub const PERCENT_PER_KELVIN: &Unit = &plain("%/K");
    pub const DAY: &Unit = &plain("d").by(1.0);
    pub const YEAR: &Unit = &plain("a").by(1.0);
    pub const CYCLE: &Unit = &plain("×");
    // Money carries no sign: the user's currency is one of the inputs.
    pub const MONEY: &Unit = &plain("");
    pub const MONEY_PER_LITRE: &Unit = &plain("/L");
    pub const MONEY_PER_AMPERE: &Unit = &plain("/A");
    pub const MONEY_PER_AMPERE_HOUR: &Unit = &plain("/A·h");
    pub const MONEY_PER_WATT: &Unit = &plain("/W");
    pub const MONEY_PER_KILOWATT_HOUR: &Unit = &plain("/kW·h");
    pub const METRE: &Unit = &paired("m", "ft", 1.0 / 0.3048, 0.0);
    pub const NEWTON: &Unit = &plain("N");
    pub const JOULE: &Unit = &plain("J");

    /// What a reader may choose the other units of, together: a name, and the
    /// units that change with it.
    pub const CHOICES: &[(&str, &[&Unit])] = &[
        ("Temperature", &[CELSIUS, KELVIN]),
        ("Length", &[METRE, MILLIMETRE]),
        ("Fuel", &[LITRE]),
        ("Air flow", &[CUBIC_METRE_PER_HOUR]),
        ("Weight", &[KILOGRAM]),
    ];
}

#[cfg(test)]
mod tests {
    use super::units::{CELSIUS, CHOICES};

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
