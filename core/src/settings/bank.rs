//! Settings that belong to the house bank: how it is charged whatever charges
//! it, its management system, its low-voltage switch, the shore charger.

use super::{Case, Group, Line, Source, amperes, degrees, down, volts};
use crate::worksheet::{Chemistry, RegulatorKind, WayKind};

/// The charge, the same for everything that charges the bank.
pub(super) fn charge(case: Case) -> Group {
    let (inputs, f) = (case.inputs, case.figures);
    let bank = &inputs.bank;
    let mut lines = vec![
        Line::new(
            "voltage",
            "Charge (absorption) voltage",
            format!("{} at the bank's posts", volts(f.charge_v)),
            match f.charge_too_high_v {
                Some(stated_v) => format!(
                    "The worksheet's {} is more than the {:.2} V a cell that such cells bear.",
                    volts(stated_v),
                    f.cell_v(f.charge_v)
                ),
                None => format!(
                    "{:.0} cells in series at {:.2} V each, at 25 °C.",
                    f.cells,
                    f.cell_v(f.charge_v)
                ),
            },
        )
        .at(f.charge_v)
        .from(f.charge_from),
        Line::new(
            "absorption_end",
            "Absorption ends",
            format!(
                "below {} into the bank, or after {}",
                amperes(f.tail_a),
                if f.lithium { "30 min" } else { "4 h" }
            ),
            format!(
                "{:.0} % of {:.0} A·h: full by then. What reads a machine's amps adds the house's {:.0} A.",
                f.tail_pct, bank.capacity_ah, case.report.run.house_load_a
            ),
        )
        .at(down(f.tail_a))
        .from(Source::BatteryMaker),
    ];
    lines.push(
        if f.lithium {
            Line::new(
                "float",
                "Float",
                format!("none; {} at most where it must have one", volts(f.float_v)),
                format!(
                    "At {:.2} V a cell a full bank rests; more would hold it at the top for hours.",
                    f.cell_v(f.float_v)
                ),
            )
        } else {
            Line::new(
                "float",
                "Float",
                volts(f.float_v),
                format!(
                    "{:.2} V a cell keeps a full bank full without gassing.",
                    f.cell_v(f.float_v)
                ),
            )
        }
        .at(f.float_v)
        .from(Source::BatteryMaker),
    );
    lines.push(compensation(case));
    lines.push(window(case));
    if bank.chemistry == Chemistry::Lfp {
        lines.push(
            Line::new(
                "equalising",
                "Equalising",
                "none".to_string(),
                format!(
                    "It goes far above the {} this bank bears; its management system evens out the cells.",
                    volts(f.charge_v)
                ),
            )
            .from(Source::CommonPractice),
        );
    }
    Group {
        key: "charge",
        title: if inputs.sun.panel_w > 0.0 {
            "House bank: the same in all that charges it, the panels too"
        } else {
            "House bank: the same in all that charges it"
        },
        lines,
    }
}

fn compensation(case: Case) -> Line {
    let f = case.figures;
    let mv = f.compensation_mv;
    let (value, why) = if f.lithium {
        (
            "none: 0 mV/K".to_string(),
            format!(
                "Meant for lead: −4 mV a cell would move {} by {} between 5 and 45 °C.",
                volts(f.charge_v),
                volts(0.004 * 6.0 * f.blocks * 40.0)
            ),
        )
    } else if mv == 0.0 {
        (
            "none: 0 mV/K".to_string(),
            format!(
                "The worksheet has none: {} whatever the weather.",
                volts(f.charge_v)
            ),
        )
    } else {
        let bank_mv = -mv * f.cells;
        let at = |celsius: f64| volts(f.charge_v - bank_mv / 1000.0 * (celsius - 25.0));
        (
            format!("−{:.1} mV a cell and degree: −{bank_mv:.0} mV/K", -mv),
            format!(
                "{} at 10 °C and {} at 40 °C, sensor on a post of the bank.",
                at(10.0),
                at(40.0)
            ),
        )
    };
    Line::new("compensation", "Temperature compensation", value, why)
        .at(mv)
        .from(if f.lithium {
            Source::CommonPractice
        } else {
            Source::BatteryMaker
        })
}

