//! Lead-acid batteries: a sloping rest voltage, and an appetite that falls as
//! they fill.

use super::straight;

/// What tells one kind of lead battery from another; voltages of a 12 V block
/// of six cells at 25 °C, common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeadKind {
    /// At rest, empty and full \[V\].
    pub rest_v: (f64, f64),
    /// Absorption voltage \[V\].
    pub absorption_v: f64,
    /// Most it takes at that voltage \[A for each A·h\].
    pub appetite: f64,
    /// Hours in which the missing charge falls to a third at that voltage.
    pub tail_h: f64,
    /// Ampere-hours that come out for those that went in, 0 to 1.
    pub efficiency: f64,
    /// Peukert's exponent, from memory.
    pub peukert: f64,
}

/// Flooded cells.
pub const FLOODED: LeadKind = LeadKind {
    rest_v: (11.85, 12.65),
    absorption_v: 14.6,
    appetite: 0.2,
    tail_h: 2.0,
    efficiency: 0.87,
    peukert: 1.25,
};

/// Absorbed in glass mat.
pub const AGM: LeadKind = LeadKind {
    rest_v: (11.9, 12.85),
    absorption_v: 14.4,
    appetite: 0.4,
    tail_h: 1.2,
    efficiency: 0.93,
    peukert: 1.15,
};

/// Gelled acid.
pub const GEL: LeadKind = LeadKind {
    rest_v: (11.9, 12.85),
    absorption_v: 14.2,
    appetite: 0.25,
    tail_h: 1.8,
    efficiency: 0.92,
    peukert: 1.15,
};

/// Usual temperature compensation \[mV for each cell and kelvin\], common practice.
pub const COMPENSATION_MV: f64 = -4.0;
/// Cells in a 12 V block.
const CELLS: f64 = 6.0;

impl LeadKind {
    /// Rest voltage of a 12 V block \[V\].
    pub fn rest_v(&self, charge: f64) -> f64 {
        let (empty, full) = self.rest_v;
        straight(&[(0.0, empty), (1.0, full)], charge)
    }

    /// What a bank takes at its absorption voltage \[A\]: the lesser of its
    /// appetite and the charge still missing over the tail.
    ///
    /// The falling part is the ampere-hour law, "amperes no more than the
    /// ampere-hours missing" (J. L. Woodbridge, 1935, as commonly restated),
    /// with a tail longer than its one hour, as practice finds.
    pub fn acceptance_a(&self, capacity_ah: f64, charge: f64) -> f64 {
        let missing_ah = capacity_ah * (1.0 - charge).max(0.0);
        (self.appetite * capacity_ah).min(missing_ah / self.tail_h)
    }
}

/// Charging voltage at a temperature \[V\], from the one at 25 °C: `blocks`
/// 12 V blocks of six cells, `mv` millivolts for each cell and kelvin.
pub fn compensated_v(at_25c_v: f64, blocks: f64, mv: f64, temperature_c: f64) -> f64 {
    at_25c_v + mv / 1000.0 * CELLS * blocks * (temperature_c - 25.0)
}

/// Hours a battery lasts at a current: t = H·(C/(I·H))^k for a capacity C
/// \[A·h\] rated over H hours (W. Peukert, Elektrotechnische Zeitschrift 20, 1897; from memory).
pub fn peukert_hours(capacity_ah: f64, rated_h: f64, amperes: f64, exponent: f64) -> f64 {
    if amperes <= 0.0 {
        return f64::INFINITY;
    }
    rated_h * (capacity_ah / (amperes * rated_h)).powf(exponent)
}
