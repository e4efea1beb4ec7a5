//! Settings of what stands between house bank and start battery, and of the
//! start battery itself.

use crate::boat::{Inputs, SecondRole, WayKind};
use crate::guidance::settings::machine::start_v;
use crate::guidance::settings::{Case, Group, Line, Source};
use crate::units::{amperes, down, volts};

/// How far a DC-DC charger's lock-out stays under the running volts, of 12 V \[V\];
/// common practice.
const UNDER_V: f64 = 0.5;
/// How far above the lock-out it starts again, of 12 V \[V\]; common practice.
const AGAIN_V: f64 = 0.3;
/// Where the lock-out belongs where the worksheet's is no use, of 12 V \[V\];
/// common practice.
const LOCKOUT_V: f64 = 13.0;
/// A full start battery at rest, of 12 V \[V\]; common practice.
const REST_V: f64 = 12.7;
/// Most that a start battery needs through a DC-DC charger \[A\]; common practice.
const KEEP_A: f64 = 20.0;

/// Volts at which a DC-DC charger on the start battery locks out \[V\]: the
/// worksheet's, if it lies between a start battery at rest and what it has with
/// the engine running, less 0.2 V for ripple; else the usual, 0.5 V under those
/// running volts at least. Own reasoning.
fn lockout_v(inputs: &Inputs) -> f64 {
    let (way, blocks) = (&inputs.way, inputs.start_blocks());
    if way.lockout_v >= REST_V * blocks && way.lockout_v <= way.start_v - 0.2 * blocks {
        way.lockout_v
    } else {
        (LOCKOUT_V * blocks).min(way.start_v - UNDER_V * blocks)
    }
}

/// The DC-DC charger that charges the house bank.
pub(super) fn converter(case: Case) -> Group {
    let (inputs, report, f) = (case.inputs, case.report, case.figures);
    let way = &inputs.way;
    let blocks = inputs.start_blocks();
    let alone_a = down(f.converter_a);
    let may_a = (f.converter_a * f.share).min(f.bank_limit_a);
    let out_a = down(may_a);
    let lockout_v = lockout_v(inputs);
    let again_v = (lockout_v + AGAIN_V * blocks).min(0.5 * (lockout_v + way.start_v));
    let in_a = way.converter_a * f.charge_v / (way.converter_efficiency_pct / 100.0 * way.start_v);
    let mut lines = vec![
        Line::new(
            "profile",
            "Charge voltage, absorption, float, compensation",
            "as for the house bank above".to_string(),
            format!("A ready-made profile must come out at {}.", volts(f.charge_v)),
        )
        .from(Source::Calculated),
        Line::new(
            "current",
            "Output current",
            amperes(may_a),
            if out_a < alone_a {
                format!(
                    "The bank may take {} from all together.",
                    amperes(f.bank_limit_a)
                )
            } else if alone_a < down(way.converter_a) {
                format!(
                    "Of {:.0} A: the alternator holds {:.0} A hot; more makes it go on and off.",
                    way.converter_a, f.hot_a[0]
                )
            } else {
                format!(
                    "It takes up to {in_a:.0} A from an alternator that holds {:.0} A hot.",
                    f.hot_a[0]
                )
            },
        )
        .amps(may_a)
        .from(if out_a < down(way.converter_a) {
            Source::Calculated
        } else {
            Source::Worksheet("way_converter_a")
        }),
        Line::new(
            "lockout",
            "Locks out below",
            format!("{} at the start battery", volts(lockout_v)),
            if lockout_v < REST_V * blocks {
                format!(
                    "Your {} with the engine running hardly charges the start battery: put that right first.",
                    volts(way.start_v)
                )
            } else {
                format!(
                    "Between {} with the engine running and the {} at which a full start battery rests.",
                    volts(way.start_v),
                    volts(REST_V * blocks)
                )
            },
        )
        .at(lockout_v)
        .from(if lockout_v != way.lockout_v {
            Source::Calculated
        } else {
            Source::Worksheet("way_lockout_v")
        }),
        Line::new(
            "again",
            "Starts again above",
            format!("{}, after 30 s", volts(again_v)),
            format!(
                "Keeps it from going on and off where the alternator's {:.0} A fall short.",
                report.analyses.machine.hot_a
            ),
        )
        .at(again_v)
        .from(Source::Calculated),
    ];
    if f.lithium {
        lines.push(Line::new(
            "remote_off",
            "Remote on and off",
            "the management system's charge-disable signal".to_string(),
            format!("It stops at {}, before the contactor.", volts(f.high_v[1])),
        ));
    }
    Group {
        key: "converter",
        title: "DC-DC charger to the house bank",
        lines,
    }
}

