//! Inputs that each make sense and together do not.

use serde::Serialize;

use crate::boat::{InstalledAlternator, WhichAlternator, Worksheet};
use crate::findings::{Code, Finding, Severity, add};
use crate::physics::climate::MONTH_DAYS;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::plant::Plant;

/// Inputs that do not go together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum InputFinding {
    /// No output curve passes through the two points entered.
    CurvePoints {
        /// Which alternator's.
        alternator: WhichAlternator,
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
        /// Which alternator's.
        alternator: WhichAlternator,
        /// As entered \[%\].
        efficiency_pct: f64,
    },
    /// No cooling gives the winding temperature of the bench test.
    AnchorOutOfReach {
        /// Which alternator's.
        alternator: WhichAlternator,
    },
    /// The charge ends no higher than it starts.
    TargetBelowStart {
        /// State of charge at the start \[%\].
        from_pct: f64,
        /// State of charge at the end \[%\].
        to_pct: f64,
    },
    /// More days aboard than a month has; those it has are taken.
    MonthTooLong {
        /// Its number, 1 for January.
        month: usize,
        /// Days aboard, as entered \[d\].
        days: f64,
        /// Days that it has, on average over the years \[d\].
        length: f64,
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
            | InputFinding::AnchorOutOfReach { .. } => Severity::Danger,
            InputFinding::TargetBelowStart { .. } | InputFinding::EmptyWindow { .. } => {
                Severity::Fix
            }
            InputFinding::MonthTooLong { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            InputFinding::CurvePoints { .. } => Code::CurvePoints,
            InputFinding::EfficiencyTooHigh { .. } => Code::EfficiencyTooHigh,
            InputFinding::AnchorOutOfReach { .. } => Code::AnchorOutOfReach,
            InputFinding::TargetBelowStart { .. } => Code::TargetBelowStart,
            InputFinding::EmptyWindow { .. } => Code::EmptyWindow,
            InputFinding::MonthTooLong { .. } => Code::MonthTooLong,
        }
    }
}

/// Inputs that each make sense and together do not.
pub(super) fn input_findings(sheet: &Worksheet, plant: &Plant, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    for (installed, calibrated) in inputs.alternators().zip(&plant.alternators) {
        alternator_findings(&installed, calibrated, found);
    }
    let (from_pct, to_pct) = (inputs.run.from_pct, inputs.run.to_pct);
    if to_pct <= from_pct {
        add(found, InputFinding::TargetBelowStart { from_pct, to_pct });
    }
    let (low_pct, high_pct) = (inputs.window_low_pct(), inputs.window_high_pct());
    if low_pct >= high_pct {
        add(found, InputFinding::EmptyWindow { low_pct, high_pct });
    }
    for (month, row) in sheet.months.said() {
        let length = MONTH_DAYS[month as usize % MONTH_DAYS.len()];
        // 29 in February stand for a leap year.
        if let Some(days) = row.days.filter(|days| *days > length.ceil()) {
            let too_long = InputFinding::MonthTooLong {
                month: month.number(),
                days,
                length,
            };
            add(found, too_long);
        }
    }
}

/// What was entered of one alternator and does not go together.
fn alternator_findings(
    installed: &InstalledAlternator,
    calibrated: &AlternatorAtSpeed,
    found: &mut Vec<Finding>,
) {
    let (alternator, entered) = (installed.which, installed.alternator);
    if !calibrated.curve_fits {
        add(
            found,
            InputFinding::CurvePoints {
                alternator,
                second_a: entered.second_a,
                second_rpm: entered.second_rpm,
                rated_a: entered.rated_a,
                rated_rpm: entered.rated_rpm,
            },
        );
    }
    if !calibrated.losses.plausible {
        add(
            found,
            InputFinding::EfficiencyTooHigh {
                alternator,
                efficiency_pct: entered.efficiency_pct,
            },
        );
    }
    if !calibrated.anchored {
        add(found, InputFinding::AnchorOutOfReach { alternator });
    }
}
