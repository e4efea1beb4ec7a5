//! The house bank as a voltage at rest behind a resistance.

/// Rest voltage of an LFP cell \[V\] against state of charge (0 to 1), 25 °C,
/// typical, from memory. Within 65 mV at 20 % and 50 mV above 30 % of the
/// published model checked in `tests/published`.
const LFP_REST: [(f64, f64); 15] = [
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

/// Rest voltage of one LFP cell \[V\] at a state of charge, 0 to 1; straight
/// lines between the points, level outside.
pub fn lfp_rest_v(charge: f64) -> f64 {
    let after = LFP_REST.partition_point(|point| point.0 <= charge);
    match (
        after.checked_sub(1).and_then(|at| LFP_REST.get(at)),
        LFP_REST.get(after),
    ) {
        (Some(&(x0, y0)), Some(&(x1, y1))) => y0 + (y1 - y0) * (charge - x0) / (x1 - x0),
        (Some(&(_, v)), None) | (None, Some(&(_, v))) => v,
        (None, None) => 0.0,
    }
}

/// States of charge at which the rest voltage bends.
pub fn lfp_bends() -> impl Iterator<Item = f64> {
    LFP_REST.iter().map(|point| point.0)
}

/// A bank: cells in series behind a resistance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bank {
    /// Cells in series.
    pub cells: f64,
    /// Capacity \[A·h\].
    pub capacity_ah: f64,
    /// Resistance to where the regulator measures \[Ω\].
    pub resistance_ohm: f64,
    /// Ampere-hours kept of those put in, 0 to 1.
    pub charge_efficiency: f64,
}

impl Bank {
    /// Voltage at rest \[V\] at a state of charge, 0 to 1.
    pub fn rest_v(&self, charge: f64) -> f64 {
        self.cells * lfp_rest_v(charge)
    }

    /// Change of the state of charge \[1/s\] for a current into the bank \[A\];
    /// what is drawn is drawn in full.
    pub fn charge_rate(&self, bank_a: f64) -> f64 {
        let kept = if bank_a > 0.0 {
            self.charge_efficiency
        } else {
            1.0
        };
        bank_a * kept / 3600.0 / self.capacity_ah
    }
}

/// Resistance of an LFP bank \[Ω\]: `ohm_ah` is that of four cells times their
/// ampere-hours, `blocks` how many such fours are in series.
pub fn bank_resistance_ohm(ohm_ah: f64, blocks: f64, capacity_ah: f64, harness_ohm: f64) -> f64 {
    ohm_ah * blocks / capacity_ah + harness_ohm
}
