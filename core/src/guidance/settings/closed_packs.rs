//! Drop-in packs: what cannot be set in them, and what stands in its place.

use crate::guidance::settings::management::{limits, low};
use crate::guidance::settings::{
    Case, Device, Group, ManagementReason, Setting, SettingCode, SettingValue, Source,
};
use crate::units::quantity::volts;

/// What there is to set around packs whose management systems are closed.
pub(super) fn closed_packs(case: Case) -> Group {
    let [_, _, open_v] = case.figures.high_v;
    let mut settings = Vec::new();
    if case.inputs.straight_into_house() {
        settings.push(Setting::new(
            SettingCode::InPlaceOfSignal,
            SettingValue::ProtectAlternator,
            ManagementReason::OpensWithoutWarning {
                opens_at: volts(open_v),
            },
            Source::CommonPractice,
        ));
    }
    settings.push(inside(SettingCode::HighContactor));
    let [warning, loads_off, _] = low(case);
    settings.extend([warning, loads_off].map(|step| Setting {
        reason: ManagementReason::WarnsNobody.into(),
        ..step
    }));
    settings.push(inside(SettingCode::LowContactor));
    settings.extend(limits(case));
    Group {
        device: Device::ClosedPacks,
        settings,
    }
}

/// What is fixed inside the pack.
fn inside(code: SettingCode) -> Setting {
    Setting::new(
        code,
        SettingValue::AskBatteryMaker,
        ManagementReason::FixedInside,
        Source::BatteryMaker,
    )
}
