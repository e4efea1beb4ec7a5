//! Fuel by the Willans line: what an engine burns to turn itself, plus a fixed
//! amount for each kilowatt it gives.

use crate::formula::formula;
use crate::physics::sources;

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
#[formula(symbol = "p", unit = "kPa", source = sources::FUEL)]
pub fn friction_kpa(
    #[symbol("C₁")] chamber_kpa: f64,
    #[symbol("n_E")] engine_rpm: f64,
    #[symbol("S")] stroke_mm: f64,
) -> f64 {
    let piston_m_s = 2.0 * stroke_mm / 1000.0 * engine_rpm / 60.0;
    chamber_kpa + 48.0 * engine_rpm / 1000.0 + 0.4 * piston_m_s.powi(2)
}

/// Friction power of a four-stroke engine \[kW\]: pressure \[kPa\] times swept
/// volume \[L\] every second turn.
#[formula(symbol = "P_friction", unit = "kW", source = sources::FUEL)]
pub fn friction_kw(
    #[symbol("p")] friction_kpa: f64,
    #[symbol("V_E")] displacement_l: f64,
    #[symbol("n_E")] engine_rpm: f64,
) -> f64 {
    friction_kpa * displacement_l * engine_rpm / 120_000.0
}

/// Fuel for a kilowatt-hour of the pistons' work \[L/kW·h\], the slope of the
/// Willans line: indicated efficiency (0 to 1), heating value \[MJ/kg\], density
/// \[kg/L\]; a kilowatt-hour is 3.6 MJ.
#[formula(symbol = "b_i", unit = "L/kW·h", source = sources::FUEL)]
pub fn slope_l_kwh(
    #[symbol("η_i")] efficiency: f64,
    #[symbol("H")] mj_kg: f64,
    #[symbol("ρ_fuel")] kg_l: f64,
) -> f64 {
    3.6 / (efficiency * mj_kg * kg_l)
}

/// Fuel that goes into friction alone \[L/h\], the foot of the Willans line.
#[formula(symbol = "B₀", unit = "L/h", source = sources::FUEL)]
pub fn idle_l_h(
    #[symbol("P_friction")] friction_kw: f64,
    #[symbol("b_i")] slope_l_kwh: f64,
) -> f64 {
    friction_kw * slope_l_kwh
}

/// Fuel for a kilowatt-hour at the shaft of an alternator \[L/kW·h\], through its
/// belt (efficiency 0 to 1).
#[formula(symbol = "b_E", unit = "L/kW·h", source = sources::FUEL)]
pub fn marginal_l_kwh(
    #[symbol("b_i")] slope_l_kwh: f64,
    #[symbol("η_belt")] belt_efficiency: f64,
) -> f64 {
    slope_l_kwh / belt_efficiency
}

/// Fuel that the alternators' shafts ask for \[L\], from their energy \[kW·h\].
#[formula(symbol = "B_alt", unit = "L", source = sources::FUEL)]
pub fn marginal_l(#[symbol("b_E")] l_kwh: f64, #[symbol("W_shaft")] shaft_kwh: f64) -> f64 {
    l_kwh * shaft_kwh
}

/// Fuel of an engine that runs for charging alone \[L\]: what turns it for so
/// many hours, and what the alternators ask on top \[L\].
#[formula(symbol = "B", unit = "L", source = sources::FUEL)]
pub fn run_l(
    #[symbol("B₀")] idle_l_h: f64,
    #[symbol("t")] hours: f64,
    #[symbol("B_alt")] marginal_l: f64,
) -> f64 {
    idle_l_h * hours + marginal_l
}

/// The Willans line for a friction power \[kW\], indicated efficiency (0 to
/// 1), heating value \[MJ/kg\] and density \[kg/L\].
pub fn willans(friction_kw: f64, efficiency: f64, mj_kg: f64, kg_l: f64) -> Willans {
    let slope_l_h_kw = slope_l_kwh(efficiency, mj_kg, kg_l);
    Willans {
        idle_l_h: idle_l_h(friction_kw, slope_l_h_kw),
        slope_l_h_kw,
    }
}
