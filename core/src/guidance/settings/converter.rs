//! Settings of a DC-DC charger between start battery and house bank.

use serde::Serialize;

use crate::boat::key;
use crate::boat::{Inputs, WhichAlternator};
use crate::guidance::settings::alternator::start_v;
use crate::guidance::settings::charger::{profile, remote_off};
use crate::guidance::settings::start_battery::REST_V;
use crate::guidance::settings::{
    Case, Charged, Device, Group, Setting, SettingCode, SettingValue, Source, Terminals,
};
use crate::units::down;
use crate::units::quantity::{Quantity, QuantityKind, ampere_hours, amperes, volts};

/// How far a DC-DC charger's lock-out stays under the running volts, of 12 V \[V\];
/// common practice.
const UNDER_V: f64 = 0.5;
/// How far above the lock-out it starts again, of 12 V \[V\]; common practice.
const AGAIN_V: f64 = 0.3;
/// How long the voltage must have been there before it starts again \[s\]; common practice.
const AGAIN_S: f64 = 30.0;
/// Where the lock-out belongs where the worksheet's is no use, of 12 V \[V\];
/// common practice.
const LOCKOUT_V: f64 = 13.0;
/// Most that a start battery needs through a DC-DC charger \[A\]; common practice.
const KEEP_A: f64 = 20.0;

/// Why a DC-DC charger is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ConverterReason {
    /// The bank may take no more from everything together.
    BankLimit {
        /// What it may take.
        bank_limit: Quantity,
    },
    /// The alternator, hot, could not feed the charger's rating.
    AlternatorHoldsLess {
        /// The charger's rating.
        rating: Quantity,
        /// What the alternator holds hot.
        hot: Quantity,
    },
    /// The alternator can feed the charger's rating.
    AlternatorHoldsEnough {
        /// What the charger takes.
        takes: Quantity,
        /// What the alternator holds hot.
        hot: Quantity,
    },
    /// The running voltage hardly charges the start battery.
    RunningVoltageTooLow {
        /// It, as given.
        running: Quantity,
    },
    /// Between the running voltage and that of a full start battery at rest.
    BetweenRunningAndRest {
        /// With the engine running.
        running: Quantity,
        /// At rest and full.
        rest: Quantity,
    },
    /// Keeps it from switching on and off.
    NoCycling {
        /// What the alternator gives hot.
        hot: Quantity,
    },
    /// What the start battery has with the engine running.
    AsWithEngineRunning,
    /// Enough for engine services and topping up.
    ServicesAndToppingUp {
        /// What the services draw.
        services: Quantity,
        /// More than this is not needed.
        plenty: Quantity,
    },
    /// The start battery must not empty the house bank further.
    LoadsAreOffThere,
    /// Left on, its own losses drain the house bank.
    LossesDrain {
        /// The house bank's capacity.
        capacity: Quantity,
    },
}

/// Volts at which a DC-DC charger on the start battery locks out \[V\]: the
/// worksheet's, if it lies between a start battery at rest and what it has with
/// the engine running, less 0.2 V for ripple; else the usual, 0.5 V under those
/// running volts at least. Own reasoning.
fn lockout_v(inputs: &Inputs) -> f64 {
    let (way, blocks) = (&inputs.way, inputs.start_blocks());
    if way.lockout_v >= REST_V * blocks && way.lockout_v <= way.start_v - 0.2 * blocks {
        way.lockout_v
    } else {
        (LOCKOUT_V * blocks).min(way.start_v - UNDER_V * blocks)
    }
}

/// The DC-DC charger that charges the house bank.
pub(super) fn to_house(case: Case) -> Group {
    let lockout_v = lockout_v(case.inputs);
    let mut settings = vec![
        profile(case),
        output(case),
        lockout(case.inputs, lockout_v),
        again(case, lockout_v),
    ];
    settings.extend(remote_off(case));
    Group {
        device: Device::Converter {
            charges: Charged::HouseBank,
        },
        settings,
    }
}

