//! Temperature of a winding by its resistance: right after stopping, and of the
//! rotor by its field while it works.

use crate::formula::formula;
use crate::numerics::line::straight_line;
use crate::physics::sources;

/// Temperature below zero at which the resistance of copper would vanish \[°C\], as
/// the standard of rotating machines has it.
pub const COPPER_K: f64 = 235.0;

/// Temperature of a copper winding \[°C\] by its resistance, given that at another
/// temperature \[°C\]; both resistances in one unit, above 0.
#[formula(symbol = "T", unit = "°C", source = sources::WINDING_BY_RESISTANCE)]
pub fn by_resistance_c(
    #[symbol("R")] ohm: f64,
    #[symbol("R_cold")] cold_ohm: f64,
    #[symbol("T_cold")] cold_c: f64,
) -> f64 {
    ohm / cold_ohm * (COPPER_K + cold_c) - COPPER_K
}

/// Resistance of the field \[Ω\] by its voltage \[V\] and current \[A\], above 0.
#[formula(symbol = "R", unit = "Ω", source = sources::ARITHMETIC)]
pub fn field_ohm(#[symbol("V_field")] volts: f64, #[symbol("I_field")] amperes: f64) -> f64 {
    volts / amperes
}

/// Temperature at the moment of stopping \[°C\] by readings after it, each seconds and
/// °C: a straight line through the logarithms of what the winding stood above the
/// air, led back to nought. None of fewer than two times, of a winding that is no
/// warmer than the air, or of one that did not cool.
///
/// IEC 60034-1, extended stopping time, where a logarithmic scale is recommended (from
/// memory).
pub fn when_stopped_c(readings: &[(f64, f64)], air_c: f64) -> Option<f64> {
    let above = |(seconds, winding_c): &(f64, f64)| {
        let above_k = winding_c - air_c;
        (above_k > 0.0).then(|| (*seconds, above_k.ln()))
    };
    let points: Option<Vec<(f64, f64)>> = readings.iter().map(above).collect();
    let (at_stop, slope) = straight_line(&points?)?;
    (slope < 0.0).then(|| air_c + at_stop.exp())
}
