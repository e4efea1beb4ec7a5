//! Copper gets worse at conducting as it warms.

use crate::formula::formula;
use crate::physics::sources;

/// Temperature coefficient of resistance of annealed copper at 20 °C \[1/K\]:
/// IEC 60028:1925, International standard of resistance for copper (from memory).
pub const COEFFICIENT_PER_K: f64 = 0.003_93;

/// Resistance at a temperature \[°C\] over that at 20 °C: 1 + 0.00393·(T − 20).
///
/// Linear, so meant for −40 to 200 °C; held at a tenth below that.
#[formula(symbol = "k", unit = "", source = sources::COPPER)]
pub fn ratio(#[symbol("T")] temperature_c: f64) -> f64 {
    (1.0 + COEFFICIENT_PER_K * (temperature_c - 20.0)).max(0.1)
}
