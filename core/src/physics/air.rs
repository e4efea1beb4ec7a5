//! Air that carries heat away.

/// Specific heat of air at constant pressure \[J/(kg·K)\], 20 to 60 °C (handbook value, from memory).
pub const SPECIFIC_HEAT: f64 = 1006.0;

/// Air a four-stroke engine draws \[m³/h\]: swept volume \[L\] every second
/// turn at an engine speed \[rpm\], times its filling (0 to 1).
pub fn combustion_m3h(displacement_l: f64, engine_rpm: f64, filling: f64) -> f64 {
    displacement_l / 1000.0 * engine_rpm / 2.0 * 60.0 * filling
}

/// Heat a flow of air \[m³/h\] of a density \[kg/m³\] carries off for each kelvin \[W/K\].
pub fn flow_w_k(flow_m3h: f64, density_kg_m3: f64) -> f64 {
    flow_m3h / 3600.0 * density_kg_m3 * SPECIFIC_HEAT
}
