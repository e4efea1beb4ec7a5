//! Whether a bank of lead may be charged like this, and is ever full.

mod find;

use serde::Serialize;

use crate::boat::Chemistry;
use crate::findings::{Code, Severity};

pub(super) use find::lead_findings;

/// Above this a lead battery may run away \[°C\]; common practice, no source.
pub(crate) const HOT_C: f64 = 50.0;
/// How far above what its kind withstands a 12 V block is harmed within days
/// \[V\], and how far below what fills it it stays far from full. Own reasoning.
const FAR_ABOVE_V: f64 = 0.4;
/// See [`FAR_ABOVE_V`].
const FAR_BELOW_V: f64 = 0.2;

/// What harms a bank of lead.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LeadFinding {
    /// Too hot to be charged.
    LeadHot {
        /// Temperature of the bank \[°C\].
        bank_c: f64,
    },
    /// Its acid is frozen, or freezes before the bank is as low as it may get.
    LeadFrozen {
        /// When.
        when: FrozenWhen,
        /// Temperature of the bank \[°C\].
        bank_c: f64,
        /// State of charge it gets to then \[%\].
        lowest_pct: f64,
        /// Where its acid freezes then \[°C\].
        freezes_c: f64,
        /// State of charge that keeps it from freezing \[%\]; none where a full
        /// one is not safe.
        safe_pct: Option<f64>,
    },
    /// Its acid may freeze.
    LeadMayFreeze {
        /// Temperature of the bank \[°C\].
        bank_c: f64,
        /// Lowest state of charge it gets to \[%\].
        lowest_pct: f64,
        /// Where its acid freezes then \[°C\].
        freezes_c: f64,
        /// Where it freezes when flat \[°C\].
        flat_freezes_c: f64,
    },
    /// The charge voltage is too high.
    LeadOvervoltage(LeadHigh),
    /// The charge voltage is too low to fill it.
    LeadUndervoltage(LeadLow),
    /// The engine never fills it.
    LeadNeverFull {
        /// Where the daily charge ends \[%\].
        target_pct: f64,
        /// From there to full at the charge voltage \[h\].
        to_full_h: f64,
    },
}

/// When the acid of a lead bank is frozen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FrozenWhen {
    /// Where the charging run or the daily run begins: the engine charges nothing.
    EngineStarts,
    /// At the lowest state of charge wanted, below where the engine starts.
    AtTheLowest,
}

/// What sets a charge voltage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SetBy {
    /// A built-in regulator, which cannot be set.
    BuiltInRegulator,
    /// A setting.
    Setting,
}

/// A charge voltage that is too high for a bank of lead.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LeadHigh {
    /// What the bank is made of.
    pub chemistry: Chemistry,
    /// What sets the voltage.
    pub set_by: SetBy,
    /// Charge voltage \[V\].
    pub charge_v: f64,
    /// Temperature of the bank \[°C\].
    pub bank_c: f64,
    /// What it withstands at that temperature \[V\].
    pub highest_v: f64,
    /// What it withstands at 25 °C \[V\].
    pub highest_25c_v: f64,
    /// 12 V blocks in series.
    pub blocks: f64,
}

/// A charge voltage that is too low to fill a bank of lead.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LeadLow {
    /// What the bank is made of.
    pub chemistry: Chemistry,
    /// What sets the voltage.
    pub set_by: SetBy,
    /// Charge voltage \[V\].
    pub charge_v: f64,
    /// Temperature of the bank \[°C\].
    pub bank_c: f64,
    /// What fills it at that temperature \[V\].
    pub least_v: f64,
    /// 12 V blocks in series.
    pub blocks: f64,
    /// Whether everything else that charges it fills it.
    pub others_fill: bool,
    /// Whether panels do.
    pub panels_fill: bool,
}

impl LeadFinding {
    pub(super) fn severity(&self) -> Severity {
        match self {
            LeadFinding::LeadHot { .. } | LeadFinding::LeadFrozen { .. } => Severity::Danger,
            LeadFinding::LeadOvervoltage(high) => {
                if high.charge_v > high.highest_v + FAR_ABOVE_V * high.blocks {
                    Severity::Danger
                } else {
                    Severity::Fix
                }
            }
            LeadFinding::LeadUndervoltage(low) => {
                let short_v = low.least_v - low.charge_v;
                if short_v > FAR_BELOW_V * low.blocks && !low.panels_fill {
                    Severity::Fix
                } else {
                    Severity::Note
                }
            }
            LeadFinding::LeadMayFreeze { .. } | LeadFinding::LeadNeverFull { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            LeadFinding::LeadHot { .. } => Code::LeadHot,
            LeadFinding::LeadFrozen { .. } => Code::LeadFrozen,
            LeadFinding::LeadMayFreeze { .. } => Code::LeadMayFreeze,
            LeadFinding::LeadOvervoltage(_) => Code::LeadOvervoltage,
            LeadFinding::LeadUndervoltage(_) => Code::LeadUndervoltage,
            LeadFinding::LeadNeverFull { .. } => Code::LeadNeverFull,
        }
    }
}
