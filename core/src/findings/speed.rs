//! How fast things turn.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::{WhichAlternator, Worksheet};
use crate::findings::{Code, Finding, Severity, add};

/// Something turns too fast, or too slowly.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum SpeedFinding {
    /// An alternator turns faster than it may.
    Overspeed {
        /// Which alternator.
        alternator: WhichAlternator,
        /// The engine's highest speed \[rpm\].
        engine_rpm: f64,
        /// The alternator's at that \[rpm\].
        shaft_rpm: f64,
        /// The alternator's highest \[rpm\].
        highest_rpm: f64,
        /// The engine speed that gives \[rpm\].
        engine_limit_rpm: f64,
    },
    /// The engine charges at more than its highest speed.
    FasterThanTop {
        /// Speed while charging \[rpm\].
        engine_rpm: f64,
        /// Highest speed \[rpm\].
        top_rpm: f64,
    },
    /// One of several alternators is too slow to give anything.
    #[serde(rename = "second_too_slow")]
    OneTooSlow {
        /// Which alternator.
        alternator: WhichAlternator,
        /// Its speed \[rpm\].
        shaft_rpm: f64,
    },
    /// No alternator turns fast enough to give anything; figures of the first.
    TooSlow {
        /// Its speed \[rpm\].
        shaft_rpm: f64,
        /// Cut-in speed of its fitted curve \[rpm\].
        cut_in_rpm: f64,
    },
    /// An alternator works where its curve is steep and the model uncertain.
    LowOnTheCurve {
        /// Which alternator.
        alternator: WhichAlternator,
        /// Its speed \[rpm\].
        shaft_rpm: f64,
    },
}

impl SpeedFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            SpeedFinding::TooSlow { .. } => Severity::Danger,
            SpeedFinding::Overspeed { .. }
            | SpeedFinding::FasterThanTop { .. }
            | SpeedFinding::OneTooSlow { .. } => Severity::Fix,
            SpeedFinding::LowOnTheCurve { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            SpeedFinding::Overspeed { .. } => Code::Overspeed,
            SpeedFinding::FasterThanTop { .. } => Code::FasterThanTop,
            SpeedFinding::OneTooSlow { .. } => Code::SecondTooSlow,
            SpeedFinding::TooSlow { .. } => Code::TooSlow,
            SpeedFinding::LowOnTheCurve { .. } => Code::LowOnTheCurve,
        }
    }
}

/// How fast things turn.
pub(super) fn speed_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let legs_rpm = sheet.legs.iter().map(|leg| leg.row.rpm);
    let fastest_rpm = legs_rpm.fold(inputs.eng.top_rpm.max(inputs.eng.rpm), f64::max);
    for installed in inputs.alternators() {
        let alt = installed.alternator;
        let shaft_rpm = alt.pulley_ratio * fastest_rpm;
        if shaft_rpm > alt.max_rpm {
            add(
                found,
                SpeedFinding::Overspeed {
                    alternator: installed.which,
                    engine_rpm: fastest_rpm,
                    shaft_rpm,
                    highest_rpm: alt.max_rpm,
                    engine_limit_rpm: alt.max_rpm / alt.pulley_ratio,
                },
            );
        }
    }
    let (engine_rpm, top_rpm) = (inputs.eng.rpm, inputs.eng.top_rpm);
    if engine_rpm > top_rpm {
        add(
            found,
            SpeedFinding::FasterThanTop {
                engine_rpm,
                top_rpm,
            },
        );
    }
    too_slow(report, found);
}

/// Whether alternators turn too slowly to give anything, or little.
fn too_slow(report: &Analyses, found: &mut Vec<Finding>) {
    let nothing = report.output.full_cold_a <= 0.0 && report.run.start_a < 1.0;
    let are_several = report.alternators.len() > 1;
    for (at, one) in report.alternators.iter().enumerate() {
        let (alternator, shaft_rpm, cut_in_rpm) = (one.alternator, one.shaft_rpm, one.zero_rpm);
        if at == 0 && nothing {
            add(
                found,
                SpeedFinding::TooSlow {
                    shaft_rpm,
                    cut_in_rpm,
                },
            );
        } else if are_several && one.full_cold_a <= 0.0 {
            add(
                found,
                SpeedFinding::OneTooSlow {
                    alternator,
                    shaft_rpm,
                },
            );
        } else if shaft_rpm < 1.5 * cut_in_rpm {
            add(
                found,
                SpeedFinding::LowOnTheCurve {
                    alternator,
                    shaft_rpm,
                },
            );
        }
    }
}
