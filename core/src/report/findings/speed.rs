//! How fast things turn.

use super::{Finding, Severity, add};
use crate::report::Report;
use crate::worksheet::Worksheet;

/// How fast things turn.
pub(super) fn speed_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let machine = &report.machine;
    if machine.top_shaft_rpm > inputs.alt.max_rpm {
        add(
            found,
            Severity::Mend,
            "overspeed",
            format!(
                "At {:.0} engine rpm the alternator turns {:.0} rpm, above its {:.0}. Fit a larger alternator pulley or keep below {:.0} engine rpm.",
                inputs.eng.top_rpm,
                machine.top_shaft_rpm,
                inputs.alt.max_rpm,
                inputs.alt.max_rpm / inputs.alt.pulley_ratio
            ),
        );
    }
    if machine.full_cold_a <= 0.0 {
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
