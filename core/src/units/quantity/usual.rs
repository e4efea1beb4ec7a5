//! The usual figures, each with the decimals it is told with. Uses figures and
//! their kinds.

use crate::units::quantity::figure::{Decimals, Quantity};
use crate::units::quantity::kind::QuantityKind;

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
