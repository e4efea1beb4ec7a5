//! From the engine to an alternator's shaft and back.

use crate::formula::formula;
use crate::physics::sources;

/// Speed of an alternator's shaft \[rpm\] at an engine speed \[rpm\].
#[formula(symbol = "n", unit = "rpm", source = sources::ARITHMETIC)]
pub fn shaft_rpm(#[symbol("i")] pulley_ratio: f64, #[symbol("n_E")] engine_rpm: f64) -> f64 {
    pulley_ratio * engine_rpm
}

/// Minutes in hours.
#[formula(symbol = "t", unit = "h", source = sources::ARITHMETIC)]
pub fn hours(#[symbol("t")] minutes: f64) -> f64 {
    minutes / 60.0
}

/// A thousand of something: watts in kilowatts, watt-hours in kilowatt-hours.
#[formula(symbol = "x", unit = "", source = sources::ARITHMETIC)]
pub fn kilo(#[symbol("x")] of: f64) -> f64 {
    of / 1000.0
}

/// Electrical power \[W\].
#[formula(symbol = "P", unit = "W", source = sources::ARITHMETIC)]
pub fn power_w(#[symbol("I")] amperes: f64, #[symbol("V")] volts: f64) -> f64 {
    amperes * volts
}

/// What the belts take of the engine \[kW\] for a power at the alternators'
/// shafts \[W\]; efficiency of the belts 0 to 1.
#[formula(symbol = "P_belt", unit = "kW", source = sources::ARITHMETIC)]
pub fn belts_kw(
    #[symbol("P_shaft")] shaft_w: f64,
    #[symbol("η_belt")] belt_efficiency: f64,
) -> f64 {
    shaft_w / 1000.0 / belt_efficiency
}

/// Mean of that over a time \[h\] \[kW\], from the energy at the shafts \[kW·h\].
#[formula(symbol = "P_mean", unit = "kW", source = sources::ARITHMETIC)]
pub fn mean_belts_kw(
    #[symbol("W_shaft")] shaft_kwh: f64,
    #[symbol("t")] hours: f64,
    #[symbol("η_belt")] belt_efficiency: f64,
) -> f64 {
    shaft_kwh / hours / belt_efficiency
}

/// A part of a whole \[%\].
#[formula(symbol = "f", unit = "%", source = sources::ARITHMETIC)]
pub fn percent(#[symbol("a")] part: f64, #[symbol("b")] whole: f64) -> f64 {
    100.0 * part / whole
}
