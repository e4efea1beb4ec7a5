//! The settings sheet in words: what a group and a setting are called, what to
//! set, why, and who says so. `label` and `value` speak of every setting; the
//! other files have the reasons, one file for each subject as in
//! `guidance::settings`.

mod alternator;
mod cell_temperature;
mod charge;
mod charger;
mod converter;
mod label;
mod management;
mod regulator;
mod start_battery;
mod value;
pub(super) mod words;

use crate::guidance::settings::{Charged, Device, SettingReason, Source};
use crate::units::Reader;

pub use label::label;
pub use value::value;

/// The heading of a group.
pub const fn title(device: Device) -> &'static str {
    match device {
        Device::Charge { with_solar: true } => {
            "House bank: the same in everything that charges it, solar too"
        }
        Device::Charge { with_solar: false } => {
            "House bank: the same in everything that charges it"
        }
        Device::ByTemperature => "House bank: most charge current by cell temperature",
        Device::Regulator => "Regulator",
        Device::BuiltIn => "Built-in regulator",
        Device::Second => "Second alternator's regulator",
        Device::Converter {
            charges: Charged::HouseBank,
        } => "DC-DC charger to the house bank",
        Device::Converter {
            charges: Charged::StartBattery,
        } => "DC-DC charger to the start battery",
        Device::Management => "Battery management system",
        Device::ClosedPacks => "Drop-in packs, and what replaces a signal from them",
        Device::LowVolts => "Low-voltage alarm and switch",
        Device::ShoreCharger => "Mains charger",
        Device::StartBattery => "Start battery",
    }
}

/// Why something is to be set so, in a sentence or two.
pub fn reason(reason: &SettingReason, reader: &Reader) -> String {
    match reason {
        SettingReason::Charge(reason) => charge::reason(reason, reader),
        SettingReason::Charger(reason) => charger::reason(reason, reader),
        SettingReason::CellTemperature(reason) => cell_temperature::reason(reason, reader),
        SettingReason::Alternator(reason) => alternator::reason(reason, reader),
        SettingReason::Regulator(reason) => regulator::external(reason, reader),
        SettingReason::BuiltIn(reason) => regulator::built_in(reason, reader),
        SettingReason::Converter(reason) => converter::reason(reason, reader),
        SettingReason::Management(reason) => management::management(reason, reader),
        SettingReason::LowVoltage(reason) => management::low_voltage(reason, reader),
        SettingReason::StartBattery(reason) => start_battery::reason(reason, reader),
    }
}

/// Who says a setting, in a few words.
pub const fn source(from: Source) -> &'static str {
    match from {
        Source::Worksheet(_) => "your figure",
        Source::Calculated => "calculated",
        Source::BatteryMaker => "ask the battery maker",
        Source::CommonPractice => "common practice",
    }
}
