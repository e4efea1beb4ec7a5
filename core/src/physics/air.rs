//! Air that carries heat away.

use crate::formula::formula;
use crate::physics::sources;

/// Specific heat of air at constant pressure \[J/(kg·K)\], 20 to 60 °C (handbook value, from memory).
pub const SPECIFIC_HEAT: f64 = 1006.0;

/// Air a four-stroke engine draws \[m³/h\]: swept volume \[L\] every second
/// turn at an engine speed \[rpm\], times its filling (0 to 1).
#[formula(symbol = "q", unit = "m³/h", source = sources::OWN_REASONING)]
pub fn combustion_m3h(
    #[symbol("V_E")] displacement_l: f64,
    #[symbol("n_E")] engine_rpm: f64,
    #[symbol("λ")] filling: f64,
) -> f64 {
    displacement_l / 1000.0 * engine_rpm / 2.0 * 60.0 * filling
}

/// Air a blower moves as installed \[m³/h\], from what is printed on it and the
/// part of that its hoses and grilles leave (0 to 1).
#[formula(symbol = "q", unit = "m³/h", source = sources::OWN_REASONING)]
pub fn blown_m3h(
    #[symbol("q_blower")] printed_m3h: f64,
    #[symbol("k_blower")] installed: f64,
) -> f64 {
    printed_m3h * installed
}

/// Heat a flow of air \[m³/h\] of a density \[kg/m³\] carries off for each kelvin \[W/K\].
#[formula(
    symbol = "G_air",
    unit = "W/K",
    source = sources::HEAT_OF_AIR,
    constants(SPECIFIC_HEAT("c", "Specific heat of air", "J/(kg·K)"))
)]
pub fn flow_w_k(#[symbol("q")] flow_m3h: f64, #[symbol("ρ_air")] density_kg_m3: f64) -> f64 {
    flow_m3h / 3600.0 * density_kg_m3 * SPECIFIC_HEAT
}
