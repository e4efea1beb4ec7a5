//! How the house bank is charged, whatever charges it, and its shore charger.

use crate::boat::Chemistry;
use crate::guidance::settings::temperature::allowed;
use crate::guidance::settings::{Case, Group, Line, Source};
use crate::units::{amperes, degrees, down, volts};

/// Equalising voltage of a 12 V flooded block at 25 °C \[V\]: 2.58 V a cell,
/// 15.5 to 16 V is common practice.
const EQUALISING_V: f64 = 15.5;

/// The charge, the same for everything that charges the bank.
pub(super) fn charge(case: Case) -> Group {
    let mut lines = vec![
        voltage(case),
        absorption_end(case),
        float(case),
        compensation(case),
        window(case),
        equalising(case),
    ];
    lines.extend(upkeep(case));
    Group {
        key: "charge",
        title: if case.inputs.sun.panel_w > 0.0 {
            "House bank: the same in all that charges it, the panels too"
        } else {
            "House bank: the same in all that charges it"
        },
        lines,
    }
}

fn voltage(case: Case) -> Line {
    let f = case.figures;
    let cell_v = f.cell_v(f.charge_v);
    let why = match (f.charge_too_high_v, f.lithium) {
        (Some(stated_v), true) => format!(
            "{cell_v:.2} V a cell. Your {} leaves no room below the {} at which the contactor opens; this fills the bank as well.",
            volts(stated_v),
            volts(f.high_v[2])
        ),
        (Some(stated_v), false) => format!(
            "Your {} is more than the {cell_v:.2} V a cell that such a battery withstands day by day.",
            volts(stated_v)
        ),
        (None, _) if f.charge_too_low_v.is_some() => format!(
            "{cell_v:.2} V a cell. Your {} would charge nothing: it is not a charge voltage of this bank.",
            volts(f.charge_too_low_v.unwrap_or_default())
        ),
        (None, _) => format!(
            "{:.0} cells in series at {cell_v:.2} V each, at 25 °C.",
            f.cells
        ),
    };
    let value = format!("{} at the bank's terminals", volts(f.charge_v));
    Line::new("voltage", "Charge (absorption) voltage", value, why)
        .at(f.charge_v)
        .from(f.charge_from)
}

fn absorption_end(case: Case) -> Line {
    let f = case.figures;
    let value = format!(
        "below {} into the bank, or after {}",
        amperes(f.tail_a),
        if f.lithium { "30 min" } else { "4 h" }
    );
    let why = format!(
        "{:.0} % of {:.0} A·h: full by then. What measures the alternator's current measures the house's {:.0} A too.",
        f.tail_pct, case.inputs.bank.capacity_ah, case.report.analyses.run.house_load_a
    );
    Line::new("absorption_end", "Absorption ends", value, why)
        .at(down(f.tail_a))
        .from(Source::BatteryMaker)
}

fn float(case: Case) -> Line {
    let f = case.figures;
    let cell_v = f.cell_v(f.float_v);
    let (value, why) = if f.lithium {
        (
            format!("none; {} at most where it must have one", volts(f.float_v)),
            format!("At {cell_v:.2} V a cell a full bank rests; more holds it at the top."),
        )
    } else {
        (
            volts(f.float_v),
            format!("{cell_v:.2} V a cell keeps a full bank full without gassing."),
        )
    };
    Line::new("float", "Float", value, why)
        .at(f.float_v)
        .from(Source::BatteryMaker)
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
                "You set none: {} in frost and in the tropics alike. −3 to −5 mV a cell is usual.",
                volts(f.charge_v)
            ),
        )
    } else {
        let bank_mv = -mv * f.cells;
        let at = |celsius: f64| volts(f.charge_v - bank_mv / 1000.0 * (celsius - 25.0));
        (
            format!("−{:.1} mV a cell and degree: −{bank_mv:.0} mV/K", -mv),
            format!(
                "{} at 10 °C and {} at 40 °C, sensor on a terminal of the bank.",
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
    if !case.figures.lithium {
        return Line::new(
            "temperature",
            "Charge only when",
            "it is not frozen and below 50 °C".to_string(),
            "A hot lead battery runs away; a frozen one can burst. A flat one freezes at −10 °C."
                .to_string(),
        )
        .from(Source::BatteryMaker);
    }
    let (value, least_c) = match allowed(case.inputs) {
        Some((from_c, to_c)) => (
            format!(
                "cells at {} to {} °C, by the table below",
                degrees(from_c),
                degrees(to_c)
            ),
            Some(from_c),
        ),
        None => ("never, by your figures".to_string(), None),
    };
    Line {
        number: least_c,
        ..Line::new(
            "temperature",
            "Charge only when",
            value,
            "Colder, metal plates out and spoils the cells; hotter, they age fast.".to_string(),
        )
        .from(Source::BatteryMaker)
    }
}

fn equalising(case: Case) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    let none = |why: String| {
        Line::new("equalising", "Equalising", "none".to_string(), why).from(Source::CommonPractice)
    };
    match inputs.bank.chemistry {
        Chemistry::Lfp => none(format!(
            "Far above the {} it withstands; its management balances the cells.",
            volts(f.high_v[2])
        )),
        Chemistry::Agm | Chemistry::Gel => none(
            "A sealed battery loses gas that cannot be put back, unless its maker's sheet asks for it.".to_string(),
        ),
        Chemistry::Flooded => {
            let equalising_v = EQUALISING_V * f.blocks;
            Line::new(
                "equalising",
                "Equalising",
                format!(
                    "{} at 25 °C for 1 to 3 h, once a month or when densities differ by 0.03",
                    volts(equalising_v)
                ),
                "Only if its maker's sheet says so; by the shore charger, hatches open, no flame, what cannot withstand it off, water after.".to_string(),
            )
            .at(equalising_v)
            .from(Source::BatteryMaker)
        }
    }
}

/// What keeps lead alive; nothing for lithium.
fn upkeep(case: Case) -> Vec<Line> {
    let (inputs, f) = (case.inputs, case.figures);
    let mut lines = Vec::new();
    if !f.lithium {
        lines.push(
            Line::new(
                "full_charge",
                "Full charge",
                "once a week".to_string(),
                format!(
                    "Until it takes less than {} at the charge voltage; else it sulphates.",
                    amperes(f.tail_a)
                ),
            )
            .from(Source::CommonPractice),
        );
    }
    if inputs.bank.chemistry == Chemistry::Flooded {
        lines.push(
            Line::new(
                "water",
                "Water",
                "looked at once a month".to_string(),
                "Distilled, after charging, to the mark; plates must stay covered.".to_string(),
            )
            .from(Source::CommonPractice),
        );
    }
    lines
}

/// The charger on shore power.
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
        .amps(most_a)
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
        .from(Source::Calculated),
    ];
    if f.lithium {
        lines.push(Line::new(
            "remote_off",
            "Remote on and off",
            "the management system's charge-disable signal".to_string(),
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
