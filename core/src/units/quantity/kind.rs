//! What a figure is of, and the unit that it is kept in. Uses the units.

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
