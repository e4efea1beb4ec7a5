//! What to mind about cables and fuses.

use crate::analysis::Analyses;
use crate::analysis::cable::{CableRun, Cables};
use crate::boat::{Basis, Current, LoadRow, Worksheet};
use crate::findings::{Finding, Severity, add};
use crate::physics::fuse::LITHIUM_KA;

/// What to mind about cables and fuses.
pub(crate) fn cable_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let wiring = &report.cables;
    let rated_c = wiring.insulation_c;
    let too_hot = |run: &&CableRun| run.air_c >= rated_c;
    if let Some(run) = wiring.runs.iter().find(too_hot) {
        add(
            found,
            Severity::Stop,
            "cable_insulation_too_hot",
            format!(
                "The air where the cable from {} to {} lies reaches {:.0} °C and its insulation is rated for {rated_c:.0} °C: it may carry nothing. Use cable of a higher rating, another way, or bring the space air.",
                run.from, run.to, run.air_c
            ),
        );
    }
    let without = |run: &&CableRun| run.gauge.is_none() && run.metric.is_none() && !too_hot(run);
    for run in wiring.runs.iter().filter(without) {
        add(
            found,
            Severity::Stop,
            "cable_none",
            format!(
                "No cable of the tables, nor three side by side, takes {:.0} A over {:.1} m from {} to {} with {:.2} V lost. Shorten the run, allow it more loss, or raise the system voltage.",
                run.carries_a, run.length_m, run.from, run.to, run.allowed_v
            ),
        );
    }
    short_circuit(wiring, found);
    for run in &wiring.runs {
        if let Some(pick) = run.metric.or(run.gauge).filter(|pick| pick.cables > 1) {
            add(
                found,
                Severity::Mind,
                "cable_parallel",
                format!(
                    "One cable is not enough from {} to {}: lay {}, each with its own fuse of {} A.",
                    run.from,
                    run.to,
                    pick.words(),
                    pick.fuse_a
                ),
            );
        }
    }
    if sheet.inputs.cable.inverter_w <= 0.0 && uses_mains(sheet) {
        add(
            found,
            Severity::Mind,
            "cable_inverter_unsaid",
            "The list of loads has mains appliances, and no inverter is given under “Cable and fuse”: its cable, mostly the thickest aboard, is not reckoned.".to_string(),
        );
    }
}

/// Whether the list has something that runs off an inverter.
fn uses_mains(sheet: &Worksheet) -> bool {
    let mains = |row: &LoadRow| row.kind == Current::AcWatts && row.draw * row.count > 0.0;
    sheet.inputs.daily.basis == Basis::Listed && sheet.loads.iter().any(|load| mains(&load.row))
}

/// Whether fuses can break the bank's short circuit.
fn short_circuit(wiring: &Cables, found: &mut Vec<Finding>) {
    let kilo = wiring.short_circuit_a / 1000.0;
    match wiring.breaks_ka {
        None => add(
            found,
            Severity::Stop,
            "fuse_cannot_break",
            format!(
                "A short at the bank's posts draws up to {kilo:.0} kA, more than fuses are commonly built to break. Fuse each battery of the bank at its own post, and ask the fuse's maker."
            ),
        ),
        Some(ka) if ka > LITHIUM_KA => add(
            found,
            Severity::Mind,
            "fuse_must_break",
            format!(
                "A short at the bank's posts draws up to {kilo:.0} kA. Fit fuses there that can break {ka:.0} kA: strip and blade fuses break 1 to 5 and would burn on."
            ),
        ),
        Some(_) => {}
    }
}
