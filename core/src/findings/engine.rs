//! What the engine makes of it, and the air of its space.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::Worksheet;
use crate::findings::{Code, Finding, Severity, add};
use crate::simulation::Limit;

/// From this share of what it has an engine labours \[%\]; own reasoning.
const HEAVY_PCT: f64 = 60.0;
/// From this share it can hardly turn the alternator at all \[%\]; own reasoning.
const TOO_HEAVY_PCT: f64 = 90.0;
/// Load below which a diesel soots \[% of what it has at the speed\]. For
/// standby sets NFPA 110 (2019), 8.4.2, as quoted, asks for 30 % of the
/// nameplate, half an hour a month.
const LOW_LOAD_PCT: f64 = 25.0;
/// Charging nearly always is low load; from so many hours a day it decides
/// something \[h\]. Own reasoning.
const LONG_H: f64 = 3.0;

/// The engine is loaded too much or too little, or a blower was asked for.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum EngineFinding {
    /// The alternator takes much of what the engine has.
    EngineOverloaded {
        /// Most it takes \[kW\].
        takes_kw: f64,
        /// Share of what the engine has at that speed \[%\].
        share_pct: f64,
        /// Engine speed \[rpm\].
        engine_rpm: f64,
    },
    /// The engine runs for long at low load.
    EngineLowLoad {
        /// Engine time a day \[h\].
        hours: f64,
        /// Mean share of what the engine has at that speed \[%\].
        share_pct: f64,
        /// Whether it is the alternator, and not the bank, that gives no more.
        by_alternator: bool,
    },
    /// The blower that lets the alternator hold the current asked for.
    BlowerForWanted {
        /// Current asked for \[A\].
        wanted_a: f64,
        /// Blower, as printed on it \[m³/h\].
        blower_m3h: f64,
    },
    /// No blower lets the alternator hold the current asked for.
    NoBlowerForWanted {
        /// Current asked for \[A\].
        wanted_a: f64,
    },
}

impl EngineFinding {
    pub(super) fn severity(&self) -> Severity {
        match self {
            EngineFinding::EngineOverloaded { share_pct, .. } if *share_pct > TOO_HEAVY_PCT => {
                Severity::Danger
            }
            EngineFinding::EngineOverloaded { .. } => Severity::Fix,
            EngineFinding::EngineLowLoad { .. }
            | EngineFinding::BlowerForWanted { .. }
            | EngineFinding::NoBlowerForWanted { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            EngineFinding::EngineOverloaded { .. } => Code::EngineOverloaded,
            EngineFinding::EngineLowLoad { .. } => Code::EngineLowLoad,
            EngineFinding::BlowerForWanted { .. } => Code::BlowerForWanted,
            EngineFinding::NoBlowerForWanted { .. } => Code::NoBlowerForWanted,
        }
    }
}

/// What the engine makes of it, and the air of its space.
pub(super) fn engine_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let engine = &report.engine;
    if engine.peak_share_pct > HEAVY_PCT && sheet.engine_runs() {
        add(
            found,
            EngineFinding::EngineOverloaded {
                takes_kw: engine.peak_kw,
                share_pct: engine.peak_share_pct,
                engine_rpm: sheet.inputs.eng.rpm,
            },
        );
    } else if let Some(hours) = report.day.engine_hours
        && hours >= LONG_H
        && engine.mean_share_pct < LOW_LOAD_PCT
    {
        let limit = report.output.hot_limit;
        add(
            found,
            EngineFinding::EngineLowLoad {
                hours,
                share_pct: engine.mean_share_pct,
                by_alternator: !matches!(limit, Limit::ChargeVoltage | Limit::BankLimit),
            },
        );
    }
    let blower = report.output.blower_for_wanted_m3h;
    match (sheet.inputs.space.wanted_a, blower) {
        (Some(wanted_a), Some(blower_m3h)) => add(
            found,
            EngineFinding::BlowerForWanted {
                wanted_a,
                blower_m3h,
            },
        ),
        (Some(wanted_a), None) => add(found, EngineFinding::NoBlowerForWanted { wanted_a }),
        (None, _) => {}
    }
}
