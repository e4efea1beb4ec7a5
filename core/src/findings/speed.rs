//! How fast things turn.

use crate::analysis::Analyses;
use crate::boat::Worksheet;
use crate::findings::{Finding, Severity, add};

/// How fast things turn.
pub(super) fn speed_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let machine = &report.machine;
    let fastest_rpm = inputs.eng.top_rpm.max(inputs.eng.rpm);
    for (name, alt) in [
        ("alternator", Some(inputs.alt)),
        ("second alternator", inputs.as_second().map(|seen| seen.alt)),
    ] {
        let Some(alt) = alt else { continue };
        let shaft_rpm = alt.pulley_ratio * fastest_rpm;
        if shaft_rpm > alt.max_rpm {
            add(
                found,
                Severity::Mend,
                "overspeed",
                format!(
                    "At {fastest_rpm:.0} engine rpm the {name} turns {shaft_rpm:.0} rpm, above its {:.0}. Fit a larger alternator pulley or keep below {:.0} engine rpm.",
                    alt.max_rpm,
                    alt.max_rpm / alt.pulley_ratio
                ),
            );
        }
    }
    if inputs.eng.rpm > inputs.eng.top_rpm {
        add(
            found,
            Severity::Mend,
            "faster_than_top",
            format!(
                "The engine is to charge at {:.0} rpm and its highest speed is {:.0}: correct the wrong one.",
                inputs.eng.rpm, inputs.eng.top_rpm
            ),
        );
    }
    if let Some(second) = machine.second.filter(|second| second.full_cold_a <= 0.0) {
        add(
            found,
            Severity::Mend,
            "second_too_slow",
            format!(
                "At {:.0} rpm of its own the second alternator gives nothing. Run the engine faster or fit it a smaller pulley.",
                second.shaft_rpm
            ),
        );
    }
    if machine.full_cold_a <= 0.0 && report.run.start_a < 1.0 {
        add(
            found,
            Severity::Stop,
            "too_slow",
            format!(
                "At {:.0} rpm of its own the alternator gives nothing; its curve begins at {:.0}. Run the engine faster.",
                machine.shaft_rpm, machine.zero_rpm
            ),
        );
    } else if machine.shaft_rpm < 1.5 * machine.zero_rpm {
        add(
            found,
            Severity::Mind,
            "low_on_the_curve",
            format!(
                "At {:.0} rpm the alternator works on the steep part of its curve, where this reckoning can be a quarter too high and its fan is slow.",
                machine.shaft_rpm
            ),
        );
    }
}
