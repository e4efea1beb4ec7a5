//! Two regulators on one bank that know nothing of each other.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::{WhichAlternator, Worksheet};
use crate::findings::{Code, Finding, Severity, add};

/// One that stands idle for less than this part of the run is not told. Own reasoning.
const TOLD_PART: f64 = 0.1;

/// From this part of the time on in which one is idle, the other one at its
/// temperature limit is to be put right. Own reasoning.
const HOT_PART: f64 = 0.1;

/// Two alternators that do not share.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum SharingFinding {
    /// One stands idle while the other one charges.
    RegulatorsFight {
        /// The idle one.
        idle: WhichAlternator,
        /// The one that charges.
        charges: WhichAlternator,
        /// How much more its regulator holds \[V\].
        higher_v: f64,
        /// How long the other is idle \[min\].
        minutes: f64,
        /// How long the run is \[min\].
        run_min: f64,
        /// When it is first so \[min\].
        from_min: f64,
        /// How long of that the one that charges is at its temperature limit \[min\].
        hot_min: f64,
        /// What that one gives of all in the run \[%\].
        part_pct: f64,
    },
}

impl SharingFinding {
    pub(super) fn severity(&self) -> Severity {
        let SharingFinding::RegulatorsFight {
            minutes, hot_min, ..
        } = self;
        if *hot_min > HOT_PART * minutes {
            Severity::Fix
        } else {
            Severity::Note
        }
    }

    pub(super) const fn code(&self) -> Code {
        Code::RegulatorsFight
    }
}

/// What there is to say of how two regulators share.
pub(super) fn sharing_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let Some(sharing) = report
        .sharing
        .as_ref()
        .filter(|_| inputs.regulators_apart() && sheet.engine_runs())
    else {
        return;
    };
    let run_min = report.run.minutes;
    let Some(idle) = sharing
        .idle
        .filter(|idle| idle.minutes >= TOLD_PART * run_min)
    else {
        return;
    };
    let (second_v, first_v) = (
        inputs.held_offset_v(WhichAlternator::Second),
        inputs.held_offset_v(WhichAlternator::First),
    );
    add(
        found,
        SharingFinding::RegulatorsFight {
            idle: idle.alternator,
            charges: idle.other,
            higher_v: (second_v - first_v).abs(),
            minutes: idle.minutes,
            run_min,
            from_min: idle.from_min,
            hot_min: idle.other_hot_min,
            part_pct: sharing
                .parts_pct
                .get(idle.other.index())
                .copied()
                .unwrap_or(0.0),
        },
    );
}
