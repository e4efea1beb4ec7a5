//! How the house bank is charged, whatever charges it, and its shore charger.

use super::{Case, Group, Line, Source, amperes, degrees, down, volts};
use crate::worksheet::Chemistry;

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
