//! A current as it is set, and the one figure that stands for a setting.

use crate::guidance::settings::SettingValue;
use crate::units::Quantity;
use crate::units::down;
use crate::units::quantity::amperes;

impl SettingValue {
    /// A current to set, never more than it is; below 0.1 A no figure.
    pub(super) fn current(a: f64) -> SettingValue {
        if a > 0.0 && down(a) <= 0.0 {
            let quantity = amperes(0.1).to(1);
            return SettingValue::LessThan { quantity };
        }
        SettingValue::Exactly { quantity: set_a(a) }
    }

    /// The figure in it, where one stands for the whole.
    pub const fn figure(&self) -> Option<Quantity> {
        match *self {
            SettingValue::Exactly { quantity }
            | SettingValue::AtLeast { quantity }
            | SettingValue::AtMost { quantity } => Some(quantity),
            SettingValue::VoltageAt { voltage, .. }
            | SettingValue::Equalise { voltage, .. }
            | SettingValue::VoltageFor { voltage, .. }
            | SettingValue::VoltageAfter { voltage, .. } => Some(voltage),
            SettingValue::FloatIfAny { at_most } => Some(at_most),
            SettingValue::BelowOrAfter { current, .. } => Some(current),
            SettingValue::Compensation { cell, .. } => Some(cell),
            SettingValue::CellsBetween { from, .. } => Some(from),
            SettingValue::TemperatureLimit { limit, .. } => Some(limit),
            SettingValue::Derating { range } => Some(range),
            SettingValue::FieldBelow { field, .. } | SettingValue::FieldFor { field, .. } => {
                Some(field)
            }
            SettingValue::FullFieldAfter { time } => Some(time),
            SettingValue::CellVoltage { bank, .. }
            | SettingValue::ChargingOff { bank, .. }
            | SettingValue::ContactorOpens { bank, .. } => Some(bank),
            SettingValue::CellStep { most, .. } => most,
            SettingValue::GoOnWithin { current, .. } => Some(current),
            SettingValue::Fuse { rating, .. } => rating,
            SettingValue::Off
            | SettingValue::LessThan { .. }
            | SettingValue::Never
            | SettingValue::NotFrozenAndBelow { .. }
            | SettingValue::Once { .. }
            | SettingValue::AsHouseBank
            | SettingValue::AsFirstAlternator
            | SettingValue::ChargeDisableSignal
            | SettingValue::FollowLink { .. }
            | SettingValue::StopCharging
            | SettingValue::ProtectAlternator
            | SettingValue::OffTheHouseBank
            | SettingValue::SensedAtBank
            | SettingValue::NoTemperatureLimit
            | SettingValue::NotFitted
            | SettingValue::AskBatteryMaker
            | SettingValue::ChargedBy { .. }
            | SettingValue::OpenButForAStart
            | SettingValue::WithEngineOrCharging => None,
        }
    }
}

/// A current as it is set \[A\]: never more than it is, whole from 10 A, in
/// tenths below; as it is where it is less than that can say.
pub(super) fn set_a(a: f64) -> Quantity {
    let floored_a = down(a);
    let set_a = if floored_a > 0.0 { floored_a } else { a };
    amperes(set_a).to(if a < 10.0 { 1 } else { 0 })
}
