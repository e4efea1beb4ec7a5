//! Settings of the regulators.

use super::figures::{Cap, cap, set_point};
use super::{Case, Group, Line, Source, amperes, degrees, tenths, volts};
use crate::report::Temps;
use crate::worksheet::{Alternator, Inputs, RegulatorKind, SecondRole, SensorPlace, WayKind};

/// A wait before the first field \[s\], common practice.
const DELAY_S: f64 = 60.0;
/// A slow start where the worksheet has none \[min\], common practice.
const RAMP_MIN: f64 = 2.0;
/// A fan is slow below this speed of the shaft \[rpm\], common practice.
const SLOW_RPM: f64 = 2000.0;

/// The external regulator.
pub(super) fn regulator(case: Case) -> Group {
    let (inputs, report, f) = (case.inputs, case.report, case.figures);
    let house = inputs.way.kind == WayKind::Direct;
    let mut lines = vec![held(case, house)];
    if house {
        let run = &report.run;
        lines.push(
            Line::new(
                "sense",
                "Voltage felt at",
                "the bank's posts, by a fused wire of its own".to_string(),
                format!(
                    "At {:.0} A the {} mΩ of switch, fuse and cable lose {}.",
                    run.start_a,
                    tenths(inputs.bank.harness_mohm),
                    volts(run.start_a * inputs.bank.harness_mohm / 1000.0)
                ),
            )
            .from(Source::CommonPractice),
        );
    }
    lines.push(current(case, &inputs.alt, "alt_rated_a", house));
    lines.push(hottest(inputs, &inputs.alt, &report.run.peak));
    lines.push(
        Line::new(
            "fold_back",
            "Fold-back",
            format!(
                "full field to none across {} K",
                tenths(inputs.reg.fold_band_k)
            ),
            format!(
                "Around the set-point; held there the machine gives {:.0} A.",
                report.machine.hot_a
            ),
        )
        .from(Source::Worksheet("reg_fold_band_k")),
    );
    lines.push(low_speed(case));
    lines.push(
        Line::new(
            "delay",
            "Start delay",
            format!("{DELAY_S:.0} s"),
            format!(
                "The engine has its oil up and its {:.0} rpm before the belt pulls.",
                inputs.eng.rpm
            ),
        )
        .at(DELAY_S),
    );
    lines.push(ramp(case));
    if f.lithium && inputs.straight_into_house() {
        lines.push(
            Line::new(
                "field_cut",
                "Field cut-off input",
                "to the management system's charging-off contact".to_string(),
                format!(
                    "The field is off at {}, {} before the contactor opens.",
                    volts(f.high_v[1]),
                    volts(f.high_v[2] - f.high_v[1])
                ),
            )
            .from(Source::CommonPractice),
        );
    }
    Group {
        key: "regulator",
        title: "Regulator",
        lines,
    }
}

/// Volts that a machine is held at.
fn held(case: Case, house: bool) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    if house {
        Line::new(
            "profile",
            "Charge voltage, absorption, float, compensation",
            "as for the house bank above".to_string(),
            format!(
                "A ready-made profile must come out at {}.",
                volts(f.charge_v)
            ),
        )
        .from(Source::Reckoned)
    } else {
        let start_v = start_v(inputs);
        Line::new(
            "start_voltage",
            "Charge voltage",
            format!("{} at the start battery", volts(start_v)),
            format!(
                "It feeds the start battery; the converter does the rest from {} up.",
                volts(inputs.way.lockout_v)
            ),
        )
        .at(start_v)
        .from(Source::Worksheet("way_start_v"))
    }
}

/// Volts the start battery is charged at \[V\]: the worksheet's, never above
/// 2.47 V a cell (14.8 V in 12 V, the most common practice has for lead).
pub(super) fn start_v(inputs: &Inputs) -> f64 {
    inputs.way.start_v.min(14.8 * inputs.start_blocks())
}