fn window(case: Case) -> Line {
    let (bank, f) = (&case.inputs.bank, case.figures);
    let (value, why, least_c) = if f.lithium {
        (
            "no charging below 0 °C, nor above 45 °C".to_string(),
            format!(
                "Below 0 °C metal plates out and spoils the cells; up to 10 °C no more than {}.",
                amperes(if f.bank_limit_a > 0.0 {
                    f.bank_limit_a.min(0.1 * bank.capacity_ah)
                } else {
                    0.1 * bank.capacity_ah
                })
            ),
            Some(0.0),
        )
    } else {
        (
            "no charging above 50 °C".to_string(),
            format!(
                "A hot lead battery runs away; the worksheet has it at {} °C.",
                degrees(bank.temperature_c)
            ),
            None,
        )
    };
    let line = Line::new("temperature", "Charged only when", value, why).from(Source::BatteryMaker);
    Line {
        number: least_c,
        ..line
    }
}

/// The lithium bank's management system.
pub(super) fn management(case: Case) -> Group {
    let (inputs, f) = (case.inputs, case.figures);
    let step = |v: f64| format!("{} ({:.2} V a cell)", volts(v), f.cell_v(v));
    let [warn_v, cut_v, open_v] = f.high_v;
    let [low_v, shed_v, empty_v] = f.low_v;
    let cuts = cuts(case);
    let lines = vec![
        Line::new(
            "high_1_warning",
            "High volts 1: warning",
            step(warn_v),
            format!(
                "{} above the charge voltage, so that it never sounds on a usual day.",
                volts(warn_v - f.charge_v)
            ),
        )
        .at(warn_v)
        .from(Source::Reckoned),
        Line::new(
            "high_2_field_off",
            "High volts 2: charging off",
            format!("{}: {cuts}", step(cut_v)),
            if inputs.straight_into_house() && inputs.reg.kind == RegulatorKind::Internal {
                "A built-in regulator must be opened for such a relay; a converter needs none."
                    .to_string()
            } else if inputs.straight_into_house() {
                format!(
                    "The machine must be dead before the bank lets go of its {:.0} A.",
                    case.report.run.start_a
                )
            } else {
                "Whatever charges stops before the bank has to.".to_string()
            },
        )
        .at(cut_v)
        .from(Source::Reckoned),
        Line::new(
            "high_3_contactor",
            "High volts 3: contactor opens",
            format!("{}, 2 to 5 s after step 2", step(open_v)),
            format!(
                "Last. If the maker's is fixed and lower, lower the charge voltage of {} until all three have room.",
                volts(f.charge_v)
            ),
        )
        .at(open_v)
        .from(Source::BatteryMaker),
        Line::new(
            "low_1_warning",
            "Low volts 1: warning",
            step(low_v),
            format!(
                "The cells are nearly empty, well below the {:.0} % kept in hand.",
                inputs.window_low_pct()
            ),
        )
        .at(low_v),
        Line::new(
            "low_2_loads_off",
            "Low volts 2: refrigeration, inverter, heaters off",
            step(shed_v),
            "What is left is for navigation lights, radio and bilge pumps.".to_string(),
        )
        .at(shed_v),
        Line::new(
            "low_3_contactor",
            "Low volts 3: contactor opens",
            step(empty_v),
            "Last, to save the cells; the charging side should still let current in.".to_string(),
        )
        .at(empty_v)
        .from(Source::BatteryMaker),
        Line::new(
            "charge_current",
            "Most charge current",
            amperes(f.bank_limit_a),
            format!(
                "{:.2} A for each of {:.0} A·h, at {} °C.",
                f.bank_limit_a / inputs.bank.capacity_ah,
                inputs.bank.capacity_ah,
                degrees(inputs.bank.temperature_c)
            ),
        )
        .at(down(f.bank_limit_a))
        .from(f.limit_from),
        Line::new(
            "cell_limits",
            "Limits of single cells, balancing, short circuit",
            "from the battery maker".to_string(),
            format!("They belong to its {:.0} cells and to nobody's rule.", f.cells),
        )
        .from(Source::BatteryMaker),
    ];
    Group {
        key: "management",
        title: "Battery management system",
        lines,
    }
}

