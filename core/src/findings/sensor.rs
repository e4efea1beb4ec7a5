//! A temperature sensor that reads too low or fails.

use serde::Serialize;

use crate::analysis::sensor_loss::SensorLost;
use crate::analysis::{Analyses, Part, part_limits};
use crate::boat::{InstalledAlternator, RegulatorKind, SensorFailure, WhichAlternator, Worksheet};
use crate::findings::{Code, Finding, Severity, add};

/// From so much on a sensor that reads too low is told \[K\]: as near as a good one
/// and its fitting come. Own reasoning.
const TOLD_K: f64 = 3.0;

/// What is wrong with a temperature sensor, or would be.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum SensorFinding {
    /// The sensor reads too low, and the regulator holds a higher temperature.
    SensorReadsLow {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// What it reads too low \[K\].
        low_k: f64,
        /// Temperature limit the regulator is set to \[°C\].
        set_point_c: f64,
        /// The part that comes nearest to its limit.
        part: Part,
        /// How hot that gets, or may get, in the run \[°C\].
        part_c: f64,
        /// Whether it may get so hot at most, as nobody has measured it.
        at_most: bool,
        /// What it withstands for long \[°C\].
        limit_c: f64,
    },
    /// Without its sensor the regulator goes on until a part is too hot.
    SensorFailsHot {
        /// What happens.
        lost: SensorLost,
        /// Whether the regulator goes on at half field, not at full.
        half: bool,
    },
}

impl SensorFinding {
    pub(super) fn severity(&self) -> Severity {
        match self {
            SensorFinding::SensorReadsLow {
                part_c, limit_c, ..
            } if part_c <= limit_c => Severity::Note,
            SensorFinding::SensorReadsLow { .. } | SensorFinding::SensorFailsHot { .. } => {
                Severity::Fix
            }
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            SensorFinding::SensorReadsLow { .. } => Code::SensorReadsLow,
            SensorFinding::SensorFailsHot { .. } => Code::SensorFailsHot,
        }
    }
}

/// What there is to say of the sensors.
pub(super) fn sensor_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let reg = &sheet.inputs.reg;
    if reg.kind != RegulatorKind::External || !sheet.inputs.engine_charges() {
        return;
    }
    if reg.sensor_low_k >= TOLD_K {
        let all = sheet.inputs.alternators();
        for installed in all.filter(InstalledAlternator::fits) {
            reads_low(sheet, report, &installed, found);
        }
    }
    let goes_on = matches!(
        reg.sensor_failure,
        SensorFailure::Full | SensorFailure::Half
    );
    let told = report.sensor_loss.iter().filter(|_| goes_on);
    let lost = told.flat_map(|loss| &loss.alternators);
    for lost in lost.filter(|lost| lost.too_hot()) {
        add(
            found,
            SensorFinding::SensorFailsHot {
                lost: *lost,
                half: reg.sensor_failure == SensorFailure::Half,
            },
        );
    }
}

/// How hot an alternator gets behind a sensor that reads too low.
fn reads_low(
    sheet: &Worksheet,
    report: &Analyses,
    installed: &InstalledAlternator,
    found: &mut Vec<Finding>,
) {
    let reg = &sheet.inputs.reg;
    let limits = part_limits(&sheet.inputs, report);
    let own = limits
        .iter()
        .filter(|limit| limit.alternator == installed.which);
    let nearest = own.min_by(|one, other| {
        let left_k = |limit_c: f64, peak_c: f64| limit_c - peak_c;
        left_k(one.limit_c, one.peak_c).total_cmp(&left_k(other.limit_c, other.peak_c))
    });
    let Some(nearest) = nearest else { return };
    add(
        found,
        SensorFinding::SensorReadsLow {
            alternator: installed.which,
            low_k: reg.sensor_low_k,
            set_point_c: reg.set_point_c,
            part: nearest.part,
            part_c: nearest.peak_c,
            at_most: nearest.at_most,
            limit_c: nearest.limit_c,
        },
    );
}
