//! Lithium iron phosphate cells.

use crate::numerics::interpolate;

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

/// Low end of the ohmic resistance of lithium iron phosphate cells, of a 12 V
/// block times its ampere-hours \[Ω·A·h\]: what limits a short. Common practice,
/// no source; a charge of minutes meets two to four times as much.
pub const LFP_SHORT_OHM_AH: f64 = 0.3;

/// Most volts a cell may reach \[V\], where management systems open: common
/// practice, no source.
pub const LFP_MOST_V: f64 = 3.65;

/// Cells in series in a 12 V block.
pub const LFP_BLOCK_CELLS: f64 = 4.0;

/// Volts a cell is charged to that leave a management system room to warn and
/// to stop the charging before it opens \[V\]: common practice, no source.
pub const LFP_CHARGE_V: f64 = 3.55;

/// Resistance over that at 25 °C against temperature \[°C\], from memory.
const COLD: [(f64, f64); 4] = [(-30.0, 4.5), (-10.0, 3.0), (5.0, 2.0), (25.0, 1.0)];

/// Most charging current at a temperature of the cells.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LadderRate {
    /// They must not be charged: too cold.
    TooCold,
    /// They must not be charged: too hot.
    TooHot,
    /// So much for each ampere-hour \[A/(A·h)\].
    Rate(f64),
    /// As much as the bank may take at all.
    Whole,
}

/// One step of the ladder.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LadderStep {
    /// Up to so warm \[°C\].
    pub to_c: f64,
    /// What is allowed there.
    pub rate: LadderRate,
}

impl LadderStep {
    /// Whether cells at a temperature \[°C\] that no step before it holds stand
    /// on it. What lies right between two steps belongs to the one towards 25 °C.
    pub fn holds(&self, celsius: f64) -> bool {
        celsius < self.to_c || (celsius == self.to_c && celsius > 25.0)
    }
}

const fn step(to_c: f64, rate: LadderRate) -> LadderStep {
    LadderStep { to_c, rate }
}

/// Most charging current by cell temperature, coldest first: telecom battery
/// manual, table 4.3, fast continuous charge. Its 1 C to 25 °C and 0.75 C to
/// 50 °C are left to the bank's own limit. Lithium plates out on the negative
/// electrode of a cold cell; a hot one ages.
pub const LFP_LADDER: [LadderStep; 6] = [
    step(0.0, LadderRate::TooCold),
    step(5.0, LadderRate::Rate(0.1)),
    step(10.0, LadderRate::Rate(0.2)),
    step(50.0, LadderRate::Whole),
    step(60.0, LadderRate::Rate(0.1)),
    step(f64::INFINITY, LadderRate::TooHot),
];

/// Rest voltage of one LFP cell \[V\] at a state of charge, 0 to 1; straight
/// lines between the points, level outside.
pub fn lfp_rest_v(soc: f64) -> f64 {
    interpolate(&REST, soc).unwrap_or_default()
}

/// How much more a cold bank resists than one at 25 °C.
pub fn lfp_cold_factor(temperature_c: f64) -> f64 {
    interpolate(&COLD, temperature_c).unwrap_or_default()
}
