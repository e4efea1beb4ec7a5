//! What else to know about the runs, for their flag and their regulator.

use crate::analysis::cable::{CableChoice, CableRemark, CableRun, RunEnd, RunNote};
use crate::boat::{Flag, Inputs, RegulatorKind, WayKind};
use crate::physics::ampacity::{ENGINE_AIR_C, engine_factor};
use crate::physics::fuse::STRICT_V;

/// From so much of the nominal voltage on, the regulator should sense at the bank.
const SENSE_SHARE: f64 = 0.01;

/// What was found for a run, metric first.
fn picks(run: &CableRun) -> impl Iterator<Item = &CableChoice> {
    run.metric.iter().chain(&run.gauge)
}

/// How the figures differ from those of the tables.
pub(super) fn remarks(air_c: f64, rated_c: f64, runs: &[CableRun]) -> Vec<CableRemark> {
    let mut remarks = Vec::new();
    if air_c > ENGINE_AIR_C + 0.5 && air_c < rated_c {
        remarks.push(CableRemark::HotEngineSpace {
            air_c,
            table_c: ENGINE_AIR_C,
            factor_pct: 100.0 * engine_factor(rated_c, air_c),
        });
    }
    if runs.iter().any(|run| run.fuse_v >= STRICT_V) {
        remarks.push(CableRemark::HighVoltage);
    }
    remarks
}

/// Adds what else to know about a run, for its flag and its regulator.
pub(super) fn add(inputs: &Inputs, run: &mut CableRun, nominal_v: f64) {
    let Some(pick) = run.metric.or(run.gauge) else {
        return;
    };
    let over = picks(run)
        .find(|pick| pick.fuse_a > pick.ampacity_a)
        .copied();
    if let (Flag::Other, Some(over)) = (inputs.cable.flag, over) {
        run.notes.push(RunNote::FuseAboveAmpacity {
            fuse_a: over.fuse_a,
            ampacity_a: over.ampacity_a,
            size: over.size,
        });
    }
    if pick.cables > 1 {
        run.notes.push(RunNote::ParallelAlike);
    }
    let sensed = inputs.reg.kind == RegulatorKind::External
        && inputs.way.kind == WayKind::Direct
        && run.to == RunEnd::HouseBank;
    if sensed && pick.drop_v > SENSE_SHARE * nominal_v {
        run.notes.push(RunNote::SenseAtBank {
            drop_v: pick.drop_v,
        });
    }
}
