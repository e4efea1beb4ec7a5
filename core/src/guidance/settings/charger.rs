//! What every charger of the house bank has to set, and the charger on shore power.

use serde::Serialize;

use crate::boat::key;
use crate::guidance::settings::{Case, Device, Group, Setting, SettingCode, SettingValue, Source};
use crate::units::Quantity;
use crate::units::quantity::{amperes, volts};

/// Why a charger is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ChargerReason {
    /// A ready-made profile must come out at the bank's charge voltage.
    ProfileMustMatch {
        /// The charge voltage.
        charge: Quantity,
    },
    /// It must stop before the contactor opens.
    StopsBeforeContactor {
        /// Where it must stop.
        at: Quantity,
    },
    /// The bank may take no more.
    BankTakesLess {
        /// What the charger could give.
        charger: Quantity,
    },
    /// The charger gives no more.
    ChargerGivesLess {
        /// What the bank may take.
        bank_limit: Quantity,
    },
}

/// The voltages: those of the house bank.
pub(super) fn profile(case: Case) -> Setting {
    let charge = volts(case.figures.charge_v);
    Setting::new(
        SettingCode::Profile,
        SettingValue::AsHouseBank,
        ChargerReason::ProfileMustMatch { charge },
        Source::Calculated,
    )
}

/// The input by which a lithium bank's management system stops it.
pub(super) fn remote_off(case: Case) -> Option<Setting> {
    let [_, at_v, _] = case.figures.high_v;
    let signalled = case.figures.lithium && !case.inputs.packs_closed();
    signalled.then(|| {
        Setting::new(
            SettingCode::RemoteOff,
            SettingValue::ChargeDisableSignal,
            ChargerReason::StopsBeforeContactor { at: volts(at_v) },
            Source::CommonPractice,
        )
    })
}

/// The charger on shore power or a generator.
pub(super) fn shore_charger(case: Case) -> Group {
    let f = case.figures;
    let charger_a = case.inputs.mains_charger_a();
    let most_a = charger_a.min(f.setting_limit_a);
    let (reason, from) = if most_a < charger_a {
        let charger = amperes(charger_a);
        (ChargerReason::BankTakesLess { charger }, f.limit_from)
    } else {
        let bank_limit = amperes(f.setting_limit_a);
        let from = Source::Worksheet(if charger_a > case.inputs.shore.charger_a {
            key!(genset.charger_a)
        } else {
            key!(shore.charger_a)
        });
        (ChargerReason::ChargerGivesLess { bank_limit }, from)
    };
    let current = SettingValue::current(most_a);
    let mut settings = vec![
        Setting::new(SettingCode::Current, current, reason, from),
        profile(case),
    ];
    settings.extend(remote_off(case));
    Group {
        device: Device::ShoreCharger,
        settings,
    }
}
