//! Whether the electronics survive when the bank disconnects.

use crate::analysis::load_dump::{DumpReport, Exposure, LoadDump, Standing};
use crate::analysis::peak_loads::called;
use crate::boat::{Inputs, RegulatorKind, Said, Worksheet};
use crate::findings::{Finding, Severity, add};
use crate::physics::dump::TOUCH_V;

/// Whether the electronics survive when the bank disconnects.
pub(super) fn disconnect_findings(sheet: &Worksheet, all: &LoadDump, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
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
                "Nothing is entered yet on what protects the electronics when the bank disconnects under load: without protection the {} gives {}, and electronics withstand {:.0} V. Answer the questions under “When the bank disconnects”.",
                called(machine.second),
                machine.highest_peak_words(),
                machine.bear_v
            ),
        ),
        Some(machine) => add(
            found,
            Severity::Mend,
            "disconnect_unguarded",
            format!(
                "If the bank disconnects under load, {} of the {} are left for electronics that withstand {:.0} V. {}",
                machine.left_words(machine.bank_left_v().unwrap_or_default()),
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
                "Only the warning contact stands between the {} and the electronics. A management system that opens without warning, on a short circuit or a fault of its own, leaves {}: a surge suppressor, or a lead battery on the alternator, is the second defence.",
                called(machine.second),
                machine.highest_peak_words()
            ),
        );
    }
    if inputs.guard.switch == Said::Yes {
        let left = all
            .machines
            .iter()
            .filter_map(|machine| Some((machine, machine.switch_left_v()?)))
            .reduce(|one, other| if other.1 > one.1 { other } else { one })
            .map_or_else(String::new, |(machine, left_v)| machine.left_words(left_v));
        add(
            found,
            Severity::Mend,
            "switch_in_lead",
            format!(
                "A switch in the output lead, opened with the engine running, leaves {left}. Take it out, or see that nobody can open it before the engine stands."
            ),
        );
    }
    touch_voltage(inputs, found);
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

/// A charge voltage from which on protection against touch begins.
fn touch_voltage(inputs: &Inputs, found: &mut Vec<Finding>) {
    let held_v = inputs.held_v();
    if held_v > TOUCH_V {
        add(
            found,
            Severity::Mend,
            "touch_voltage",
            format!(
                "The bank is charged at {held_v:.1} V. Above {TOUCH_V:.0} V direct current protection against touch begins, and 48 V electronics are not made for it (ISO 21780, from memory). Set a charge voltage below {TOUCH_V:.0} V."
            ),
        );
    }
}

/// Whether all hangs on the warning contact, and something hangs on it.
fn warned_alone(machine: &DumpReport) -> bool {
    let there = |key: &str| {
        machine
            .mitigations
            .iter()
            .any(|mitigation| mitigation.key == key && mitigation.standing == Standing::Present)
    };
    there("warning") && !there("clamp") && !there("lead") && machine.too_much(machine.peak_v())
}
