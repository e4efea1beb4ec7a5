//! Whether the electronics survive when the bank disconnects.

use super::{Finding, Severity, add};
use crate::disconnect::{DumpReport, Exposure, Standing, disconnect};
use crate::most::called;
use crate::report::Report;
use crate::worksheet::{RegulatorKind, Said, Worksheet};

/// Whether the electronics survive when the bank disconnects.
pub(crate) fn disconnect_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let all = disconnect(sheet, report);
    // One sentence for both machines: the one that makes more of it.
    let worst = all
        .machines
        .iter()
        .filter(|machine| machine.bank_left_v().is_some_and(|v| machine.too_much(v)))
        .reduce(|one, other| {
            if other.peak_v() > one.peak_v() {
                other
            } else {
                one
            }
        });
    match worst {
        Some(machine) if !all.answered => add(
            found,
            Severity::Mind,
            "disconnect_not_said",
            format!(
                "What stands between the {} and the electronics when the bank disconnects under load is not said yet: without anything, up to about {:.0} V, where electronics bear {:.0} V. Answer the questions under “When the bank disconnects”.",
                called(machine.second),
                machine.peak_v(),
                machine.bear_v
            ),
        ),
        Some(machine) => add(
            found,
            Severity::Mend,
            "disconnect_unguarded",
            format!(
                "If the bank disconnects under load, up to about {:.0} V of the {} are left for electronics that bear {:.0} V. {}",
                machine.bank_left_v().unwrap_or_default(),
                called(machine.second),
                machine.bear_v,
                if inputs.reg.kind == RegulatorKind::External {
                    "Let the bank's warning contact cut the field first, and fit a clamp or keep a lead battery on the machine."
                } else {
                    "A built-in regulator has no field wire to cut: fit a clamp, keep a lead battery on the machine, or charge through a DC-DC converter."
                }
            ),
        ),
        None => {}
    }
    if let Some(machine) = all.machines.iter().find(|machine| warned_alone(machine)) {
        add(
            found,
            Severity::Mind,
            "warning_alone",
            format!(
                "Only the warning contact stands between the {} and the electronics. A management system that opens without warning, on a short circuit or a fault of its own, leaves up to about {:.0} V: a clamp, or a lead battery on the machine, is the second defence.",
                called(machine.second),
                machine.peak_v()
            ),
        );
    }
    if inputs.guard.switch == Said::Yes {
        let left_v = all
            .machines
            .iter()
            .filter_map(DumpReport::switch_left_v)
            .fold(0.0, f64::max);
        add(
            found,
            Severity::Mend,
            "switch_in_lead",
            format!(
                "A switch in the output lead, opened with the engine running, leaves up to about {left_v:.0} V. Take it out, or see that nobody can open it before the engine stands."
            ),
        );
    }
    let Some(clamp_v) = inputs.clamp_v() else {
        return;
    };
    let on_house = |machine: &&DumpReport| machine.exposure != Exposure::StartBattery;
    let (mut needs_j, mut volts) = (0.0_f64, 0.0_f64);
    for machine in all.machines.iter().filter(on_house) {
        needs_j = needs_j
            .max(machine.charging.clamp_j)
            .max(machine.top.clamp_j);
        volts = volts.max(machine.charging.volts).max(machine.top.volts);
    }
    let held_v = volts.max(inputs.held_v());
    if clamp_v <= held_v {
        add(
            found,
            Severity::Mend,
            "clamp_too_low",
            format!(
                "A clamp of {clamp_v:.1} V takes current all the while at a charge voltage of {held_v:.1} V and burns out. Fit one well above it and below what the electronics bear."
            ),
        );
    } else if let Some(most_j) = inputs.guard.clamp_j.filter(|most_j| *most_j < needs_j) {
        add(
            found,
            Severity::Mend,
            "clamp_too_small",
            format!(
                "The clamp bears {most_j:.0} J at once and would have to take up to {needs_j:.0} J: it may be gone with the first pulse. Fit a larger one or several."
            ),
        );
    }
}

/// Whether all hangs on the warning contact, and something hangs on it.
fn warned_alone(machine: &DumpReport) -> bool {
    let there = |key: &str| {
        machine
            .defences
            .iter()
            .any(|defence| defence.key == key && defence.standing == Standing::Present)
    };
    there("warning") && !there("clamp") && !there("lead") && machine.too_much(machine.peak_v())
}