/// What the second step of high volts acts on.
fn cuts(case: Case) -> &'static str {
    let inputs = case.inputs;
    let converter = inputs.engine_charges() && inputs.way.kind == WayKind::Converter;
    match (inputs.straight_into_house(), inputs.reg.kind, converter) {
        (true, RegulatorKind::External, false) => "field off, chargers off",
        (true, RegulatorKind::External, true) => "field off, converter and chargers off",
        (true, RegulatorKind::Internal, false) => "field off by a relay, chargers off",
        (true, RegulatorKind::Internal, true) => "field off by a relay, converter and chargers off",
        (false, _, true) => "converter off, chargers off",
        (false, _, false) => "chargers off",
    }
}

/// What a lead bank has in place of a management system.
pub(super) fn low_volts(case: Case) -> Group {
    let f = case.figures;
    let [warn_v, shed_v, off_v] = f.low_v;
    let low_pct = case.inputs.window_low_pct();
    let line = |key, what, v: f64, why: String| {
        Line::new(key, what, volts(v), why)
            .at(v)
            .from(Source::Reckoned)
    };
    Group {
        key: "low_volts",
        title: "Low-voltage alarm and switch",
        lines: vec![
            line(
                "low_1_warning",
                "Low volts 1: warning",
                warn_v,
                format!("Where the bank rests at the {low_pct:.0} % kept in hand."),
            ),
            line(
                "low_2_loads_off",
                "Low volts 2: refrigeration, inverter, heaters off",
                shed_v,
                format!(
                    "{} lower, for a minute on end, so that a pump's start does not trip it.",
                    volts(warn_v - shed_v)
                ),
            ),
            line(
                "low_3_off",
                "Low volts 3: all but navigation lights, radio and bilge pumps off",
                off_v,
                "Lower, the bank loses life for ever.".to_string(),
            ),
        ],
    }
}

/// The charger on the quay.
pub(super) fn shore_charger(case: Case) -> Group {
    let (inputs, f) = (case.inputs, case.figures);
    let charger_a = inputs.shore.charger_a;
    let most_a = charger_a.min(f.bank_limit_a);
    let mut lines = vec![
        Line::new(
            "current",
            "Output current",
            amperes(most_a),
            if most_a < charger_a {
                format!("The bank may take no more; the charger could give {charger_a:.0} A.")
            } else {
                format!(
                    "All it gives; the bank may take {}.",
                    amperes(f.bank_limit_a)
                )
            },
        )
        .at(down(most_a))
        .from(if most_a < charger_a {
            f.limit_from
        } else {
            Source::Worksheet("shore_charger_a")
        }),
        Line::new(
            "profile",
            "Charge voltage, absorption, float, compensation",
            "as for the house bank above".to_string(),
            format!(
                "A ready-made profile must come out at {}.",
                volts(f.charge_v)
            ),
        )
        .from(Source::Reckoned),
    ];
    if f.lithium {
        lines.push(Line::new(
            "remote_off",
            "Remote on and off",
            "by the management system's charging-off contact".to_string(),
            format!(
                "It must stop at {}, before the contactor.",
                volts(f.high_v[1])
            ),
        ));
    }
    Group {
        key: "shore_charger",
        title: "Shore charger",
        lines,
    }
}
