//! Settings of the start battery and of the switch that joins it to the house bank.

use serde::Serialize;

use crate::boat::{BanksJoined, Inputs, SecondRole, WayKind};
use crate::guidance::settings::{
    Case, Device, Group, Setting, SettingCode, SettingValue, Source, StartBatterySource,
};
use crate::units::Quantity;
use crate::units::quantity::{celsius, volts};

/// A full start battery at rest, of 12 V \[V\]; common practice.
pub(super) const REST_V: f64 = 12.7;
/// Most a start battery of 12 V may have \[V\]; common practice.
const MOST_V: f64 = 14.8;

/// Why the start battery is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum StartBatteryReason {
    /// Where it rests when full.
    RestsAt {
        /// The voltage.
        rest: Quantity,
    },
    /// Above, it gases.
    Gases {
        /// Of each cell
        cell: Quantity,
        /// at this temperature.
        at: Quantity,
    },
    /// Joined, current flows between the banks without a limit.
    FlowsWithoutLimit {
        /// The house bank at rest, near full.
        house: Quantity,
        /// The start battery at rest.
        start: Quantity,
    },
    /// Banks of different voltages must never be joined.
    DifferentVoltages {
        /// The house bank's system voltage.
        house: Quantity,
        /// The start battery's.
        start: Quantity,
    },
}

/// The start battery.
pub(super) fn start_battery(case: Case) -> Group {
    let inputs = case.inputs;
    let blocks = inputs.start_blocks();
    let source = source(inputs);
    Group {
        device: Device::StartBattery,
        settings: vec![
            Setting::new(
                SettingCode::KeptBy,
                SettingValue::ChargedBy { source },
                StartBatteryReason::RestsAt {
                    rest: volts(REST_V * blocks),
                },
                Source::Calculated,
            ),
            Setting::new(
                SettingCode::Most,
                SettingValue::Exactly {
                    quantity: volts(MOST_V * blocks),
                },
                StartBatteryReason::Gases {
                    cell: volts(MOST_V / 6.0).to(2),
                    at: celsius(25.0),
                },
                Source::BatteryMaker,
            ),
            parallel(inputs),
        ],
    }
}

fn source(inputs: &Inputs) -> StartBatterySource {
    if !inputs.engine_charges() {
        StartBatterySource::ShoreChargerOrAlternator
    } else if inputs.joined() != BanksJoined::Nothing {
        StartBatterySource::WithHouseBank
    } else if inputs.way.kind == WayKind::Converter {
        StartBatterySource::Alternator
    } else if inputs.feeds_start_back() {
        StartBatterySource::DcDcCharger
    } else if inputs.two.role == SecondRole::Start {
        StartBatterySource::SecondAlternator
    } else {
        StartBatterySource::NotGiven
    }
}

/// The switch that joins the banks.
fn parallel(inputs: &Inputs) -> Setting {
    let (house, start) = (inputs.bank.nominal_v.blocks(), inputs.start_blocks());
    let (value, reason) = if house == start {
        let reason = StartBatteryReason::FlowsWithoutLimit {
            house: volts(inputs.house_bank().rest_v(0.9)),
            start: volts(REST_V * start),
        };
        (SettingValue::OpenButForAStart, reason)
    } else {
        let reason = StartBatteryReason::DifferentVoltages {
            house: volts(12.0 * house).to(0),
            start: volts(12.0 * start).to(0),
        };
        (SettingValue::Off, reason)
    };
    let code = SettingCode::Parallel;
    Setting::new(code, value, reason, Source::CommonPractice)
}
