//! Cables and fuses that cannot be had, or that need care.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::analysis::cable::{CableRun, Cables, RunEnd};
use crate::boat::{Basis, Current, LoadRow, Worksheet};
use crate::findings::{Code, Finding, Severity, add};
use crate::physics::fuse::CLASS_T_KA;

/// A cable or fuse cannot be had, or needs care.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum CableFinding {
    /// The air is as hot as the insulation may get.
    CableInsulationTooHot {
        /// Where the cable comes from.
        from: RunEnd,
        /// Where it leads.
        to: RunEnd,
        /// Air along it \[°C\].
        air_c: f64,
        /// What its insulation is rated for \[°C\].
        rated_c: f64,
    },
    /// No cable of the tables is enough.
    CableNone {
        /// Where it comes from.
        from: RunEnd,
        /// Where it leads.
        to: RunEnd,
        /// Current it must carry \[A\].
        carries_a: f64,
        /// Length one way \[m\].
        length_m: f64,
        /// Voltage drop allowed, out and back \[V\].
        drop_v: f64,
    },
    /// Several cables side by side are needed.
    CableParallel {
        /// Where they come from.
        from: RunEnd,
        /// Where they lead.
        to: RunEnd,
        /// How many.
        cables: u8,
        /// Size of each.
        size: &'static str,
        /// Fuse of each \[A\].
        fuse_a: f64,
    },
    /// There are mains appliances and no inverter is entered.
    CableInverterUnsaid,
    /// No fuse is commonly built for the bank's short circuit.
    FuseCannotBreak {
        /// Current of a short circuit \[kA\].
        short_ka: f64,
    },
    /// Fuses at the bank must break more than those of class T, which each run
    /// of cable names already, can.
    FuseMustBreak {
        /// Current of a short circuit \[kA\].
        short_ka: f64,
        /// What the fuse must be able to break \[kA\].
        breaks_ka: f64,
    },
}

impl CableFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            CableFinding::CableInsulationTooHot { .. }
            | CableFinding::CableNone { .. }
            | CableFinding::FuseCannotBreak { .. } => Severity::Danger,
            CableFinding::CableParallel { .. }
            | CableFinding::CableInverterUnsaid
            | CableFinding::FuseMustBreak { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            CableFinding::CableInsulationTooHot { .. } => Code::CableInsulationTooHot,
            CableFinding::CableNone { .. } => Code::CableNone,
            CableFinding::CableParallel { .. } => Code::CableParallel,
            CableFinding::CableInverterUnsaid => Code::CableInverterUnsaid,
            CableFinding::FuseCannotBreak { .. } => Code::FuseCannotBreak,
            CableFinding::FuseMustBreak { .. } => Code::FuseMustBreak,
        }
    }
}

/// Cables and fuses that cannot be had, or that need care.
pub(super) fn cable_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let wiring = &report.cables;
    let rated_c = wiring.insulation_c;
    let too_hot = |run: &&CableRun| run.air_c >= rated_c;
    if let Some(run) = wiring.runs.iter().find(too_hot) {
        add(
            found,
            CableFinding::CableInsulationTooHot {
                from: run.from,
                to: run.to,
                air_c: run.air_c,
                rated_c,
            },
        );
    }
    let without = |run: &&CableRun| run.gauge.is_none() && run.metric.is_none() && !too_hot(run);
    for run in wiring.runs.iter().filter(without) {
        add(
            found,
            CableFinding::CableNone {
                from: run.from,
                to: run.to,
                carries_a: run.carries_a,
                length_m: run.length_m,
                drop_v: run.allowed_v,
            },
        );
    }
    short_circuit(wiring, found);
    for run in &wiring.runs {
        if let Some(pick) = run.metric.or(run.gauge).filter(|pick| pick.cables > 1) {
            add(
                found,
                CableFinding::CableParallel {
                    from: run.from,
                    to: run.to,
                    cables: pick.cables,
                    size: pick.size,
                    fuse_a: pick.fuse_a,
                },
            );
        }
    }
    if sheet.inputs.cable.inverter_w <= 0.0 && uses_mains(sheet) {
        add(found, CableFinding::CableInverterUnsaid);
    }
}

/// Whether the list has something that runs off an inverter.
fn uses_mains(sheet: &Worksheet) -> bool {
    let mains = |row: &LoadRow| row.kind == Current::AcWatts && row.draw * row.count > 0.0;
    sheet.inputs.daily.basis == Basis::Listed && sheet.loads.iter().any(|load| mains(&load.row))
}

/// Whether fuses can break the bank's short circuit.
fn short_circuit(wiring: &Cables, found: &mut Vec<Finding>) {
    let short_ka = wiring.short_circuit_a / 1000.0;
    match wiring.breaks_ka {
        None => add(found, CableFinding::FuseCannotBreak { short_ka }),
        Some(breaks_ka) if breaks_ka > CLASS_T_KA => add(
            found,
            CableFinding::FuseMustBreak {
                short_ka,
                breaks_ka,
            },
        ),
        Some(_) => {}
    }
}
