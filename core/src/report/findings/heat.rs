//! Whether anything cooks.

use super::{Finding, Severity, add};
use crate::charge::Limit;
use crate::report::{Report, Temps};
use crate::worksheet::{RegulatorKind, SensorPlace, WayKind, Worksheet};

/// Whether anything cooks.
pub(super) fn heat_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let class_c = inputs.alt.class.limit_c();
    let peak = &report.run.peak;
    let unwatched =
        inputs.reg.kind == RegulatorKind::Internal && inputs.way.kind == WayKind::Direct;
    if unwatched {
        let (severity, settles) = match report.machine.hot {
            None => (
                Severity::Stop,
                "it never settles: each degree makes more loss than it carries away".to_string(),
            ),
            Some(hot) if hot.winding_c > class_c => (
                Severity::Stop,
                format!(
                    "its winding settles at {:.0} °C, above the {class_c:.0} °C of its insulation, giving {:.0} A",
                    hot.winding_c, report.machine.hot_a
                ),
            ),
            Some(hot) => (
                Severity::Mend,
                format!(
                    "its winding settles at {:.0} °C and its case at {:.0} °C, giving {:.0} A",
                    hot.winding_c, hot.case_c, report.machine.hot_a
                ),
            ),
        };
        add(
            found,
            severity,
            "nothing_watches_heat",
            format!(
                "Nothing watches this machine's temperature. A lithium bank takes all it gives for the whole run; {settles}. Put a regulator with a temperature sensor, or a DC-DC converter, between them."
            ),
        );
    }
    for (unit, hottest) in [
        ("", Some(peak)),
        ("second alternator's ", report.run.second_peak.as_ref()),
    ] {
        let Some(hottest) = hottest else { continue };
        part_findings(sheet, unit, hottest, found);
    }
    after_findings(sheet, report, found);
    let guarded = inputs.reg.kind == RegulatorKind::External;
    if guarded && inputs.reg.sensor == SensorPlace::Case {
        let lead_k = peak.winding_c - inputs.reg.set_point_c;
        if report
            .run
            .limit_shares
            .iter()
            .any(|s| s.limit == Limit::Temperature)
            && lead_k > 15.0
        {
            add(
                found,
                Severity::Mind,
                "case_sensor_lags",
                format!(
                    "The winding reaches {:.0} °C before the sensor on the case has felt the set-point of {:.0} °C. A sensor on the stator, or a lower set-point, spares it.",
                    peak.winding_c, inputs.reg.set_point_c
                ),
            );
        }
        if inputs.reg.set_point_c > inputs.alt.case_limit_c - 5.0 {
            add(
                found,
                Severity::Mend,
                "set_point_high",
                format!(
                    "A set-point of {:.0} °C leaves less than 5 K to the case's limit of {:.0} °C; about 20 K is common practice.",
                    inputs.reg.set_point_c, inputs.alt.case_limit_c
                ),
            );
        }
    }
}

/// Whether a part of one machine gets too hot in the run.
fn part_findings(sheet: &Worksheet, unit: &str, hottest: &Temps, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let class_c = inputs.alt.class.limit_c();
    let limits = [
        (
            "winding_too_hot",
            "winding",
            hottest.winding_c,
            class_c,
            "its insulation class",
        ),
        (
            "rectifier_too_hot",
            "rectifier plate",
            hottest.rectifier_c,
            inputs.alt.rectifier_limit_c,
            "what its diodes bear for long",
        ),
        (
            "case_too_hot",
            "case",
            hottest.case_c,
            inputs.alt.case_limit_c,
            "what bearing grease bears for long",
        ),
    ];
    for (key, part, hottest_c, limit_c, whose) in limits {
        if hottest_c > limit_c {
            let severity = if hottest_c > limit_c + 10.0 {
                Severity::Stop
            } else {
                Severity::Mend
            };
            add(
                found,
                severity,
                key,
                format!(
                    "The {unit}{part} reaches {hottest_c:.0} °C in this run; {limit_c:.0} °C is {whose}. Lower the set-point or the current, or bring it more and cooler air."
                ),
            );
        }
    }
}

/// The hour after stopping.
fn after_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
    let limit_c = sheet.inputs.alt.rectifier_limit_c;
    let (peak, soak) = (&report.run.peak, &report.run.soak);
    if soak.peak.rectifier_c > limit_c && soak.peak.rectifier_c > peak.rectifier_c + 2.0 {
        add(
            found,
            Severity::Mend,
            "soak_rectifier",
            format!(
                "After stopping, with the fan still, the rectifier plate climbs to {:.0} °C; {limit_c:.0} °C is what its diodes bear for long. Let the engine idle a few minutes without charging first, and leave the blower on.",
                soak.peak.rectifier_c
            ),
        );
    } else if soak.peak.air_c > peak.air_c + 10.0 {
        add(
            found,
            Severity::Mind,
            "soak_air",
            format!(
                "After stopping, the engine heats its space to {:.0} °C within {:.0} minutes, {:.0} K more than while it ran. A blower left running spares what else lives there.",
                soak.peak.air_c,
                soak.air_peak_min,
                soak.peak.air_c - peak.air_c
            ),
        );
    }
}
