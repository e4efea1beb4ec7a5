//! The most charge current of a lithium bank by the temperature of its cells.

use crate::boat::{ChargeStep, Inputs, WayKind};
use crate::guidance::settings::{Case, Group, Line, Source};
use crate::units::{amperes, degrees};

/// The coldest and the hottest that cells may be charged at \[°C\]; none where
/// nothing is allowed at all.
pub(super) fn allowed(inputs: &Inputs) -> Option<(f64, f64)> {
    let rows = inputs.charge_ladder();
    let mut open = rows.iter().filter(|row| row.amperes > 0.0);
    let first = open.next()?;
    let last = open.next_back().unwrap_or(first);
    first.from_c.zip(last.to_c)
}

/// Where a step lies: "5 to 10 °C", "below 0 °C".
pub(crate) fn stretch_words(step: &ChargeStep) -> String {
    match (step.from_c, step.to_c) {
        (None, Some(to_c)) => format!("below {} °C", degrees(to_c)),
        (Some(from_c), None) => format!("above {} °C", degrees(from_c)),
        (Some(from_c), Some(to_c)) => format!("{} to {} °C", degrees(from_c), degrees(to_c)),
        (None, None) => "at any temperature".to_string(),
    }
}

/// A step's name, the same for ever: where it ends.
fn key(step: &ChargeStep) -> &'static str {
    match (step.from_c, step.to_c) {
        (None, _) => "frost",
        (_, None) => "hot",
        (_, Some(to_c)) if to_c <= 5.0 => "to_5",
        (_, Some(to_c)) if to_c <= 10.0 => "to_10",
        (_, Some(to_c)) if to_c <= 50.0 => "to_50",
        _ => "to_60",
    }
}

/// The table, coldest first.
pub(super) fn by_temperature(case: Case) -> Group {
    let own_a = case.figures.bank_limit_a;
    let rows = case.inputs.charge_ladder();
    let less = |row: &&ChargeStep| row.amperes > 0.0 && row.amperes < own_a;
    let first_less = rows.iter().find(less).copied();
    let lines = rows
        .iter()
        .map(|row| line(case, row, first_less == Some(*row)))
        .collect();
    Group {
        key: "by_temperature",
        title: "House bank: most charge current by cell temperature",
        lines,
    }
}

fn line(case: Case, row: &ChargeStep, first_less: bool) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    let line = |value: String, why: String| Line::new(key(row), stretch_words(row), value, why);
    if row.amperes <= 0.0 {
        let why = "The management system must stop everything that charges.";
        return line("none".to_string(), why.to_string()).from(Source::BatteryMaker);
    }
    let rate = row.amperes / inputs.bank.capacity_ah;
    let own = row.amperes >= f.bank_limit_a;
    let why = if own {
        format!("{rate:.2} A for each A·h: the bank's own limit, the season's setting.")
    } else if first_less {
        format!("{rate:.2} A for each A·h. {}", who_holds(inputs))
    } else {
        format!("{rate:.2} A for each A·h.")
    };
    line(amperes(row.amperes), why)
        .amps(row.amperes)
        .from(if own {
            f.limit_from
        } else {
            Source::BatteryMaker
        })
}

/// Who sees to it that a cold or hot bank gets less.
fn who_holds(inputs: &Inputs) -> &'static str {
    if inputs.engine_charges() && inputs.limit_linked() {
        return "The battery tells the regulator over its data link; set what has no link by hand.";
    }
    match (inputs.engine_charges(), inputs.way.kind) {
        (false, _) => {
            "Nothing tells the charger: set it by hand, or the management system disconnects."
        }
        (true, WayKind::Direct) => {
            "Nothing tells the regulator: set it by hand in such cold, or the management system disconnects under load."
        }
        (true, WayKind::Converter) => {
            "Nothing tells the DC-DC charger: set it by hand in such cold, or the management system disconnects."
        }
    }
}
