//! Whether the bank gets what it needs.

use super::{Finding, Severity, add};
use crate::charge::Limit;
use crate::report::{Report, RunReport, clock};
use crate::worksheet::{Inputs, WayKind, Worksheet};

/// Whether the bank gets what it needs.
pub(super) fn charge_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let run = &report.run;
    if report.day.engine_hours.is_none() {
        add(
            found,
            Severity::Stop,
            "day_not_covered",
            format!(
                "No engine run within a day puts back the {:.0} A·h that the boat uses and the sun does not.",
                report.day.need_ah
            ),
        );
    }
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
        && run.minutes_to_target.is_none()
        && inputs.run.to_pct > inputs.run.from_pct
    {
        add(
            found,
            Severity::Mend,
            "target_not_reached",
            format!(
                "After {} the bank is at {:.0} %, not at {} %.",
                clock(run.minutes),
                run.end_charge_pct,
                inputs.run.to_pct
            ),
        );
    }
    if run.limit_shares.iter().any(|s| s.limit == Limit::BankLimit) {
        add(
            found,
            Severity::Mend,
            "bank_limit_binds",
            format!(
                "The machine can give more than the {:.0} A the bank may take. Set a current cap; the battery management system's own limit is a last defence that disconnects.",
                inputs.charge_limit_a()
            ),
        );
    }
    if inputs.way.kind == WayKind::Converter {
        converter_findings(inputs, run, found);
    }
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
