//! What to mind: sentences with a number, a reason and what to do.

use serde::Serialize;

use super::{Report, clock};
use crate::charge::Limit;
use crate::charge::plant::Plant;
use crate::worksheet::{RegulatorKind, SensorPlace, WayKind, Worksheet};

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// Do not run it like this.
    Stop,
    /// Put it right.
    Mend,
    /// Know about it.
    Mind,
}

impl Severity {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Severity::Stop => "stop",
            Severity::Mend => "mend",
            Severity::Mind => "mind",
        }
    }
}

/// One finding.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// How bad it is.
    pub severity: Severity,
    /// Its name, the same for ever.
    pub key: &'static str,
    /// The sentence.
    pub text: String,
}

/// A caution that holds whatever the figures say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Caution {
    /// What it is about.
    pub about: &'static str,
    /// The sentence.
    pub text: &'static str,
}

/// The usual cautions of this work.
pub const CAUTIONS: &[Caution] = &[
    Caution {
        about: "Short circuits",
        text: "A lithium bank gives thousands of amperes into a dropped spanner. Disconnect it, cover the posts, take off rings, use insulated tools, and fuse it at the post with a fuse that can break its current.",
    },
    Caution {
        about: "Disconnect under load",
        text: "When the battery management system opens while the alternator works straight into the bank, the voltage jumps and can destroy diodes and electronics. Let its warning contact cut the field first, and never open a switch in the output lead.",
    },
    Caution {
        about: "Hot and turning parts",
        text: "Belts and fans start without warning and an alternator case burns skin. Keep clear with the engine running; measure with clamps and infrared, not with hands.",
    },
    Caution {
        about: "Exhaust",
        text: "An engine run at anchor can fill the cockpit and cabin with carbon monoxide, your boat's or your neighbour's. Fit an alarm and keep air moving.",
    },
    Caution {
        about: "Gas from lead batteries",
        text: "A lead battery on charge gives off hydrogen. Keep its box vented and sparks away.",
    },
    Caution {
        about: "Cold",
        text: "Never charge a lithium iron phosphate battery below 0 °C.",
    },
    Caution {
        about: "Rules",
        text: "This is a reckoning, not an inspection. The battery maker's sheet, the code of your flag and your insurer come first; where they ask for a licensed electrician, use one.",
    },
];

/// Everything found, worst first.
pub(super) fn findings(sheet: &Worksheet, plant: &Plant, report: &Report) -> Vec<Finding> {
    let mut found = Vec::new();
    input_findings(sheet, plant, &mut found);
    heat_findings(sheet, report, &mut found);
    speed_findings(sheet, report, &mut found);
    charge_findings(sheet, report, &mut found);
    found.sort_by_key(|finding| finding.severity);
    found
}

fn add(found: &mut Vec<Finding>, severity: Severity, key: &'static str, text: String) {
    found.push(Finding {
        severity,
        key,
        text,
    });
}

/// Inputs that each make sense and together do not.
fn input_findings(sheet: &Worksheet, plant: &Plant, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    if !plant.curve_fits {
        add(
            found,
            Severity::Stop,
            "curve_points",
            format!(
                "No output curve passes through {} A at {} rpm and {} A at {} rpm. The slower point must have clearly less current, but not next to nothing; until then the rating alone is used.",
                inputs.alt.second_a,
                inputs.alt.second_rpm,
                inputs.alt.rated_a,
                inputs.alt.rated_rpm
            ),
        );
    }
    if !plant.losses.plausible {
        add(
            found,
            Severity::Stop,
            "efficiency_too_high",
            format!(
                "An efficiency of {} % at the rating leaves nothing for the copper once diodes, field, iron and fan have had their share. Enter the figure at full load, or smaller shares.",
                inputs.alt.efficiency_pct
            ),
        );
    }
    if !plant.anchored {
        add(
            found,
            Severity::Stop,
            "anchor_out_of_reach",
            "No cooling makes this machine settle at the winding temperature given for the bench; the nearest possible is used. Check that temperature, its speed and its air.".to_string(),
        );
    }
    if inputs.run.to_pct <= inputs.run.from_pct {
        add(
            found,
            Severity::Mend,
            "target_below_start",
            format!(
                "The charge is to end at {} % and starts at {} %: there is nothing to do.",
                inputs.run.to_pct, inputs.run.from_pct
            ),
        );
    }
    if inputs.bank.window_low_pct >= inputs.bank.window_high_pct {
        add(
            found,
            Severity::Mend,
            "empty_window",
            format!(
                "A bank that is full at {} % and never to go below {} % has nothing to give.",
                inputs.bank.window_high_pct, inputs.bank.window_low_pct
            ),
        );
    }
}

/// Whether anything cooks.
fn heat_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
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
    let limits = [
        (
            "winding_too_hot",
            "winding",
            peak.winding_c,
            class_c,
            "its insulation class",
        ),
        (
            "rectifier_too_hot",
            "rectifier plate",
            peak.rectifier_c,
            inputs.alt.rectifier_limit_c,
            "what its diodes bear for long",
        ),
        (
            "case_too_hot",
            "case",
            peak.case_c,
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
                    "The {part} reaches {hottest_c:.0} °C in this run; {limit_c:.0} °C is {whose}. Lower the set-point or the current, or bring it more and cooler air."
                ),
            );
        }
    }
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
                    "The winding reaches {:.0} °C before the sensor on the case has felt the set-point of {:.0} °C. A slow start or a sensor on the stator spares it.",
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

/// How fast things turn.
fn speed_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
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

/// Whether the bank gets what it needs.
fn charge_findings(sheet: &Worksheet, report: &Report, found: &mut Vec<Finding>) {
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
    } else if run.minutes_to_target.is_none() && inputs.run.to_pct > inputs.run.from_pct {
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
    if inputs.way.kind == WayKind::Converter && inputs.way.converter_a > 0.5 * inputs.alt.rated_a {
        add(
            found,
            Severity::Mind,
            "converter_large",
            format!(
                "A converter of {:.0} A is more than half of the machine's {:.0} A; common practice stays below that.",
                inputs.way.converter_a, inputs.alt.rated_a
            ),
        );
    }
}
