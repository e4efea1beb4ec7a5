//! What the engine makes of it.

use crate::analysis::Analyses;
use crate::boat::Worksheet;
use crate::findings::{Finding, Severity, add};
use crate::units::clock;

/// Load below which a diesel soots \[% of what it has at the speed\]. For
/// standby sets NFPA 110 (2019), 8.4.2, as quoted, asks for 30 % of the
/// nameplate, half an hour a month.
const LOW_LOAD_PCT: f64 = 25.0;
/// Charging nearly always is low load; from so many hours a day it decides
/// something \[h\]. Own reasoning.
const LONG_H: f64 = 3.0;

pub(super) fn engine_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
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
    } else if let Some(hours) = report.day.engine_hours
        && hours >= LONG_H
        && engine.mean_share_pct < LOW_LOAD_PCT
    {
        add(
            found,
            Severity::Mind,
            "engine_low_load",
            format!(
                "The engine runs {} a day at {:.0} % of what it has at this speed. So many hours at low load soot a diesel and glaze its bores: charge while you motor where you can, run it at cruising load for 30 minutes at least once a month, and look at solar or a larger alternator for the rest.",
                clock(60.0 * hours),
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
