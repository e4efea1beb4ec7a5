//! Whether anything gets too hot.

use crate::analysis::Analyses;
use crate::analysis::peak_loads::called;
use crate::analysis::{NEAR_K, Part, PartLimit, nearest, part_limits};
use crate::boat::{Chemistry, Inputs, RegulatorKind, SensorPlace, WayKind, Worksheet};
use crate::findings::verdict::hot_after_stop;
use crate::findings::{Finding, Severity, add};
use crate::simulation::Limit;

/// An alternator that nothing holds back is put right as long as its hottest
/// part comes nearer to its limit than this \[K\]; further away it is only to be
/// known. Own reasoning: a warmer day takes that much.
const UNWATCHED_K: f64 = 10.0;
/// A sensor on the case matters from this much below the winding's limit
/// \[K\]. Own reasoning.
const LAG_MATTERS_K: f64 = 15.0;

/// Air that electrical equipment in an engine room is made for \[°C\]: 46 CFR
/// 111.01-15.
const ROOM_C: f64 = 50.0;

/// Whether anything gets too hot.
pub(super) fn heat_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let limits = part_limits(inputs, report);
    if inputs.reg.kind == RegulatorKind::Internal && inputs.on_house() {
        unwatched(inputs, report, &limits, found);
    }
    for limit in limits.iter().filter(|limit| limit.margin_k() < 0.0) {
        // What to do is said once for each alternator, with what is worst.
        let own = limits
            .iter()
            .copied()
            .filter(|one| one.second == limit.second);
        let worst = nearest(&own.collect::<Vec<_>>());
        too_hot(inputs, limit, worst == Some(*limit), found);
    }
    near_limit(inputs, &limits, found);
    after_stop(inputs, report, found);
    if inputs.reg.kind == RegulatorKind::External && inputs.reg.sensor == SensorPlace::Case {
        case_sensor(inputs, report, found);
    }
}

/// What to do about the heat of an alternator.
fn remedy(inputs: &Inputs, limit: &PartLimit) -> &'static str {
    let second = inputs.as_second().filter(|_| limit.second);
    let seen = second.unwrap_or(*inputs);
    match (seen.reg.kind, seen.way.kind) {
        (RegulatorKind::Internal, WayKind::Converter) if limit.second => {
            "Bring it more and cooler air, or take load off it."
        }
        (RegulatorKind::External, _) => {
            "Lower the regulator's temperature set-point or its current cap, or bring the alternator more and cooler air."
        }
        (RegulatorKind::Internal, WayKind::Converter) => {
            "Set the DC-DC charger's output lower, or bring the alternator more and cooler air."
        }
        (RegulatorKind::Internal, WayKind::Direct) => {
            "Bring the alternator more and cooler air, or limit its current: with a DC-DC charger, or an external regulator with a temperature sensor."
        }
    }
}

fn whose(limit: &PartLimit) -> &'static str {
    if limit.second {
        "second alternator's "
    } else {
        "alternator's "
    }
}

/// An alternator straight on the house bank whose regulator does not limit its
/// temperature.
fn unwatched(inputs: &Inputs, report: &Analyses, limits: &[PartLimit], found: &mut Vec<Finding>) {
    // Beside a DC-DC charger it is the second one that lies on the bank.
    let second = report.machine.second;
    let (name, alternator, hot, hot_a) = match (inputs.way.kind, second) {
        (WayKind::Converter, Some(second)) => {
            (called(true), &inputs.alt2, second.hot, second.hot_a)
        }
        _ => (
            called(false),
            &inputs.alt,
            report.machine.hot,
            report.machine.hot_a,
        ),
    };
    let class_c = Part::Winding.limit_c(alternator);
    let margin_k = nearest(limits).map_or(0.0, |limit| limit.margin_k());
    let (severity, settles) = match hot {
        None => (
            Severity::Stop,
            "It never settles: each degree makes more heat than it carries away.".to_string(),
        ),
        Some(hot) if hot.winding_c > class_c => (
            Severity::Stop,
            format!(
                "Its winding settles at {:.0} °C, above the {class_c:.0} °C of its insulation, giving {hot_a:.0} A.",
                hot.winding_c
            ),
        ),
        Some(hot) => (
            if margin_k < UNWATCHED_K {
                Severity::Mend
            } else {
                Severity::Mind
            },
            format!(
                "Its winding settles at {:.0} °C and its case at {:.0} °C, giving {hot_a:.0} A.",
                hot.winding_c, hot.case_c
            ),
        ),
    };
    let takes = match inputs.bank.chemistry {
        Chemistry::Lfp => " A lithium bank takes all it gives for most of the run.",
        _ => "",
    };
    let does = if severity == Severity::Mind {
        "That leaves it enough for a hot day; look again when bank, engine speed or loads change."
    } else {
        "Put an external regulator with a temperature sensor, or a DC-DC charger, between them."
    };
    add(
        found,
        severity,
        "nothing_watches_heat",
        format!("Nothing limits the temperature of the {name}.{takes} {settles} {does}"),
    );
}

