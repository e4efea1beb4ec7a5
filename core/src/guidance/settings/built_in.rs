//! Settings of a built-in regulator and of the second alternator.

use crate::boat::{RegulatorKind, SecondRole, WayKind};
use crate::guidance::settings::machine::{Nth, current, held, hottest, start_v};
use crate::guidance::settings::{Case, Group, Line, Source};
use crate::units::{amperes, degrees, volts};

/// The built-in regulator.
pub(super) fn built_in(case: Case) -> Group {
    let (inputs, report, f) = (case.inputs, case.report, case.figures);
    let house = inputs.way.kind == WayKind::Direct;
    let voltage = if house {
        let held_v = inputs.held_v();
        let most_v = held_v.min(f.charge_v);
        let short_v = f.charge_v - held_v;
        let line = Line::new(
            "voltage",
            "Voltage it holds",
            format!("no more than {}", volts(most_v)),
            if held_v > f.charge_v + 1e-9 {
                format!(
                    "It holds {}, more than the bank is to get: it does not belong on this bank.",
                    volts(held_v)
                )
            } else if short_v > 0.1 * f.blocks {
                format!(
                    "Nothing to set. It is {} short of the bank's {}: the engine alone does not fill it.",
                    volts(short_v),
                    volts(f.charge_v)
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
        "Temperature limit the regulator holds",
        "none: it does not limit the temperature".to_string(),
        if house {
            format!(
                "It has no sensor: in this run the winding reaches {} °C; {:.0} °C is its limit.",
                degrees(report.analyses.run.peak.winding_c),
                inputs.alt.class.limit_c()
            )
        } else {
            format!(
                "It has no sensor: at the DC-DC charger's {:.0} A the winding reaches {} °C; {:.0} °C is its limit.",
                inputs.way.converter_a,
                degrees(report.analyses.run.peak.winding_c),
                inputs.alt.class.limit_c()
            )
        },
    );
    let mut lines = vec![voltage, heat.from(Source::Calculated)];
    if house {
        lines.push(
            Line::new(
                "current_cap",
                "Current cap",
                "none".to_string(),
                format!(
                    "It cannot hold one: it gives {:.0} A at the start, and the bank may take {}.",
                    report.analyses.run.start_a,
                    amperes(f.bank_limit_a)
                ),
            )
            .from(Source::Calculated),
        );
        if f.lithium {
            lines.push(Line::new(
                "field_cut",
                "Field cut-off",
                "none as it comes".to_string(),
                format!(
                    "When the bank opens at {}, nothing stops the alternator first.",
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
    let lines = match (
        inputs.two.role,
        inputs.reg.kind,
        &report.analyses.run.second_peak,
    ) {
        (SecondRole::None, ..) => return None,
        (SecondRole::House, RegulatorKind::External, Some(peak)) => vec![
            current(case, Nth::Second, true),
            hottest(inputs, &inputs.alt2, peak),
            Line::new(
                "others",
                "All others",
                "as for the first alternator".to_string(),
                format!(
                    "Two set {} apart would take turns; let one lead, or link them.",
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
            .from(Source::Calculated),
        ],
        (SecondRole::Start, ..) => {
            let start_v = start_v(inputs);
            vec![
                Line::new(
                    "voltage",
                    "Voltage it holds",
                    format!("{} at the start battery", volts(start_v)),
                    format!(
                        "It charges the start battery and feeds {:.0} A of engine services; the other one charges the house.",
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