fn current(case: Case, machine: &Alternator, plate: &'static str, house: bool) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    let (share, limit_a) = if house {
        (f.share, f.bank_limit_a)
    } else {
        (1.0, f64::INFINITY)
    };
    let (cap_a, decided) = cap(inputs, machine, share, limit_a);
    let (why, from) = match decided {
        Cap::Stated => (
            "As the worksheet has it, to spare belt and machine.".to_string(),
            Source::Worksheet("reg_current_cap_a"),
        ),
        Cap::Plate if house => (
            format!(
                "What stands on the machine; the bank may take {}.",
                amperes(limit_a)
            ),
            Source::Worksheet(plate),
        ),
        Cap::Plate => (
            format!("What stands on the machine: {:.0} A.", machine.rated_a),
            Source::Worksheet(plate),
        ),
        Cap::Bank if limit_a <= 0.0 => (
            format!(
                "At {} °C the bank may take nothing: warm it first.",
                degrees(inputs.bank.temperature_c)
            ),
            Source::Reckoned,
        ),
        Cap::Bank => (
            format!(
                "The bank may take {} from all that charge it; the house may be drawing nothing.",
                amperes(limit_a)
            ),
            Source::Reckoned,
        ),
    };
    Line::new("current_cap", "Current cap", amperes(cap_a), why)
        .at(cap_a)
        .from(from)
}

fn hottest(inputs: &Inputs, machine: &Alternator, peak: &Temps) -> Line {
    let set = set_point(inputs, machine, peak);
    let why = if set.over_k > 0.0 {
        format!(
            "In the run as it stands a part gets {:.0} K too hot; put this into the worksheet and look again.",
            set.over_k.ceil()
        )
    } else {
        format!(
            "{:.0} K under the {}'s limit of {:.0} °C.",
            set.limit_c - set.celsius,
            set.part,
            set.limit_c
        )
    };
    let place = match inputs.reg.sensor {
        SensorPlace::Case => "on the case",
        SensorPlace::Winding => "on the stator winding",
        SensorPlace::Rectifier => "on the rectifier plate",
    };
    Line::new(
        "set_point",
        "Temperature set-point",
        format!("{:.0} °C, sensor {place}", set.celsius.floor()),
        why,
    )
    .at(set.celsius)
    .from(if set.stated {
        Source::Worksheet("reg_set_point_c")
    } else {
        Source::Reckoned
    })
}

fn low_speed(case: Case) -> Line {
    let (reg, ratio) = (&case.inputs.reg, case.inputs.alt.pulley_ratio);
    let (what, key) = ("Low-speed cap", "low_speed");
    let shaft_rpm = case.report.machine.shaft_rpm;
    let words = |pct: f64, rpm: f64| {
        format!(
            "{pct:.0} % of full field below {rpm:.0} rpm of its shaft, {:.0} of the engine",
            rpm / ratio
        )
    };
    if reg.low_speed_rpm > 0.0 {
        let why = format!("Its fan is slow there; you charge at {shaft_rpm:.0} rpm of the shaft.");
        Line::new(key, what, words(reg.low_speed_pct, reg.low_speed_rpm), why)
            .at(reg.low_speed_pct)
            .from(Source::Worksheet("reg_low_speed_rpm"))
    } else if shaft_rpm > SLOW_RPM {
        let why = format!(
            "Its fan is slow there; at your {:.0} rpm of the engine it holds nothing back.",
            case.inputs.eng.rpm
        );
        Line::new(key, what, words(50.0, SLOW_RPM), why).at(50.0)
    } else {
        let why = format!(
            "You charge at {shaft_rpm:.0} rpm of the shaft, where a cap would hold back every run: the set-point has to do it."
        );
        Line::new(key, what, "none".to_string(), why)
    }
}

fn ramp(case: Case) -> Line {
    let stated_min = case.inputs.reg.ramp_min;
    let (minutes, from) = if stated_min > 0.0 {
        (stated_min, Source::Worksheet("reg_ramp_min"))
    } else {
        (RAMP_MIN, Source::CommonPractice)
    };
    Line::new(
        "ramp",
        "Slow start",
        format!("{} min to full field", tenths(minutes)),
        format!(
            "Belt and engine take up {:.1} kW gently; it spares no heat.",
            case.report.engine.peak_kw
        ),
    )
    .at(minutes)
    .from(from)
}

