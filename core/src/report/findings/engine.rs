//! What the engine makes of it.

use super::{Finding, Severity, add};
use crate::report::Report;
use crate::worksheet::Worksheet;

pub(super) fn engine_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let engine = &report.engine;
    if engine.peak_share_pct > 60.0 {
        let severity = if engine.peak_share_pct > 90.0 {
            Severity::Stop
        } else {
            Severity::Mend
        };
        add(
            found,
            severity,
            "engine_overloaded",
            format!(
                "The alternator takes {:.1} kW, {:.0} % of what the engine has at {:.0} rpm. It will labour and smoke; run it faster or cap the current.",
                engine.peak_kw, engine.peak_share_pct, sheet.inputs.eng.rpm
            ),
        );
    } else if engine.mean_share_pct < 25.0 {
        add(
            found,
            Severity::Mind,
            "engine_low_load",
            format!(
                "Charging alone asks {:.0} % of what the engine has at this speed. Hours below a quarter soot and glaze a diesel: give it 15 to 30 minutes at cruising load now and then.",
                engine.mean_share_pct
            ),
        );
    }
    match (
        sheet.inputs.space.wanted_a,
        report.machine.blower_for_wanted_m3h,
    ) {
        (Some(wanted_a), Some(blower_m3h)) => add(
            found,
            Severity::Mind,
            "blower_for_wanted",
            format!(
                "To hold {wanted_a:.0} A hot takes a blower of {blower_m3h:.0} m³/h, as printed on it."
            ),
        ),
        (Some(wanted_a), None) => add(
            found,
            Severity::Mind,
            "no_blower_for_wanted",
            format!(
                "No blower alone lets it hold {wanted_a:.0} A; speed, set-point, a cold-air hose or a larger machine would have to help."
            ),
        ),
        _ => {}
    }
}