/// The DC-DC charger that feeds the start battery from the house bank.
pub(super) fn turned_round(case: Case) -> Group {
    let (inputs, f) = (case.inputs, case.figures);
    let way = &inputs.way;
    let start_v = start_v(inputs);
    let wanted_a = way.services_a.max(0.05 * KEEP_A);
    let [_, stop_v, _] = f.low_v;
    Group {
        key: "converter",
        title: "DC-DC charger to the start battery",
        lines: vec![
            Line::new(
                "start_voltage",
                "Output voltage",
                volts(start_v),
                "What the start battery and the engine's services have with the engine running."
                    .to_string(),
            )
            .at(start_v)
            .from(Source::Worksheet("way_start_v")),
            Line::new(
                "current",
                "Output current",
                format!("at least {}", amperes(wanted_a)),
                format!(
                    "{} for engine services and topping up; {KEEP_A:.0} A is plenty.",
                    amperes(way.services_a)
                ),
            )
            .at(wanted_a)
            .from(Source::Worksheet("way_services_a")),
            Line::new(
                "lockout",
                "Locks out below",
                format!("{} at the house bank", volts(stop_v)),
                "Where the house switches its loads off; the start battery must not empty it further."
                    .to_string(),
            )
            .at(stop_v)
            .from(Source::Calculated),
            Line::new(
                "on",
                "Works",
                "with the engine only, or while the house bank is charged".to_string(),
                format!(
                    "Left on, its losses drain a little of the {:.0} A·h all day.",
                    inputs.bank.capacity_ah
                ),
            ),
        ],
    }
}

/// The start battery.
pub(super) fn start_battery(case: Case) -> Group {
    let inputs = case.inputs;
    let blocks = inputs.start_blocks();
    let kept = if !inputs.engine_charges() {
        "an output of the shore charger, and the alternator when the engine runs"
    } else if inputs.way.kind == WayKind::Converter {
        "the alternator, before the DC-DC charger"
    } else if inputs.feeds_start_back() {
        "the DC-DC charger from the house bank"
    } else if inputs.two.role == SecondRole::Start {
        "the second alternator"
    } else {
        "a charger, panel or alternator of its own: you have not said which"
    };
    let most_v = 14.8 * blocks;
    Group {
        key: "start_battery",
        title: "Start battery",
        lines: vec![
            Line::new(
                "kept_by",
                "Charged by",
                kept.to_string(),
                format!("It rests at about {} when full.", volts(REST_V * blocks)),
            )
            .from(Source::Calculated),
            Line::new(
                "most",
                "Never more than",
                volts(most_v),
                "2.47 V a cell, for lead at 25 °C; above, it gases.".to_string(),
            )
            .at(most_v)
            .from(Source::BatteryMaker),
            parallel(inputs),
        ],
    }
}

/// The switch that joins the banks.
fn parallel(inputs: &Inputs) -> Line {
    let (house, start) = (inputs.bank.nominal_v.blocks(), inputs.start_blocks());
    let (value, why) = if house == start {
        (
            "open; closed by hand, for a start only",
            format!(
                "Joined, current flows between them without a limit: {} at rest near full against {}.",
                volts(inputs.house_bank().rest_v(0.9)),
                volts(REST_V * start)
            ),
        )
    } else {
        (
            "none",
            format!(
                "Banks of {:.0} V and {:.0} V must never be joined.",
                12.0 * house,
                12.0 * start
            ),
        )
    };
    Line::new(
        "parallel",
        "Emergency parallel switch",
        value.to_string(),
        why,
    )
}
