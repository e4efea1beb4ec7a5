//! A generator that charges the bank.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::Worksheet;
use crate::findings::{Code, Finding, Severity, add};

/// Load below which a diesel generator soots and glazes \[%\]: NFPA 110 (2019),
/// 8.4.2, as quoted, asks for 30 % of the nameplate.
const LOW_LOAD_PCT: f64 = 30.0;
/// A charger that takes so much more than the generator gives is held back \[kW\].
const NEAR_KW: f64 = 0.05;
/// Shown minutes are whole: that much over what is allowed is none \[h\].
const NEAR_H: f64 = 1.0 / 60.0;

/// What is wrong with a generator that charges the bank.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum GeneratorFinding {
    /// It does not put back a day's use.
    GeneratorNotEnough {
        /// What a day takes \[A·h\].
        need_ah: f64,
        /// State of charge wanted \[%\].
        target_pct: f64,
        /// Most that its charger gives \[A\].
        charger_a: f64,
    },
    /// It must run longer than it may.
    GeneratorTooLong {
        /// Its time a day \[h\].
        hours: f64,
        /// How long it may run a day \[h\].
        allowed_h: f64,
    },
    /// Its charger asks for more than it gives.
    GeneratorTooSmall {
        /// What it gives for hours on end \[kW\].
        rated_kw: f64,
        /// What the charger would take \[kW\].
        charger_kw: f64,
        /// What the charger gives on it \[A\].
        charger_a: f64,
    },
    /// It runs at low load.
    GeneratorLowLoad {
        /// Mean load of what it can give \[%\].
        load_pct: f64,
        /// What it gives for hours on end \[kW\].
        rated_kw: f64,
    },
}

impl GeneratorFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            GeneratorFinding::GeneratorNotEnough { .. } => Severity::Danger,
            GeneratorFinding::GeneratorTooLong { .. }
            | GeneratorFinding::GeneratorTooSmall { .. } => Severity::Fix,
            GeneratorFinding::GeneratorLowLoad { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            GeneratorFinding::GeneratorNotEnough { .. } => Code::GeneratorNotEnough,
            GeneratorFinding::GeneratorTooLong { .. } => Code::GeneratorTooLong,
            GeneratorFinding::GeneratorTooSmall { .. } => Code::GeneratorTooSmall,
            GeneratorFinding::GeneratorLowLoad { .. } => Code::GeneratorLowLoad,
        }
    }
}

/// What is wrong with the generator, where one charges the bank.
pub(crate) fn generator_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let Some(generator) = report.generator else {
        return;
    };
    let inputs = &sheet.inputs;
    match generator.hours {
        // Said by the finding of cells too cold or too hot, or of the frozen bank.
        None if inputs.charge_barred().is_some() || generator.frozen_pct.is_some() => {}
        None => add(
            found,
            GeneratorFinding::GeneratorNotEnough {
                need_ah: generator.day_ah,
                target_pct: inputs.run.to_pct,
                charger_a: generator.charger_a,
            },
        ),
        Some(hours) if hours > generator.allowed_h + NEAR_H => add(
            found,
            GeneratorFinding::GeneratorTooLong {
                hours,
                allowed_h: generator.allowed_h,
            },
        ),
        Some(_) => {}
    }
    if generator.charger_kw > generator.rated_kw + NEAR_KW {
        add(
            found,
            GeneratorFinding::GeneratorTooSmall {
                rated_kw: generator.rated_kw,
                charger_kw: generator.charger_kw,
                charger_a: generator.charger_a,
            },
        );
    }
    if let Some(load_pct) = generator.load_pct.filter(|pct| *pct < LOW_LOAD_PCT) {
        add(
            found,
            GeneratorFinding::GeneratorLowLoad {
                load_pct,
                rated_kw: generator.rated_kw,
            },
        );
    }
}
