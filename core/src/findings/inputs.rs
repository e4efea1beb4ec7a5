//! Inputs that each make sense and together do not.

use serde::Serialize;

use crate::boat::Worksheet;
use crate::findings::{Code, Finding, Severity, add};
use crate::simulation::plant::Plant;

/// Inputs that do not go together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum InputFinding {
    /// No output curve passes through the two points entered.
    CurvePoints {
        /// Current of the second point \[A\].
        second_a: f64,
        /// Its speed \[rpm\].
        second_rpm: f64,
        /// Rated current \[A\].
        rated_a: f64,
        /// Its speed \[rpm\].
        rated_rpm: f64,
    },
    /// The efficiency leaves no loss for the winding.
    EfficiencyTooHigh {
        /// As entered \[%\].
        efficiency_pct: f64,
    },
    /// No cooling gives the winding temperature of the bench test.
    AnchorOutOfReach,
    /// The charge ends no higher than it starts.
    TargetBelowStart {
        /// State of charge at the start \[%\].
        from_pct: f64,
        /// State of charge at the end \[%\].
        to_pct: f64,
    },
    /// The daily charge target is no higher than the lowest state of charge.
    EmptyWindow {
        /// Lowest state of charge \[%\].
        low_pct: f64,
        /// Daily charge target \[%\].
        high_pct: f64,
    },
}

impl InputFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            InputFinding::CurvePoints { .. }
            | InputFinding::EfficiencyTooHigh { .. }
            | InputFinding::AnchorOutOfReach => Severity::Danger,
            InputFinding::TargetBelowStart { .. } | InputFinding::EmptyWindow { .. } => {
                Severity::Fix
            }
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            InputFinding::CurvePoints { .. } => Code::CurvePoints,
            InputFinding::EfficiencyTooHigh { .. } => Code::EfficiencyTooHigh,
            InputFinding::AnchorOutOfReach => Code::AnchorOutOfReach,
            InputFinding::TargetBelowStart { .. } => Code::TargetBelowStart,
            InputFinding::EmptyWindow { .. } => Code::EmptyWindow,
        }
    }
}

/// Inputs that each make sense and together do not.
pub(super) fn input_findings(sheet: &Worksheet, plant: &Plant, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let first = plant.alternators.first();
    if first.is_some_and(|one| !one.curve_fits) {
        add(
            found,
            InputFinding::CurvePoints {
                second_a: inputs.alt.second_a,
                second_rpm: inputs.alt.second_rpm,
                rated_a: inputs.alt.rated_a,
                rated_rpm: inputs.alt.rated_rpm,
            },
        );
    }
    if first.is_some_and(|one| !one.losses.plausible) {
        add(
            found,
            InputFinding::EfficiencyTooHigh {
                efficiency_pct: inputs.alt.efficiency_pct,
            },
        );
    }
    if first.is_some_and(|one| !one.anchored) {
        add(found, InputFinding::AnchorOutOfReach);
    }
    let (from_pct, to_pct) = (inputs.run.from_pct, inputs.run.to_pct);
    if to_pct <= from_pct {
        add(found, InputFinding::TargetBelowStart { from_pct, to_pct });
    }
    let (low_pct, high_pct) = (inputs.window_low_pct(), inputs.window_high_pct());
    if low_pct >= high_pct {
        add(found, InputFinding::EmptyWindow { low_pct, high_pct });
    }
}
