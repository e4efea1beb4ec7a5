//! Why something is to be set so.

use serde::Serialize;

use crate::guidance::settings::{
    AlternatorReason, BuiltInReason, CellTemperatureReason, ChargeReason, ChargerReason,
    ConverterReason, LowVoltageReason, ManagementReason, RegulatorReason, StartBatteryReason,
};

macro_rules! subjects {
    ($($(#[$doc:meta])* $subject:ident($reasons:ident),)+) => {
        /// Why something is to be set so, by what it is about. JSON has it as
        /// `{"code": …}` with its figures beside it.
        #[derive(Debug, Clone, Copy, PartialEq, Serialize)]
        #[serde(untagged)]
        pub enum SettingReason {
            $($(#[$doc])* $subject($reasons),)+
        }

        $(impl From<$reasons> for SettingReason {
            fn from(reason: $reasons) -> SettingReason {
                SettingReason::$subject(reason)
            }
        })+
    };
}

subjects! {
    /// How the house bank is charged.
    Charge(ChargeReason),
    /// What every charger has to set.
    Charger(ChargerReason),
    /// The temperature of its cells.
    CellTemperature(CellTemperatureReason),
    /// An alternator.
    Alternator(AlternatorReason),
    /// The external regulator.
    Regulator(RegulatorReason),
    /// A built-in regulator and the second alternator.
    BuiltIn(BuiltInReason),
    /// A DC-DC charger.
    Converter(ConverterReason),
    /// The battery management system.
    Management(ManagementReason),
    /// A lead bank's alarm and switch.
    LowVoltage(LowVoltageReason),
    /// The start battery.
    StartBattery(StartBatteryReason),
}
