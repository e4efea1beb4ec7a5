//! Fuel by the Willans line: what an engine burns to turn itself, plus a fixed
//! amount for each kilowatt it gives.

/// An engine at one speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Willans {
    /// Fuel to turn itself with nothing attached \[L/h\].
    pub idle_l_h: f64,
    /// Fuel for each kilowatt at the shaft \[L/h/kW\].
    pub slope_l_h_kw: f64,
}

/// Friction mean effective pressure of a diesel \[kPa\]:
/// C₁ + 48·(N/1000) + 0.4·S_p², with S_p = 2·stroke·N the mean piston speed
/// \[m/s\]; C₁ 75 for direct injection, 110 and more with a chamber:
/// J. B. Heywood, "Internal Combustion Engine Fundamentals", 1988, section
/// 13.6 (from memory).
pub fn friction_kpa(chamber_kpa: f64, engine_rpm: f64, stroke_mm: f64) -> f64 {
    let piston_m_s = 2.0 * stroke_mm / 1000.0 * engine_rpm / 60.0;
    chamber_kpa + 48.0 * engine_rpm / 1000.0 + 0.4 * piston_m_s * piston_m_s
}

/// Friction power of a four-stroke engine \[kW\]: pressure \[kPa\] times swept
/// volume \[L\] every second turn.
pub fn friction_kw(friction_kpa: f64, displacement_l: f64, engine_rpm: f64) -> f64 {
    friction_kpa * displacement_l * engine_rpm / 120_000.0
}

/// The Willans line for a friction power \[kW\], indicated efficiency (0 to
/// 1), heating value \[MJ/kg\] and density \[kg/L\].
pub fn willans(friction_kw: f64, efficiency: f64, mj_kg: f64, kg_l: f64) -> Willans {
    let slope_l_h_kw = 3.6 / (efficiency * mj_kg * kg_l);
    Willans {
        idle_l_h: friction_kw * slope_l_h_kw,
        slope_l_h_kw,
    }
}
