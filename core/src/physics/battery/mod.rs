//! The house bank as a voltage at rest behind a resistance that may change as
//! it fills.

use crate::physics::charging::{bank_ohm, bank_v, lead_ohm};

mod lead;
mod lfp;

pub use lead::{
    AGM, COMPENSATION_MV, FLOODED, GEL, LeadKind, acid_freezes_c, compensated_v, lead_freezes_c,
    peukert_hours,
};
pub use lfp::{
    LFP_BLOCK_CELLS, LFP_CHARGE_V, LFP_LADDER, LFP_MOST_V, LFP_SHORT_OHM_AH, LadderRate,
    LadderStep, lfp_cold_factor, lfp_rest_v,
};

/// No electrolyte is frozen at this temperature \[°C\]: even water melts at 0.
const THAWED_C: f64 = 1.0;

/// What the cells are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Cells {
    /// Lithium iron phosphate; resistance of the cells at this temperature \[Ω\].
    Lfp(f64),
    /// Lead.
    Lead(LeadKind),
}

/// A bank: blocks of 12 V in series behind a resistance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bank {
    /// 12 V blocks in series.
    pub blocks: f64,
    /// Capacity \[A·h\].
    pub capacity_ah: f64,
    /// What it is made of.
    pub cells: Cells,
    /// Switch, fuse and cable to where the regulator measures \[Ω\].
    pub harness_ohm: f64,
    /// How far the voltage at which it takes what it accepts lies from that at
    /// 25 °C, of the whole bank \[V\].
    pub compensation_v: f64,
    /// Ampere-hours kept of those put in, 0 to 1.
    pub charge_efficiency: f64,
    /// Temperature of the bank \[°C\].
    pub temperature_c: f64,
}

impl Bank {
    /// Voltage at rest \[V\] at a state of charge, 0 to 1.
    pub fn rest_v(&self, soc: f64) -> f64 {
        let block_v = match &self.cells {
            Cells::Lfp(_) => LFP_BLOCK_CELLS * lfp_rest_v(soc),
            Cells::Lead(kind) => kind.rest_v(soc),
        };
        bank_v(self.blocks, block_v)
    }

    /// Resistance to where the regulator measures \[Ω\]. A lead bank's is such
    /// that it takes what it accepts at its absorption voltage.
    pub fn resistance_ohm(&self, soc: f64) -> f64 {
        let cells = match &self.cells {
            Cells::Lfp(ohm) => *ohm,
            Cells::Lead(kind) => {
                // Nearly full, it takes next to nothing.
                let least_a = 1e-4 * self.capacity_ah;
                let accepted_a = kind.acceptance_a(self.capacity_ah, soc).max(least_a);
                let absorption_v = self.blocks * kind.absorption_v + self.compensation_v;
                lead_ohm(absorption_v, self.rest_v(soc), accepted_a)
            }
        };
        bank_ohm(cells, self.harness_ohm)
    }

    /// Whether its electrolyte is frozen at a state of charge, 0 to 1: ice takes no
    /// charge. Never for lithium, which has no water to freeze.
    pub fn is_frozen(&self, soc: f64) -> bool {
        matches!(self.cells, Cells::Lead(_)) && self.temperature_c <= lead_freezes_c(soc)
    }

    /// This bank, warm enough for nothing to freeze; all else about it stays
    /// as it is in the cold.
    pub fn thawed(self) -> Bank {
        Bank {
            temperature_c: self.temperature_c.max(THAWED_C),
            ..self
        }
    }

    /// Most it resists while it gives \[Ω\]: 2 Ω for each 12 V block over its
    /// ampere-hours, and 2 mΩ of cable. Own reasoning, for lithium and lead alike.
    pub fn giving_ohm(&self) -> f64 {
        2.0 / self.capacity_ah * self.blocks + 0.002
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

/// Resistance of an LFP bank's cells \[Ω\]: `ohm_ah` is that of four cells
/// times their ampere-hours, `blocks` how many such fours are in series.
pub fn lfp_resistance_ohm(ohm_ah: f64, blocks: f64, capacity_ah: f64) -> f64 {
    ohm_ah * blocks / capacity_ah
}
