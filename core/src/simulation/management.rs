//! What a lithium bank's management system does about the current: it opens
//! its contactor when the cells are asked to take more than they may.

use crate::boat::TooColdOrHot;
use serde::Serialize;

use crate::physics::battery::{Bank, Cells, LFP_BLOCK_CELLS, LFP_MOST_V};
use crate::simulation::moment::Flow;

/// How long too much current flows before the contactor opens \[s\]: 5 to 10 s,
/// common practice, no source.
const OVER_CURRENT_S: f64 = 5.0;

/// How long too many volts stand before it opens \[s\]: 2 to 5 s, common
/// practice, no source.
const OVER_VOLTAGE_S: f64 = 2.0;

/// How long current flows into cells too cold or too hot before it opens
/// \[s\]: at once to 10 s, common practice, no source.
const TEMPERATURE_S: f64 = 2.0;

/// Part of the limit by which a current may lie above it and still count as
/// held at it, and the least of that \[A\]: how well a shunt and a regulator
/// keep a figure. Own reasoning.
const CURRENT_PART: f64 = 0.02;
const CURRENT_LEAST_A: f64 = 0.5;

/// How far a cell may lie above its limit and still count as held at it \[V\].
/// Own reasoning.
const CELL_TOLERANCE_V: f64 = 0.005;

/// From this current on a contactor opens \[A\], for a limit \[A\]: a little above
/// it, as no shunt and no regulator is exact.
pub(crate) fn opens_above_a(limit_a: f64) -> f64 {
    limit_a + (CURRENT_PART * limit_a).max(CURRENT_LEAST_A)
}

/// From this state of charge on a management system that sends limits lowers
/// that of the current, down to [`FULL_RATE`] at full: common practice, no source.
const TAPER_FROM: f64 = 0.95;

/// Current that it still sends with the cells full, for each ampere-hour
/// \[1/h\]: about the current at which a charge ends; common practice, no source.
const FULL_RATE: f64 = 0.05;

/// The current limit that a management system sends at a state of charge (0 to
/// 1) \[A\], for cells that may take so much \[A\] and have that capacity \[A·h\].
pub(crate) fn sent_limit_a(limit_a: f64, capacity_ah: f64, soc: f64) -> f64 {
    let full_a = limit_a.min(FULL_RATE * capacity_ah);
    let gone = ((soc - TAPER_FROM) / (1.0 - TAPER_FROM)).clamp(0.0, 1.0);
    limit_a + gone * (full_a - limit_a)
}

/// Part of a bank's limit that a setting stays below it: what a regulator
/// overshoots by. Own reasoning.
const SETTING_PART: f64 = 0.95;

/// What to set, whatever it is set in, to stay within a bank's limit \[A\].
pub fn setting_within_a(limit_a: f64) -> f64 {
    SETTING_PART * limit_a
}

/// Why the contactor opens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum OpeningCause {
    /// More current than the bank may take.
    OverCurrent,
    /// More volts than its cells may reach.
    OverVoltage,
    /// The cells are too cold to be charged.
    Cold,
    /// The cells are too hot to be charged.
    Hot,
}

impl OpeningCause {
    /// Every cause, in the order they are looked for.
    pub(super) const ALL: [OpeningCause; 4] = [
        OpeningCause::Cold,
        OpeningCause::Hot,
        OpeningCause::OverCurrent,
        OpeningCause::OverVoltage,
    ];

    /// How long it lasts before the contactor opens \[s\].
    pub(super) const fn delay_s(self) -> f64 {
        match self {
            OpeningCause::OverCurrent => OVER_CURRENT_S,
            OpeningCause::OverVoltage => OVER_VOLTAGE_S,
            OpeningCause::Cold | OpeningCause::Hot => TEMPERATURE_S,
        }
    }
}

impl From<TooColdOrHot> for OpeningCause {
    fn from(cause: TooColdOrHot) -> OpeningCause {
        match cause {
            TooColdOrHot::Cold => OpeningCause::Cold,
            TooColdOrHot::Hot => OpeningCause::Hot,
        }
    }
}

/// What the management system of a lithium bank lets pass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Management {
    /// Most current into the bank \[A\].
    pub most_a: f64,
    /// Most volts of all its cells together \[V\].
    pub most_v: f64,
    /// Whether the cells are too cold or too hot to be charged at all, and which.
    pub barred: Option<OpeningCause>,
    /// Resistance between the cells and where the regulator measures \[Ω\].
    pub harness_ohm: f64,
}

impl Management {
    /// The one of a bank that may take so much current \[A\] at its temperature;
    /// none for lead, which has no contactor.
    pub fn new(bank: &Bank, most_a: f64, barred: Option<OpeningCause>) -> Option<Management> {
        match bank.cells {
            Cells::Lead(_) => None,
            Cells::Lfp(_) => Some(Management {
                most_a,
                most_v: LFP_MOST_V * LFP_BLOCK_CELLS * bank.blocks,
                barred,
                harness_ohm: bank.harness_ohm,
            }),
        }
    }

    /// Whether a cause is there at a moment.
    pub(super) fn sees(&self, cause: OpeningCause, flow: &Flow) -> bool {
        match cause {
            OpeningCause::OverCurrent => {
                self.barred.is_none() && flow.bank_a > opens_above_a(self.most_a)
            }
            OpeningCause::OverVoltage => {
                let cells_v = flow.bank_v - flow.bank_a * self.harness_ohm;
                let tolerance_v = self.most_v * CELL_TOLERANCE_V / LFP_MOST_V;
                flow.bank_a > 0.0 && cells_v > self.most_v + tolerance_v
            }
            OpeningCause::Cold | OpeningCause::Hot => {
                self.barred == Some(cause) && flow.bank_a > CURRENT_LEAST_A
            }
        }
    }
}
