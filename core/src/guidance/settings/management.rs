//! What guards the house bank: its management system, or the low-voltage
//! switch of a lead bank.

use crate::boat::{RegulatorKind, WayKind};
use crate::guidance::settings::{Case, Group, Line, Source};
use crate::units::{amperes, down, tenths, volts};

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
            "High voltage 1: warning",
            step(warn_v),
            format!(
                "{} above the charge: it never sounds on a usual day.",
                volts(warn_v - f.charge_v)
            ),
        )
        .at(warn_v)
        .from(Source::Calculated),
        Line::new(
            "high_2_field_off",
            "High voltage 2: charging off",
            format!("{}: {cuts}", step(cut_v)),
            if inputs.straight_into_house() && inputs.reg.kind == RegulatorKind::Internal {
                "A built-in regulator must be opened for such a relay; a DC-DC charger needs none."
                    .to_string()
            } else if inputs.straight_into_house() {
                format!(
                    "The alternator must be off before the bank disconnects its {:.0} A.",
                    case.report.analyses.run.start_a
                )
            } else {
                "Whatever charges stops before the bank disconnects.".to_string()
            },
        )
        .at(cut_v)
        .from(Source::Calculated),
        Line::new(
            "high_3_contactor",
            "High voltage 3: contactor opens",
            format!("{}, 2 to 5 s after step 2", step(open_v)),
            format!(
                "Last: the most a cell may have. If the maker's is fixed and lower, lower the {} of the charge until all three have room.",
                volts(f.charge_v)
            ),
        )
        .at(open_v)
        .from(Source::BatteryMaker),
        Line::new(
            "low_1_warning",
            "Low voltage 1: warning",
            step(low_v),
            format!(
                "The cells are nearly empty, well below the {:.0} % you keep in reserve.",
                inputs.window_low_pct()
            ),
        )
        .at(low_v),
        Line::new(
            "low_2_loads_off",
            "Low voltage 2: refrigeration, inverter, heaters off",
            step(shed_v),
            "What is left is for navigation lights, radio and bilge pumps.".to_string(),
        )
        .at(shed_v),
        Line::new(
            "low_3_contactor",
            "Low voltage 3: contactor opens",
            step(empty_v),
            "Last, to save the cells; charging current should still get in.".to_string(),
        )
        .at(empty_v)
        .from(Source::BatteryMaker),
        Line::new(
            "charge_current",
            "Most charge current",
            amperes(f.bank_limit_a),
            format!(
                "{:.2} A for each A·h; colder and hotter cells as in the table above.",
                f.bank_limit_a / inputs.bank.capacity_ah
            ),
        )
        .at(down(f.bank_limit_a))
        .from(f.limit_from),
        Line::new(
            "cell_limits",
            "Limits of single cells, balancing, short circuit",
            "from the battery maker".to_string(),
            format!("They belong to its {:.0} cells; no rule of thumb replaces them.", f.cells),
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
        (true, RegulatorKind::External, true) => "field off, DC-DC charger and shore charger off",
        (true, RegulatorKind::Internal, false) => "field off by a relay, chargers off",
        (true, RegulatorKind::Internal, true) => {
            "field off by a relay, DC-DC charger and shore charger off"
        }
        (false, _, true) => "DC-DC charger and shore charger off",
        (false, _, false) => "chargers off",
    }
}

/// What a lead bank has in place of a management system.
pub(super) fn low_volts(case: Case) -> Group {
    let (inputs, f) = (case.inputs, case.figures);
    let [warn_v, shed_v, off_v] = f.low_v;
    let low_pct = inputs.window_low_pct();
    let bank = inputs.house_bank();
    let rest_v = bank.rest_v(low_pct / 100.0);
    let under = |load_a: f64| (rest_v - load_a * bank.giving_ohm()).max(0.0);
    let usual_a = case.report.analyses.run.house_load_a;
    let peak_v = under(case.peak_house_a);
    let line = |key, what, v: f64, wait: &str, why: String| {
        Line::new(key, what, format!("{}, {wait}", volts(v)), why)
            .at(v)
            .from(Source::Calculated)
    };
    Group {
        key: "low_volts",
        title: "Low-voltage alarm and switch",
        lines: vec![
            line(
                "low_1_warning",
                "Low voltage 1: warning",
                warn_v,
                "for 5 min on end",
                format!(
                    "At {low_pct:.0} % charge it rests at {}, and stands at {} under the usual {} A.",
                    volts(rest_v),
                    volts(under(usual_a)),
                    tenths(usual_a)
                ),
            ),
            line(
                "low_2_loads_off",
                "Low voltage 2: refrigeration, inverter, heaters off",
                shed_v,
                "for 60 s on end",
                format!(
                    "{:.0} A at once pull it to {}: {}.",
                    case.peak_house_a,
                    volts(peak_v),
                    if peak_v >= shed_v {
                        "a pump or windlass must not trip it"
                    } else {
                        "the wait must be longer than such a load lasts"
                    }
                ),
            ),
            line(
                "low_3_off",
                "Low voltage 3: all but navigation lights, radio and bilge pumps off",
                off_v,
                "for 60 s on end",
                "Lower, the bank loses life for good.".to_string(),
            ),
        ],
    }
}
