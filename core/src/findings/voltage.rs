//! Whether each alternator is of the voltage of the battery it is led to.

use serde::Serialize;

use crate::boat::{AlternatorVolts, Inputs, Key, WayKind, Worksheet};
use crate::findings::{Code, Finding, Severity, add};

/// What a regulator holds, for each 12 V block \[V\]; common practice.
const HELD_V: f64 = 14.0;

/// An alternator of another voltage than its battery, or one whose voltage is
/// not certain.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum VoltageFinding {
    /// It is built for another voltage than the battery its cable leads to.
    AlternatorVoltageMismatch {
        /// Whether it is the second alternator.
        second: bool,
        /// How it is connected to the house bank.
        connected: WayKind,
        /// What it is built for \[V\].
        own_v: f64,
        /// What the battery has \[V\].
        battery_v: f64,
        /// What its regulator would lift that battery to \[V\].
        lifts_to_v: f64,
    },
    /// Its voltage is taken to be that of the bank; nobody has entered it.
    AlternatorVoltageAssumed {
        /// Whether it is the second alternator.
        second: bool,
        /// What the bank has \[V\].
        bank_v: f64,
        /// What stands on the plate of an alternator for that bank \[V\].
        plate_v: f64,
    },
    /// Its stated voltage and the voltage of its rating are of two systems.
    AlternatorVoltageContradiction {
        /// Whether it is the second alternator.
        second: bool,
        /// What it is stated to be built for \[V\].
        own_v: f64,
        /// Voltage its rating is stated at \[V\].
        rating_v: f64,
        /// The system that is usual for \[V\].
        rating_system_v: f64,
    },
}

impl VoltageFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            VoltageFinding::AlternatorVoltageMismatch { .. } => Severity::Danger,
            VoltageFinding::AlternatorVoltageAssumed { .. }
            | VoltageFinding::AlternatorVoltageContradiction { .. } => Severity::Fix,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            VoltageFinding::AlternatorVoltageMismatch { .. } => Code::AlternatorVoltageMismatch,
            VoltageFinding::AlternatorVoltageAssumed { .. } => Code::AlternatorVoltageAssumed,
            VoltageFinding::AlternatorVoltageContradiction { .. } => {
                Code::AlternatorVoltageContradiction
            }
        }
    }
}

/// Whether each alternator is of the voltage of the battery it is led to.
pub(super) fn voltage_findings(sheet: &Worksheet, found: &mut Vec<Finding>) {
    for (second, seen) in alternators(&sheet.inputs) {
        if !seen.alternator_fits() {
            mismatch(second, &seen, found);
        } else {
            assumed(sheet, second, &seen, found);
        }
        contradiction(second, &seen, found);
    }
}

/// The worksheet as each alternator sees it, and whether it is the second one.
fn alternators(inputs: &Inputs) -> Vec<(bool, Inputs)> {
    let first = (false, *inputs);
    std::iter::once(first)
        .chain(inputs.as_second().map(|seen| (true, seen)))
        .collect()
}

fn volts(blocks: f64) -> f64 {
    12.0 * blocks
}

fn mismatch(second: bool, seen: &Inputs, found: &mut Vec<Finding>) {
    add(
        found,
        VoltageFinding::AlternatorVoltageMismatch {
            second,
            connected: seen.way.kind,
            own_v: volts(seen.alternator_blocks()),
            battery_v: volts(seen.led_to_blocks()),
            lifts_to_v: HELD_V * seen.alternator_blocks(),
        },
    );
}

fn assumed(sheet: &Worksheet, second: bool, seen: &Inputs, found: &mut Vec<Finding>) {
    let key = Key::named(if second {
        "alt2_nominal_v"
    } else {
        "alt_nominal_v"
    });
    let stated = key.is_some_and(|key| sheet.known.get(key).is_some());
    if stated || !seen.alternator_voltage_assumed() {
        return;
    }
    add(
        found,
        VoltageFinding::AlternatorVoltageAssumed {
            second,
            bank_v: volts(seen.led_to_blocks()),
            plate_v: seen.alternator_test_v(),
        },
    );
}

/// A voltage that is stated, and a rating taken at that of another system.
fn contradiction(second: bool, seen: &Inputs, found: &mut Vec<Finding>) {
    let Some(rating_v) = seen.alt.test_v else {
        return;
    };
    let mut rated = *seen;
    rated.alt.nominal_v = AlternatorVolts::Same;
    let (own, by_rating) = (seen.alternator_blocks(), rated.alternator_blocks());
    if own != by_rating {
        add(
            found,
            VoltageFinding::AlternatorVoltageContradiction {
                second,
                own_v: volts(own),
                rating_v,
                rating_system_v: volts(by_rating),
            },
        );
    }
}
