//! Whether the electronics survive when the battery disconnects under load.

use serde::Serialize;

use crate::analysis::load_dump::{
    DumpReport, Exposure, LoadDump, MitigationCode, Standing, VoltageRange,
};
use crate::boat::{Inputs, RegulatorKind, Said, WhichAlternator, Worksheet};
use crate::findings::{Code, Finding, Severity, add};
use crate::physics::dump::TOUCH_V;

/// What a load dump does to the electronics, and to what stands against it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LoadDumpFinding {
    /// Nothing is entered yet about protection.
    DisconnectNotSaid {
        /// The alternator with the worse spike.
        alternator: WhichAlternator,
        /// That spike.
        spike: VoltageRange,
        /// What electronics withstand for a moment \[V\].
        withstand_v: f64,
    },
    /// What is entered leaves too much.
    DisconnectUnguarded {
        /// The alternator with the worse spike.
        alternator: WhichAlternator,
        /// What is left of it.
        left: VoltageRange,
        /// What electronics withstand for a moment \[V\].
        withstand_v: f64,
        /// Whether the regulator's field wire can be cut.
        external_regulator: bool,
        /// Whether the packs give no signal that could do so.
        closed_packs: bool,
    },
    /// All depends on the charge-disable signal or the data link.
    WarningAlone {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// The spike without it.
        spike: VoltageRange,
        /// Whether a data link does it, and no signal beside it.
        by_link: bool,
    },
    /// A switch in the output lead can cut the load off.
    SwitchInLead {
        /// What that leaves; none where no alternator is led through it.
        left: Option<VoltageRange>,
    },
    /// The charge voltage is one that must not be touched.
    TouchVoltage {
        /// Charge voltage \[V\].
        charge_v: f64,
    },
    /// The surge suppressor conducts at the charge voltage.
    ClampTooLow {
        /// Its voltage \[V\].
        clamp_v: f64,
        /// Charge voltage \[V\].
        charge_v: f64,
    },
    /// The surge suppressor takes less than the spike has.
    ClampTooSmall {
        /// What it takes at once \[J\].
        clamp_j: f64,
        /// What it would have to take \[J\].
        needs_j: f64,
    },
}

impl LoadDumpFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            LoadDumpFinding::DisconnectNotSaid { .. } | LoadDumpFinding::WarningAlone { .. } => {
                Severity::Note
            }
            LoadDumpFinding::DisconnectUnguarded { .. }
            | LoadDumpFinding::SwitchInLead { .. }
            | LoadDumpFinding::TouchVoltage { .. }
            | LoadDumpFinding::ClampTooLow { .. }
            | LoadDumpFinding::ClampTooSmall { .. } => Severity::Fix,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            LoadDumpFinding::DisconnectNotSaid { .. } => Code::DisconnectNotSaid,
            LoadDumpFinding::DisconnectUnguarded { .. } => Code::DisconnectUnguarded,
            LoadDumpFinding::WarningAlone { .. } => Code::WarningAlone,
            LoadDumpFinding::SwitchInLead { .. } => Code::SwitchInLead,
            LoadDumpFinding::TouchVoltage { .. } => Code::TouchVoltage,
            LoadDumpFinding::ClampTooLow { .. } => Code::ClampTooLow,
            LoadDumpFinding::ClampTooSmall { .. } => Code::ClampTooSmall,
        }
    }
}

/// Whether the electronics survive when the battery disconnects under load.
pub(super) fn load_dump_findings(sheet: &Worksheet, all: &LoadDump, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    unprotected(inputs, all, found);
    if let Some(report) = all.alternators.iter().find(|report| warned_alone(report)) {
        add(
            found,
            LoadDumpFinding::WarningAlone {
                alternator: report.alternator,
                spike: report.highest_peak(),
                by_link: !is_there(report, MitigationCode::ChargeDisable),
            },
        );
    }
    if inputs.guard.switch == Said::Yes {
        let left = all
            .alternators
            .iter()
            .filter_map(|report| Some((report, report.switch_left_v()?)))
            .reduce(|one, other| if other.1 > one.1 { other } else { one })
            .map(|(report, left_v)| report.left_range(left_v));
        add(found, LoadDumpFinding::SwitchInLead { left });
    }
    let charge_v = inputs.held_v();
    if charge_v > TOUCH_V {
        add(found, LoadDumpFinding::TouchVoltage { charge_v });
    }
    clamp(inputs, all, found);
}

/// One finding for both alternators: of the one with the higher spike.
fn unprotected(inputs: &Inputs, all: &LoadDump, found: &mut Vec<Finding>) {
    let worst = all
        .alternators
        .iter()
        .filter_map(|report| Some((report, report.bank_left_v()?)))
        .filter(|(report, left_v)| report.too_much(*left_v))
        .reduce(|one, other| {
            if other.0.peak_v() > one.0.peak_v() {
                other
            } else {
                one
            }
        });
    let Some((report, left_v)) = worst else {
        return;
    };
    let (alternator, withstand_v) = (report.alternator, report.bear_v);
    let finding = if all.answered {
        LoadDumpFinding::DisconnectUnguarded {
            alternator,
            left: report.left_range(left_v),
            withstand_v,
            external_regulator: inputs.reg.kind == RegulatorKind::External,
            closed_packs: inputs.packs_closed(),
        }
    } else {
        LoadDumpFinding::DisconnectNotSaid {
            alternator,
            spike: report.highest_peak(),
            withstand_v,
        }
    };
    add(found, finding);
}

/// Whether something that protects is entered as there.
fn is_there(report: &DumpReport, code: MitigationCode) -> bool {
    report
        .mitigations
        .iter()
        .any(|mitigation| mitigation.code == code && mitigation.standing == Standing::Present)
}

/// Whether all depends on the charge-disable signal or the data link, and
/// something does.
fn warned_alone(report: &DumpReport) -> bool {
    let there = |code| is_there(report, code);
    (there(MitigationCode::ChargeDisable) || there(MitigationCode::DataLink))
        && !there(MitigationCode::SurgeSuppressor)
        && !there(MitigationCode::LeadBattery)
        && report.too_much(report.peak_v())
}

/// Whether the surge suppressor that is entered lasts.
fn clamp(inputs: &Inputs, all: &LoadDump, found: &mut Vec<Finding>) {
    let Some(clamp_v) = inputs.clamp_v() else {
        return;
    };
    let (mut needs_j, mut charge_v) = (0.0_f64, inputs.held_v());
    for report in &all.alternators {
        if report.exposure == Exposure::StartBattery {
            continue;
        }
        for dump in [&report.charging, &report.top] {
            needs_j = needs_j.max(dump.clamp_j);
            charge_v = charge_v.max(dump.volts);
        }
    }
    if clamp_v <= charge_v {
        add(found, LoadDumpFinding::ClampTooLow { clamp_v, charge_v });
    } else if let Some(clamp_j) = inputs.guard.clamp_j.filter(|clamp_j| *clamp_j < needs_j) {
        add(found, LoadDumpFinding::ClampTooSmall { clamp_j, needs_j });
    }
}
