//! Settings of an external regulator.

use serde::Serialize;

use crate::boat::key;
use crate::boat::{WayKind, WhichAlternator};
use crate::guidance::settings::alternator::{current, held, hottest};
use crate::guidance::settings::link::data_link;
use crate::guidance::settings::{Case, Device, Group, Setting, SettingCode, SettingValue, Source};
use crate::units::quantity::{
    Quantity, QuantityKind, amperes, kelvin, kilowatts_of, minutes, percent, rpm, volts,
};

/// A wait before the first field \[s\], common practice.
const DELAY_S: f64 = 60.0;
/// A soft start where you set none \[min\], common practice.
const RAMP_MIN: f64 = 2.0;
/// A fan is slow below this speed of the shaft \[rpm\], common practice.
const SLOW_RPM: f64 = 2000.0;
/// Most field while the fan is slow \[%\], common practice.
const SLOW_FIELD_PCT: f64 = 50.0;

/// Why an external regulator is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum RegulatorReason {
    /// What lies between alternator and bank drops voltage.
    LeadsDropVoltage {
        /// At this current
        current: Quantity,
        /// the resistance of switch, fuse and cable
        resistance: Quantity,
        /// drops this.
        drop: Quantity,
    },
    /// What the alternator gives at its temperature limit.
    GivesAtLimit {
        /// The current.
        hot: Quantity,
    },
    /// The fan is slow below the speed; the boat charges at this one.
    FanIsSlow {
        /// Speed of the shaft while charging.
        shaft: Quantity,
    },
    /// The fan is slow there; at the boat's speed it holds nothing back.
    FanIsSlowElsewhere {
        /// Engine speed while charging.
        engine: Quantity,
    },
    /// The boat charges where the fan is slow: a cap would hold back every run.
    WouldHoldBackEveryRun {
        /// Speed of the shaft while charging.
        shaft: Quantity,
    },
    /// The engine is up to speed before the belt pulls.
    EngineFirst {
        /// Engine speed while charging.
        engine: Quantity,
    },
    /// Belt and engine take up the power gently.
    GentleOnBelt {
        /// The most power.
        power: Quantity,
    },
    /// Belt, engine or fan bear no more at any speed.
    SparesBeltAndEngine,
    /// So much power is the propeller's while the boat manoeuvres.
    PowerToPropeller {
        /// What the alternators take of the engine at most.
        power: Quantity,
    },
    /// What the battery sends at most.
    SentAtMost {
        /// The current.
        current: Quantity,
        /// Whether it falls as the bank fills, and a voltage is sent too.
        as_it_fills: bool,
    },
    /// Without its sensor nobody feels how hot the alternator gets.
    NobodyFeelsTheHeat,
    /// Without the link nobody tells the regulator what the bank may take.
    NobodyTellsIt,
    /// Without the link the bank's limit must hold by a setting.
    HoldsWithoutLink {
        /// What the bank may take.
        bank_limit: Quantity,
    },
    /// The field is off before the contactor opens.
    FieldOffFirst {
        /// Where the field is off.
        off_at: Quantity,
        /// So much before the contactor opens.
        before: Quantity,
    },
}

/// The external regulator.
pub(super) fn regulator(case: Case) -> Group {
    let (inputs, report, f) = (case.inputs, case.report, case.figures);
    let house = inputs.way.kind == WayKind::Direct;
    let mut settings = vec![held(case, house)];
    if house {
        settings.push(sense(case));
    }
    let first = inputs.first_alternator();
    settings.push(current(case, &first));
    let peak = &report.analyses.run.alternators[0].peak;
    settings.push(hottest(&first, peak));
    settings.push(Setting::new(
        SettingCode::FoldBack,
        SettingValue::Derating {
            range: kelvin(inputs.reg.fold_band_k).up_to(1),
        },
        RegulatorReason::GivesAtLimit {
            hot: amperes(f.hot_a_of(WhichAlternator::First)),
        },
        Source::Worksheet(key!(reg.fold_band_k)),
    ));
    settings.push(Setting::new(
        SettingCode::SensorLoss,
        SettingValue::StopCharging,
        RegulatorReason::NobodyFeelsTheHeat,
        Source::CommonPractice,
    ));
    settings.push(low_speed(case));
    if inputs.reg.field_cap_pct < 100.0 {
        settings.push(Setting::new(
            SettingCode::FieldCap,
            SettingValue::AtMost {
                quantity: percent(inputs.reg.field_cap_pct),
            },
            RegulatorReason::SparesBeltAndEngine,
            Source::Worksheet(key!(reg.field_cap_pct)),
        ));
    }
    settings.extend(manoeuvring(case));
    settings.push(Setting::new(
        SettingCode::Delay,
        SettingValue::Exactly {
            quantity: Quantity::new(DELAY_S, QuantityKind::Seconds),
        },
        RegulatorReason::EngineFirst {
            engine: rpm(inputs.eng.rpm),
        },
        Source::CommonPractice,
    ));
    settings.push(soft_start(case));
    settings.extend(data_link(case));
    if f.lithium && inputs.straight_into_house() && !inputs.packs_closed() {
        let [_, off_v, open_v] = f.high_v;
        settings.push(Setting::new(
            SettingCode::FieldCut,
            SettingValue::ChargeDisableSignal,
            RegulatorReason::FieldOffFirst {
                off_at: volts(off_v),
                before: volts(open_v - off_v),
            },
            Source::CommonPractice,
        ));
    }
    Group {
        device: Device::Regulator,
        settings,
    }
}

