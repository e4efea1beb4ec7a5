//! A figure that is shown: its value, what it is of, and how finely it is told.

use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

use crate::units::{
    AMPERE, AMPERE_HOUR, CELSIUS, CUBIC_METRE_PER_HOUR, DEGREE, HOUR, JOULE, KELVIN, KILOAMPERE,
    KILOWATT, KILOWATT_HOUR, LITRE, LITRE_PER_HOUR, METRE, METRE_PER_SECOND, MILLIMETRE,
    MILLIVOLT_PER_CELL_KELVIN, MINUTE, MONEY, NEWTON, NEWTON_METRE, NONE, OHM, PERCENT, RPM,
    SECOND, UnitOfMeasure, VOLT, WATT, WATT_HOUR,
};

/// What a figure is of. Each kind has one unit in which its value is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum QuantityKind {
    /// How hot something is \[°C\].
    Temperature,
    /// By how much hotter \[K\].
    TemperatureDifference,
    /// Current \[A\].
    Current,
    /// Current of a short circuit \[kA\].
    ShortCircuitCurrent,
    /// Charge \[A·h\].
    Charge,
    /// Voltage \[V\].
    Voltage,
    /// How a charge voltage falls with temperature \[mV/K\].
    Compensation,
    /// Power of a load \[W\].
    Power,
    /// Power of a shaft or of a large charger \[kW\].
    LargePower,
    /// Electric energy \[kW·h\].
    Energy,
    /// Electric energy of a day \[W·h\].
    DayEnergy,
    /// Energy of a voltage spike \[J\].
    SpikeEnergy,
    /// Resistance \[Ω\].
    Resistance,
    /// Speed of a shaft \[rpm\].
    Speed,
    /// Speed of a belt \[m/s\].
    BeltSpeed,
    /// Force \[N\].
    Force,
    /// Torque of a shaft \[N·m\].
    Torque,
    /// Length of a cable \[m\].
    Length,
    /// Size of a part \[mm\].
    Size,
    /// Angle \[°\].
    Angle,
    /// Air that is moved \[m³/h\].
    AirFlow,
    /// Fuel \[L\].
    Fuel,
    /// Fuel burnt in an hour \[L/h\].
    FuelRate,
    /// Time as a clock has it \[min\]: "2 h 05 min".
    Time,
    /// Time in seconds \[s\].
    Seconds,
    /// Time in hours \[h\].
    Hours,
    /// Share \[%\].
    Percent,
    /// Money, in the currency of the worksheet.
    Money,
    /// A number of things, or a ratio.
    Count,
}

impl QuantityKind {
    /// The unit its values are kept in.
    pub const fn unit(self) -> &'static UnitOfMeasure {
        match self {
            QuantityKind::Temperature => CELSIUS,
            QuantityKind::TemperatureDifference => KELVIN,
            QuantityKind::Current => AMPERE,
            QuantityKind::ShortCircuitCurrent => KILOAMPERE,
            QuantityKind::Charge => AMPERE_HOUR,
            QuantityKind::Voltage => VOLT,
            QuantityKind::Compensation => MILLIVOLT_PER_CELL_KELVIN,
            QuantityKind::Power => WATT,
            QuantityKind::LargePower => KILOWATT,
            QuantityKind::Energy => KILOWATT_HOUR,
            QuantityKind::DayEnergy => WATT_HOUR,
            QuantityKind::SpikeEnergy => JOULE,
            QuantityKind::Resistance => OHM,
            QuantityKind::Speed => RPM,
            QuantityKind::BeltSpeed => METRE_PER_SECOND,
            QuantityKind::Force => NEWTON,
            QuantityKind::Torque => NEWTON_METRE,
            QuantityKind::Length => METRE,
            QuantityKind::Size => MILLIMETRE,
            QuantityKind::Angle => DEGREE,
            QuantityKind::AirFlow => CUBIC_METRE_PER_HOUR,
            QuantityKind::Fuel => LITRE,
            QuantityKind::FuelRate => LITRE_PER_HOUR,
            QuantityKind::Time => MINUTE,
            QuantityKind::Seconds => SECOND,
            QuantityKind::Hours => HOUR,
            QuantityKind::Percent => PERCENT,
            QuantityKind::Money => MONEY,
            QuantityKind::Count => NONE,
        }
    }
}

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

    /// The same figure with exactly so many decimals.
    pub const fn to(mut self, decimals: usize) -> Quantity {
        self.decimals = Decimals {
            least: decimals,
            most: decimals,
        };
        self
    }

    /// The same figure with as many decimals as it has, up to a most: for what
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

/// A temperature, in whole degrees \[°C\].
pub const fn celsius(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Temperature)
}

/// A difference of temperatures, in whole degrees \[K\].
pub const fn kelvin(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::TemperatureDifference)
}

/// A current, in whole amperes \[A\].
pub const fn amperes(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Current)
}

/// A charge, in whole ampere hours \[A·h\].
pub const fn ampere_hours(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Charge)
}

/// A voltage to a tenth, or to a hundredth where it has one \[V\].
pub const fn volts(value: f64) -> Quantity {
    let mut volts = Quantity::new(value, QuantityKind::Voltage);
    volts.decimals = Decimals { least: 1, most: 2 };
    volts
}

/// A power given in watts, told in kilowatts to a tenth.
pub const fn kilowatts_of(watts: f64) -> Quantity {
    Quantity::new(watts / 1000.0, QuantityKind::LargePower).to(1)
}

/// A short circuit's current given in amperes, told in kiloamperes to a tenth.
pub const fn kiloamperes_of(amperes: f64) -> Quantity {
    Quantity::new(amperes / 1000.0, QuantityKind::ShortCircuitCurrent).to(1)
}

/// A speed, in whole turns a minute \[rpm\].
pub const fn rpm(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Speed)
}

/// A share, in whole percents \[%\].
pub const fn percent(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Percent)
}

/// A time as a clock has it \[min\].
pub const fn minutes(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Time)
}

/// A time from the start of a run \[s\]: seconds below a minute and a half, from
/// there as a clock has it.
pub const fn seconds(value: f64) -> Quantity {
    if value < 90.0 {
        Quantity::new(value, QuantityKind::Seconds)
    } else {
        minutes(value / 60.0)
    }
}

/// The size of a part, in whole millimetres \[mm\].
pub const fn millimetres(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Size)
}

/// An amount of money, in whole units of the worksheet's currency.
pub const fn money(amount: f64) -> Quantity {
    Quantity::new(amount, QuantityKind::Money)
}

/// A number without a unit.
pub const fn count(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Count)
}

#[cfg(test)]
mod tests {
    use crate::units::quantity::{celsius, seconds, volts};
    use crate::units::{QuantityKind, Reader};

    #[test]
    fn json_has_value_and_unit() {
        let json = serde_json::to_value(celsius(-4.5)).unwrap();
        assert_eq!(json, serde_json::json!({"value": -4.5, "unit": "°C"}));
    }

    #[test]
    fn a_voltage_has_a_hundredth_only_where_it_is_one() {
        let show = |v| Reader::METRIC.show(volts(v));
        let shown = [14.0, 14.2, 14.25, 14.201].map(show);
        assert_eq!(shown, ["14.0 V", "14.2 V", "14.25 V", "14.2 V"]);
    }

    #[test]
    fn seconds_become_a_clock() {
        assert_eq!(seconds(40.0).kind, QuantityKind::Seconds);
        assert_eq!(Reader::METRIC.show(seconds(89.0)), "89 s");
        assert_eq!(Reader::METRIC.show(seconds(7500.0)), "2 h 05 min");
    }
}
