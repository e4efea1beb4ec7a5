//! Lithium iron phosphate cells.

use super::straight;

/// Rest voltage of an LFP cell \[V\] against state of charge (0 to 1), 25 °C,
/// typical, from memory. Within 65 mV at 20 % and 50 mV above 30 % of the
/// published model checked in `tests/published`.
const REST: [(f64, f64); 15] = [
    (0.00, 2.600),
    (0.02, 2.900),
    (0.05, 3.050),
    (0.10, 3.200),
    (0.20, 3.240),
    (0.30, 3.265),
    (0.40, 3.285),
    (0.50, 3.290),
    (0.60, 3.300),
    (0.70, 3.325),
    (0.80, 3.330),
    (0.90, 3.335),
    (0.95, 3.340),
    (0.98, 3.360),
    (1.00, 3.450),
];

/// Resistance over that at 25 °C against temperature \[°C\], from memory.
const COLD: [(f64, f64); 4] = [(-30.0, 4.5), (-10.0, 3.0), (5.0, 2.0), (25.0, 1.0)];

/// Highest charging rate against temperature \[A for each A·h\]: none below
/// 0 °C, a tenth to a fifth up to 10 °C; common practice, no source. Lithium
/// plates out on the negative electrode of a cold cell.
const COLD_RATE: [(f64, f64); 4] = [(0.0, 0.1), (10.0, 0.2), (15.0, 1.0), (25.0, 2.0)];

/// Rest voltage of one LFP cell \[V\] at a state of charge, 0 to 1; straight
/// lines between the points, level outside.
pub fn lfp_rest_v(charge: f64) -> f64 {
    straight(&REST, charge)
}

/// How much more a cold bank resists than one at 25 °C.
pub fn lfp_cold_factor(temperature_c: f64) -> f64 {
    straight(&COLD, temperature_c)
}

/// Highest charging rate at a temperature \[A for each A·h\].
pub fn lfp_cold_rate(temperature_c: f64) -> f64 {
    if temperature_c < 0.0 {
        0.0
    } else {
        straight(&COLD_RATE, temperature_c)
    }
}