fn sense(case: Case) -> Setting {
    let (most_a, milliohm) = (
        case.report.analyses.run.most_a(),
        case.inputs.bank.harness_mohm,
    );
    Setting::new(
        SettingCode::Sense,
        SettingValue::SensedAtBank,
        RegulatorReason::LeadsDropVoltage {
            current: amperes(most_a),
            resistance: Quantity::new(milliohm / 1000.0, QuantityKind::Resistance).up_to(4),
            drop: volts(most_a * milliohm / 1000.0),
        },
        Source::CommonPractice,
    )
}

fn low_speed(case: Case) -> Setting {
    let (reg, ratio) = (&case.inputs.reg, case.inputs.alt.pulley_ratio);
    let shaft_rpm = case.report.analyses.alternators[0].shaft_rpm;
    let field_below = |pct: f64, shaft_rpm: f64| SettingValue::FieldBelow {
        field: percent(pct),
        shaft: rpm(shaft_rpm),
        engine: rpm(shaft_rpm / ratio),
    };
    let shaft = rpm(shaft_rpm);
    let (value, reason, from) = if reg.low_speed_rpm > 0.0 {
        (
            field_below(reg.low_speed_pct, reg.low_speed_rpm),
            RegulatorReason::FanIsSlow { shaft },
            Source::Worksheet(key!(reg.low_speed_rpm)),
        )
    } else if shaft_rpm > SLOW_RPM {
        let engine = rpm(case.inputs.eng.rpm);
        (
            field_below(SLOW_FIELD_PCT, SLOW_RPM),
            RegulatorReason::FanIsSlowElsewhere { engine },
            Source::CommonPractice,
        )
    } else {
        (
            SettingValue::Off,
            RegulatorReason::WouldHoldBackEveryRun { shaft },
            Source::CommonPractice,
        )
    };
    Setting::new(SettingCode::LowSpeed, value, reason, from)
}

/// The field held back for manoeuvring; none where the worksheet has none.
fn manoeuvring(case: Case) -> Option<Setting> {
    let reg = &case.inputs.reg;
    let minutes = Some(reg.manoeuvre_min).filter(|minutes| *minutes > 0.0);
    (reg.manoeuvre_field_pct < 100.0).then(|| {
        Setting::new(
            SettingCode::Manoeuvring,
            SettingValue::FieldFor {
                field: percent(reg.manoeuvre_field_pct),
                time: minutes.map(whole_minutes),
            },
            RegulatorReason::PowerToPropeller {
                power: kilowatts_of(1000.0 * case.report.analyses.engine.peak_kw),
            },
            Source::Worksheet(key!(reg.manoeuvre_field_pct)),
        )
    })
}

fn soft_start(case: Case) -> Setting {
    let stated_min = case.inputs.reg.ramp_min;
    let (ramp_min, from) = if stated_min > 0.0 {
        (stated_min, Source::Worksheet(key!(reg.ramp_min)))
    } else {
        (RAMP_MIN, Source::CommonPractice)
    };
    Setting::new(
        SettingCode::Ramp,
        SettingValue::FullFieldAfter {
            time: whole_minutes(ramp_min),
        },
        RegulatorReason::GentleOnBelt {
            power: kilowatts_of(1000.0 * case.report.analyses.engine.peak_kw),
        },
        from,
    )
}

/// In minutes where they are whole, else in seconds.
fn whole_minutes(time_min: f64) -> Quantity {
    let whole = (60.0 * time_min).round() % 60.0 == 0.0;
    if whole {
        minutes(time_min)
    } else {
        Quantity::new(60.0 * time_min, QuantityKind::Seconds)
    }
}