fn output(case: Case) -> Setting {
    let (way, f) = (&case.inputs.way, case.figures);
    let rated_a = case.inputs.charger_a();
    let alone_a = down(f.converter_a);
    let may_a = f.converter_setting_a();
    let out_a = down(may_a);
    let hot = amperes(f.hot_a_of(WhichAlternator::First));
    let reason = if out_a < alone_a {
        ConverterReason::BankLimit {
            bank_limit: amperes(f.setting_limit_a),
        }
    } else if alone_a < down(rated_a) {
        let rating = amperes(rated_a);
        ConverterReason::AlternatorHoldsLess { rating, hot }
    } else {
        let efficiency = way.converter_efficiency_pct / 100.0;
        let takes = amperes(rated_a * f.charge_v / (efficiency * way.start_v));
        ConverterReason::AlternatorHoldsEnough { takes, hot }
    };
    let from = if out_a < down(rated_a) {
        Source::Calculated
    } else {
        Source::Worksheet(key!(way.converter_a))
    };
    let value = SettingValue::current(may_a);
    Setting::new(SettingCode::Current, value, reason, from)
}

fn lockout(inputs: &Inputs, lockout_v: f64) -> Setting {
    let way = &inputs.way;
    let rest_v = REST_V * inputs.start_blocks();
    let running = volts(way.start_v);
    let reason = if lockout_v < rest_v {
        ConverterReason::RunningVoltageTooLow { running }
    } else {
        let rest = volts(rest_v);
        ConverterReason::BetweenRunningAndRest { running, rest }
    };
    let from = if lockout_v != way.lockout_v {
        Source::Calculated
    } else {
        Source::Worksheet(key!(way.lockout_v))
    };
    let value = SettingValue::VoltageAt {
        voltage: volts(lockout_v),
        at: Terminals::StartBattery,
    };
    Setting::new(SettingCode::Lockout, value, reason, from)
}

fn again(case: Case, lockout_v: f64) -> Setting {
    let inputs = case.inputs;
    let usual_v = lockout_v + AGAIN_V * inputs.start_blocks();
    let half_way_v = 0.5 * (lockout_v + inputs.way.start_v);
    let value = SettingValue::VoltageAfter {
        voltage: volts(usual_v.min(half_way_v)),
        wait: Quantity::new(AGAIN_S, QuantityKind::Seconds),
    };
    let reason = ConverterReason::NoCycling {
        hot: amperes(case.report.analyses.output.hot_a),
    };
    Setting::new(SettingCode::Again, value, reason, Source::Calculated)
}

/// The DC-DC charger that charges the start battery from the house bank.
pub(super) fn to_start(case: Case) -> Group {
    let (way, f) = (&case.inputs.way, case.figures);
    let least_a = way.services_a.max(0.05 * KEEP_A);
    let decimals = if least_a < 10.0 { 1 } else { 0 };
    let [_, stop_v, _] = f.low_v;
    Group {
        device: Device::Converter {
            charges: Charged::StartBattery,
        },
        settings: vec![
            Setting::new(
                SettingCode::StartVoltage,
                SettingValue::Exactly {
                    quantity: volts(start_v(case.inputs)),
                },
                ConverterReason::AsWithEngineRunning,
                Source::Worksheet(key!(way.start_v)),
            ),
            Setting::new(
                SettingCode::Current,
                SettingValue::AtLeast {
                    quantity: amperes(least_a).to(decimals),
                },
                ConverterReason::ServicesAndToppingUp {
                    services: amperes(way.services_a),
                    plenty: amperes(KEEP_A),
                },
                Source::Worksheet(key!(way.services_a)),
            ),
            Setting::new(
                SettingCode::Lockout,
                SettingValue::VoltageAt {
                    voltage: volts(stop_v),
                    at: Terminals::HouseBank,
                },
                ConverterReason::LoadsAreOffThere,
                Source::Calculated,
            ),
            Setting::new(
                SettingCode::On,
                SettingValue::WithEngineOrCharging,
                ConverterReason::LossesDrain {
                    capacity: ampere_hours(case.inputs.bank.capacity_ah),
                },
                Source::CommonPractice,
            ),
        ],
    }
}