/// The built-in regulator.
pub(super) fn built_in(case: Case) -> Group {
    let (inputs, report, f) = (case.inputs, case.report, case.figures);
    let house = inputs.way.kind == WayKind::Direct;
    let voltage = if house {
        let held_v = inputs.held_v();
        let most_v = held_v.min(f.charge_v);
        let line = Line::new(
            "voltage",
            "Voltage it holds",
            format!("no more than {}", volts(most_v)),
            if held_v > f.charge_v {
                format!(
                    "It holds {}, more than the bank is to get: it does not belong on this bank.",
                    volts(held_v)
                )
            } else {
                format!(
                    "Nothing to set; read it with the bank full, which is charged to {}.",
                    volts(f.charge_v)
                )
            },
        );
        line.at(most_v).from(Source::Worksheet("reg_fixed_v"))
    } else {
        held(case, false)
    };
    let heat = Line::new(
        "heat",
        "Temperature set-point",
        "none: it knows volts only".to_string(),
        if house {
            format!(
                "In this run the winding reaches {} °C; {:.0} °C is its limit.",
                degrees(report.run.peak.winding_c),
                inputs.alt.class.limit_c()
            )
        } else {
            format!(
                "The converter's {:.0} A spares it: the winding reaches {} °C of {:.0}.",
                inputs.way.converter_a,
                degrees(report.run.peak.winding_c),
                inputs.alt.class.limit_c()
            )
        },
    );
    let mut lines = vec![voltage, heat.from(Source::Reckoned)];
    if house {
        lines.push(
            Line::new(
                "current_cap",
                "Current cap",
                "none".to_string(),
                format!(
                    "It gives {:.0} A at the start, and the bank may take {}.",
                    report.run.start_a,
                    amperes(f.bank_limit_a)
                ),
            )
            .from(Source::Reckoned),
        );
        if f.lithium {
            lines.push(Line::new(
                "field_cut",
                "Field cut-off",
                "none as it comes".to_string(),
                format!(
                    "When the bank opens at {}, nothing stops the machine first.",
                    volts(f.high_v[2])
                ),
            ));
        }
    }
    Group {
        key: "built_in",
        title: "Built-in regulator",
        lines,
    }
}

/// The second alternator's regulator.
pub(super) fn second(case: Case) -> Option<Group> {
    let (inputs, report) = (case.inputs, case.report);
    let lines = match (inputs.two.role, inputs.reg.kind, &report.run.second_peak) {
        (SecondRole::None, ..) => return None,
        (SecondRole::House, RegulatorKind::External, Some(peak)) => vec![
            current(case, &inputs.alt2, "alt2_rated_a", true),
            hottest(inputs, &inputs.alt2, peak),
            Line::new(
                "others",
                "All others",
                "as for the first alternator".to_string(),
                format!(
                    "Two that hold {} apart would take turns; one leads, or both share a wire.",
                    volts(0.1 * case.figures.blocks)
                ),
            ),
        ],
        (SecondRole::House, ..) => vec![
            Line::new(
                "voltage",
                "Voltage it holds",
                format!("no more than {}", volts(case.figures.charge_v)),
                "What the bank is charged to; nothing to set on a built-in regulator.".to_string(),
            )
            .at(case.figures.charge_v)
            .from(Source::Reckoned),
        ],
        (SecondRole::Start, ..) => {
            let start_v = start_v(inputs);
            vec![
                Line::new(
                    "voltage",
                    "Voltage it holds",
                    format!("{} at the start battery", volts(start_v)),
                    format!(
                        "It keeps the start battery and serves {:.0} A of the engine's; the house is the other's.",
                        inputs.way.services_a
                    ),
                )
                .at(start_v)
                .from(Source::Worksheet("way_start_v")),
            ]
        }
    };
    Some(Group {
        key: "second",
        title: "Second alternator's regulator",
        lines,
    })
}
