//! Whether the bank gets what it needs.

use crate::analysis::Analyses;
use crate::analysis::RunReport;
use crate::boat::{Chemistry, Inputs, RegulatorKind, WayKind, Worksheet};
use crate::findings::{Finding, Severity, add};
use crate::simulation::Limit;
use crate::units::clock;

/// Whether the bank gets what it needs.
pub(super) fn charge_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let run = &report.run;
    if run.mid_bank_a < 0.0 {
        add(
            found,
            Severity::Stop,
            "bank_is_emptied",
            format!(
                "The boat draws {:.0} A and the alternator brings less: the bank is emptied with the engine running.",
                run.house_load_a
            ),
        );
    } else if run.opening.is_none()
        && inputs.charge_limit_a() > 0.0
        && run.minutes_to_target.is_none()
        && inputs.run.to_pct > inputs.run.from_pct
    {
        add(
            found,
            Severity::Mend,
            "target_not_reached",
            format!(
                "After {} the bank is at {:.1} %, not at {} %.",
                clock(run.minutes),
                // Cut, not rounded: nearly there is not there.
                (10.0 * run.end_charge_pct).floor() / 10.0,
                inputs.run.to_pct
            ),
        );
    }
    let held = run.limit_shares.iter().any(|s| s.limit == Limit::BankLimit);
    if held && inputs.charge_limit_a() > 0.0 {
        add(
            found,
            Severity::Mind,
            "bank_limit_binds",
            format!(
                "The regulator holds the alternator back to the {:.0} A that the battery allows over its data link. Make sure that it stops charging when the link is lost.",
                inputs.charge_limit_a()
            ),
        );
    }
    lead_current(inputs, run, found);
    if inputs.way.kind == WayKind::Converter {
        converter_findings(inputs, run, found);
    }
}

/// Whether a lead bank gets more than its maker allows: nothing opens.
fn lead_current(inputs: &Inputs, run: &RunReport, found: &mut Vec<Finding>) {
    let limit_a = inputs.charge_limit_a();
    let most_a = run
        .series
        .iter()
        .map(|moment| moment.bank_a)
        .fold(0.0, f64::max);
    if inputs.bank.chemistry == Chemistry::Lfp || most_a <= 1.02 * limit_a + 0.5 {
        return;
    }
    add(
        found,
        Severity::Mend,
        "lead_over_current",
        format!(
            "{most_a:.0} A flow into the bank and it may take {limit_a:.0} A. Nothing disconnects a lead bank: it heats, gasses and ages. {} {:.0} A.",
            match (inputs.way.kind, inputs.reg.kind) {
                (WayKind::Converter, _) => "Set the DC-DC charger's output to",
                (WayKind::Direct, RegulatorKind::External) => "Set a current cap of",
                (WayKind::Direct, RegulatorKind::Internal) =>
                    "Fit an external regulator with a current cap of",
            },
            limit_a.floor()
        ),
    );
}

/// Whether the converter and the machine before it get on with each other.
fn converter_findings(inputs: &Inputs, run: &RunReport, found: &mut Vec<Finding>) {
    let way = &inputs.way;
    if way.start_v < way.lockout_v {
        add(
            found,
            Severity::Stop,
            "converter_locked_out",
            format!(
                "The start battery stands at {:.1} V with the engine running, below the {:.1} V at which the converter locks out: it passes nothing on.",
                way.start_v, way.lockout_v
            ),
        );
    } else if let Some(share) = run
        .limit_shares
        .iter()
        .find(|s| matches!(s.limit, Limit::Machine | Limit::Temperature))
        && share.share_pct > 5.0
    {
        add(
            found,
            Severity::Mend,
            "converter_starves",
            format!(
                "For {:.0} % of the run the converter asks for more than the machine gives. The start battery's voltage then sinks to {:.1} V and the converter goes on and off: set its output lower, or run the engine faster.",
                share.share_pct, way.lockout_v
            ),
        );
    }
    // In watts: its two sides need not be of one voltage.
    let takes_w = inputs.charger_takes_w(way.converter_a);
    let rated_w = inputs.alternator_rated_w();
    if takes_w > 0.5 * rated_w {
        add(
            found,
            Severity::Mind,
            "converter_large",
            format!(
                "The DC-DC charger of {:.0} A takes about {:.1} kW, more than half of the {:.1} kW that the alternator is rated for; common practice stays below half. Watch the alternator's temperature, or set the charger's output lower.",
                way.converter_a,
                takes_w / 1000.0,
                rated_w / 1000.0
            ),
        );
    }
}
