//! Settings that a data link to the battery asks for.

use crate::boat::LinkLoss;
use crate::guidance::settings::amount::set_a;
use crate::guidance::settings::{
    Case, RegulatorReason, Setting, SettingCode, SettingValue, Source,
};
use crate::simulation::management::setting_within_a;
use crate::units::quantity::{amperes, volts};

/// What follows from a data link: the limits, and what happens without them.
pub(super) fn data_link(case: Case) -> Vec<Setting> {
    let (inputs, f) = (case.inputs, case.figures);
    if !inputs.limit_linked() {
        return Vec::new();
    }
    let as_it_fills = inputs.sent_v().is_some();
    let limit = amperes(f.bank_limit_a);
    let (on_loss, reason, from) = match inputs.reg.link_loss {
        LinkLoss::OwnSettings => (
            SettingValue::GoOnWithin {
                voltage: volts(f.charge_v),
                current: set_a(setting_within_a(f.bank_limit_a)),
            },
            RegulatorReason::HoldsWithoutLink { bank_limit: limit },
            Source::Calculated,
        ),
        LinkLoss::Unsaid | LinkLoss::Stops => (
            SettingValue::StopCharging,
            RegulatorReason::NobodyTellsIt,
            Source::CommonPractice,
        ),
    };
    vec![
        Setting::new(
            SettingCode::LinkLimits,
            SettingValue::FollowLink { volts: as_it_fills },
            RegulatorReason::SentAtMost {
                current: limit,
                as_it_fills,
            },
            f.limit_from,
        ),
        Setting::new(SettingCode::LinkLoss, on_loss, reason, from),
    ]
}
