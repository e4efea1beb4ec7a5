//! Whether each alternator is of the voltage of the battery it is led to.

use serde::Serialize;

use crate::boat::{
    Alternator, Connection, InstalledAlternator, WayKind, WhichAlternator, Worksheet,
};
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
        /// Which alternator.
        alternator: WhichAlternator,
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
        /// Which alternator.
        alternator: WhichAlternator,
        /// What the bank has \[V\].
        bank_v: f64,
        /// What stands on the plate of an alternator for that bank \[V\].
        plate_v: f64,
    },
    /// Its stated voltage and the voltage of its rating are of two systems.
    AlternatorVoltageContradiction {
        /// Which alternator.
        alternator: WhichAlternator,
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
    for installed in sheet.inputs.alternators() {
        if !installed.fits() {
            mismatch(&installed, found);
        } else {
            assumed(sheet, &installed, found);
        }
        contradiction(&installed, found);
    }
}

fn volts(blocks: f64) -> f64 {
    12.0 * blocks
}

fn mismatch(installed: &InstalledAlternator, found: &mut Vec<Finding>) {
    add(
        found,
        VoltageFinding::AlternatorVoltageMismatch {
            alternator: installed.which,
            connected: match installed.connection {
                Connection::HouseBank => WayKind::Direct,
                Connection::ThroughCharger | Connection::StartBattery => WayKind::Converter,
            },
            own_v: volts(installed.blocks()),
            battery_v: volts(installed.battery_blocks()),
            lifts_to_v: HELD_V * installed.blocks(),
        },
    );
}

fn assumed(sheet: &Worksheet, installed: &InstalledAlternator, found: &mut Vec<Finding>) {
    let key = installed.key(Alternator::nominal_v);
    if sheet.known.get(key).is_some() || !installed.voltage_assumed() {
        return;
    }
    add(
        found,
        VoltageFinding::AlternatorVoltageAssumed {
            alternator: installed.which,
            bank_v: volts(installed.battery_blocks()),
            plate_v: installed.test_v(),
        },
    );
}

/// A voltage that is stated, and a rating taken at that of another system.
fn contradiction(installed: &InstalledAlternator, found: &mut Vec<Finding>) {
    let by_rating = installed.blocks_by_rating();
    let Some((rating_v, by_rating)) = installed.alternator.test_v.zip(by_rating) else {
        return;
    };
    let own = installed.blocks();
    if own != by_rating {
        add(
            found,
            VoltageFinding::AlternatorVoltageContradiction {
                alternator: installed.which,
                own_v: volts(own),
                rating_v,
                rating_system_v: volts(by_rating),
            },
        );
    }
}