/// A part that passes its limit in the run, or would in a longer one.
fn too_hot(inputs: &Inputs, limit: &PartLimit, worst: bool, found: &mut Vec<Finding>) {
    let key = match limit.part {
        Part::Winding => "winding_too_hot",
        Part::Rectifier => "rectifier_too_hot",
        Part::Case => "case_too_hot",
    };
    let (part, hottest_c) = (limit.part.name(), limit.hottest_c());
    let (severity, reaches) = if !limit.passed() {
        (
            Severity::Mend,
            format!("would settle at {hottest_c:.0} °C in a longer run"),
        )
    } else if limit.peak_c > limit.limit_c + 10.0 {
        (
            Severity::Stop,
            format!("reaches {:.0} °C in this run", limit.peak_c),
        )
    } else {
        (
            Severity::Mend,
            format!("reaches {:.0} °C in this run", limit.peak_c),
        )
    };
    let mut text = format!(
        "The {}{part} {reaches}; {:.0} °C is {}.",
        whose(limit),
        limit.limit_c,
        limit.part.limited_by()
    );
    if worst {
        text += " ";
        text += remedy(inputs, limit);
    }
    add(found, severity, key, text);
}

/// The part that comes nearest to its limit without passing it.
fn near_limit(inputs: &Inputs, limits: &[PartLimit], found: &mut Vec<Finding>) {
    let Some(limit) = nearest(limits).filter(|limit| (0.0..NEAR_K).contains(&limit.margin_k()))
    else {
        return;
    };
    // The set-point says so itself.
    if limit.part == Part::Case && set_point_high(inputs) {
        return;
    }
    add(
        found,
        Severity::Mend,
        "near_limit",
        format!(
            "The {}{} comes to {:.0} °C; {:.0} °C is {}. Less than {NEAR_K:.0} K are left, which a warmer day or a dusty fan takes. {}",
            whose(&limit),
            limit.part.name(),
            limit.hottest_c(),
            limit.limit_c,
            limit.part.limited_by(),
            remedy(inputs, &limit)
        ),
    );
}

/// Whether a set-point for the case leaves it next to nothing.
fn set_point_high(inputs: &Inputs) -> bool {
    inputs.reg.kind == RegulatorKind::External
        && inputs.reg.sensor == SensorPlace::Case
        && inputs.reg.set_point_c > inputs.alt.case_limit_c - 5.0
}

/// What a sensor on the case does not see, and how high it is set.
fn case_sensor(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let (peak, set_c) = (&report.run.peak, inputs.reg.set_point_c);
    let shares = &report.run.limit_shares;
    let held = shares.iter().any(|s| s.limit == Limit::Temperature);
    let class_c = inputs.alt.class.limit_c();
    if held && peak.winding_c > set_c + 15.0 && peak.winding_c > class_c - LAG_MATTERS_K {
        add(
            found,
            Severity::Mind,
            "case_sensor_lags",
            format!(
                "The winding reaches {:.0} °C of its {class_c:.0} before the sensor on the case has felt the set-point of {set_c:.0} °C. A sensor on the stator, a lower set-point or a soft start spares it.",
                peak.winding_c
            ),
        );
    }
    if set_point_high(inputs) {
        add(
            found,
            Severity::Mend,
            "set_point_high",
            format!(
                "A set-point of {set_c:.0} °C leaves less than 5 K to the case's limit of {:.0} °C; about 20 K is common practice.",
                inputs.alt.case_limit_c
            ),
        );
    }
}

/// The hour after stopping.
fn after_stop(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let (peak, soak) = (&report.run.peak, &report.run.soak);
    if let Some((celsius, limit_c)) = hot_after_stop(inputs, report) {
        add(
            found,
            Severity::Mend,
            "soak_rectifier",
            format!(
                "After stopping, with the fan still, the rectifier plate climbs to {celsius:.0} °C; {limit_c:.0} °C is {}. Let the engine idle a few minutes without charging first, and leave the blower on.",
                Part::Rectifier.limited_by()
            ),
        );
    } else if soak.peak.air_c > peak.air_c + 10.0 && soak.peak.air_c > ROOM_C {
        add(
            found,
            Severity::Mind,
            "soak_air",
            format!(
                "After stopping, the engine heats its space to {:.0} °C within {:.0} minutes, {:.0} K more than while it ran. Most equipment is made for {ROOM_C:.0} °C: leave the blower running for half an hour, or move what is sensitive elsewhere.",
                soak.peak.air_c,
                soak.air_peak_min,
                soak.peak.air_c - peak.air_c
            ),
        );
    }
}
