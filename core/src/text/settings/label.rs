//! What a setting is called in the trade.

use crate::guidance::settings::{GroupCode, Setting, SettingCode, SettingValue};
use crate::text::settings::words::cell_range;
use crate::units::Reader;

/// What a setting of a group is called; a step of the table of charge currents
/// by the temperatures it holds for.
pub fn label(group: GroupCode, setting: &Setting, reader: &Reader) -> String {
    if let SettingValue::CellStep { from, to, .. } = setting.value {
        return cell_range(from, to, reader);
    }
    name(group, setting.code).to_string()
}

const fn name(group: GroupCode, code: SettingCode) -> &'static str {
    match code {
        SettingCode::Voltage => match group {
            GroupCode::Charge => "Charge (absorption) voltage",
            _ => "Voltage it holds",
        },
        SettingCode::StartVoltage => match group {
            GroupCode::Converter => "Output voltage",
            _ => "Charge voltage",
        },
        SettingCode::AbsorptionEnd => "Absorption ends",
        SettingCode::Float => "Float",
        SettingCode::Compensation => "Temperature compensation",
        SettingCode::Temperature => "Charge only when",
        SettingCode::Equalising => "Equalising",
        SettingCode::FullCharge => "Full charge",
        SettingCode::Water => "Water",
        SettingCode::Frost
        | SettingCode::To5
        | SettingCode::To10
        | SettingCode::To50
        | SettingCode::To60
        | SettingCode::Hot => "Cells",
        SettingCode::Profile => "Charge voltage, absorption, float, compensation",
        SettingCode::Sense => "Voltage sensed at",
        SettingCode::CurrentCap => "Current cap",
        SettingCode::SetPoint | SettingCode::Heat => "Temperature limit the regulator holds",
        SettingCode::FoldBack => "Derating range",
        SettingCode::LowSpeed => "Low-speed cap",
        SettingCode::Delay => "Start delay",
        SettingCode::Ramp => "Soft start",
        SettingCode::FieldCut => "Field cut-off input",
        SettingCode::FieldCap => "Field cap",
        SettingCode::Manoeuvring => "Field while manoeuvring",
        SettingCode::LinkLimits => "Limits over the data link",
        SettingCode::SensorLoss => "When the temperature sensor fails",
        SettingCode::LinkLoss => "When the data link is lost",
        SettingCode::EachPack => "Charge limit of each pack",
        SettingCode::PackFuse => "Fuse at each pack",
        SettingCode::InPlaceOfSignal => "In place of a charge-disable signal",
        SettingCode::Others => "All others",
        SettingCode::Current => "Output current",
        SettingCode::Lockout => "Locks out below",
        SettingCode::Again => "Starts again above",
        SettingCode::RemoteOff => "Remote on and off",
        SettingCode::On => "Works",
        SettingCode::HighWarning => "High voltage 1: warning",
        SettingCode::HighChargingOff => "High voltage 2: charging off",
        SettingCode::HighContactor => "High voltage 3: contactor opens",
        SettingCode::LowWarning => "Low voltage 1: warning",
        SettingCode::LowLoadsOff => "Low voltage 2: refrigeration, inverter, heaters off",
        SettingCode::LowContactor => "Low voltage 3: contactor opens",
        SettingCode::LowAllOff => {
            "Low voltage 3: all but navigation lights, radio and bilge pumps off"
        }
        SettingCode::ChargeCurrent => "Most charge current",
        SettingCode::CellLimits => "Limits of single cells, balancing, short circuit",
        SettingCode::KeptBy => "Charged by",
        SettingCode::Most => "Never more than",
        SettingCode::Parallel => "Emergency parallel switch",
    }
}
