//! Settings of a built-in regulator and of the second alternator.

use serde::Serialize;

use crate::boat::key;
use crate::boat::{RegulatorKind, Regulators, WayKind, WhichAlternator};
use crate::guidance::settings::alternator::{at_start_battery, current, held, hottest};
use crate::guidance::settings::{Case, Device, Group, Setting, SettingCode, SettingValue, Source};
use crate::units::Quantity;
use crate::units::quantity::{amperes, celsius, volts};

/// Why a built-in regulator or the second alternator's is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum BuiltInReason {
    /// It holds more than the bank is to get.
    HoldsTooMuch {
        /// What it holds.
        held: Quantity,
        /// How warm the bank is, where that moves what it is to get.
        bank: Option<Quantity>,
    },
    /// It holds less than the bank is charged to.
    HoldsTooLittle {
        /// How much less.
        short: Quantity,
        /// What the bank is charged to.
        charge: Quantity,
        /// How warm the bank is, where that moves what it is to get.
        bank: Option<Quantity>,
    },
    /// There is nothing to set, only to read.
    ReadWithBankFull {
        /// What the bank is charged to.
        charge: Quantity,
        /// How warm the bank is, where that moves what it is to get.
        bank: Option<Quantity>,
    },
    /// It has no sensor; what its winding reaches.
    NoSensor {
        /// What the winding reaches in the run.
        winding: Quantity,
        /// Its limit.
        limit: Quantity,
        /// The DC-DC charger's current, where one draws on it.
        charger: Option<Quantity>,
    },
    /// It cannot hold a cap.
    CannotHoldCap {
        /// What it gives at the start.
        start: Quantity,
        /// What the bank may take.
        bank_limit: Quantity,
    },
    /// When the bank disconnects, nothing stops the alternator first.
    NothingStopsIt {
        /// Where the bank disconnects.
        opens_at: Quantity,
    },
    /// Of two regulators on their own the one with the higher voltage carries all.
    HigherCarriesAll {
        /// By how much they differ now.
        higher: Quantity,
    },
    /// Two regulators share by a link.
    Linked {
        /// So that both stay equally warm, not by what each gives hot.
        equal_heat: bool,
    },
    /// Two regulators set apart take turns.
    TakeTurns {
        /// So far apart.
        apart: Quantity,
    },
    /// The voltage the bank is charged to.
    BankVoltage,
    /// It charges the start battery; the other one charges the house bank.
    ChargesStartBattery {
        /// What the engine services draw.
        services: Quantity,
    },
}

/// The built-in regulator.
pub(super) fn built_in(case: Case) -> Group {
    let house = case.inputs.way.kind == WayKind::Direct;
    let voltage = if house {
        voltage(case)
    } else {
        held(case, false)
    };
    let mut settings = vec![voltage, no_sensor(case, house)];
    if house {
        settings.push(no_cap(case));
        settings.extend(no_cut_off(case));
    }
    Group {
        device: Device::BuiltIn,
        settings,
    }
}

fn voltage(case: Case) -> Setting {
    let f = case.figures;
    let held_v = case.inputs.held_v();
    // It follows its own temperature, not the bank's.
    let shift_v = case.inputs.lead_shift_v();
    let charge_v = f.charge_v + shift_v;
    let short_v = charge_v - held_v;
    let charge = volts(charge_v);
    let bank = (shift_v != 0.0).then(|| celsius(case.inputs.bank.temperature_c));
    let reason = if short_v < -1e-9 {
        BuiltInReason::HoldsTooMuch {
            held: volts(held_v),
            bank,
        }
    } else if short_v > 0.1 * f.blocks {
        BuiltInReason::HoldsTooLittle {
            short: volts(short_v),
            charge,
            bank,
        }
    } else {
        BuiltInReason::ReadWithBankFull { charge, bank }
    };
    let value = SettingValue::AtMost {
        quantity: volts(held_v.min(charge_v)),
    };
    let from = Source::Worksheet(key!(reg.fixed_v));
    Setting::new(SettingCode::Voltage, value, reason, from)
}

fn no_sensor(case: Case, house: bool) -> Setting {
    let reason = BuiltInReason::NoSensor {
        winding: celsius(case.report.analyses.run.alternators[0].peak.winding_c),
        limit: celsius(case.inputs.alt.class.limit_c()),
        charger: (!house).then(|| amperes(case.inputs.charger_a())),
    };
    let value = SettingValue::NoTemperatureLimit;
    Setting::new(SettingCode::Heat, value, reason, Source::Calculated)
}

fn no_cap(case: Case) -> Setting {
    let reason = BuiltInReason::CannotHoldCap {
        start: amperes(case.report.analyses.run.most_a()),
        bank_limit: amperes(case.figures.bank_limit_a),
    };
    let code = SettingCode::CurrentCap;
    Setting::new(code, SettingValue::Off, reason, Source::Calculated)
}

fn no_cut_off(case: Case) -> Option<Setting> {
    let [_, _, open_v] = case.figures.high_v;
    case.figures.lithium.then(|| {
        Setting::new(
            SettingCode::FieldCut,
            SettingValue::NotFitted,
            BuiltInReason::NothingStopsIt {
                opens_at: volts(open_v),
            },
            Source::CommonPractice,
        )
    })
}

/// Why the second regulator is set as the first one.
fn as_first(case: Case) -> BuiltInReason {
    let inputs = case.inputs;
    match inputs.regulators() {
        Regulators::LinkedShare => BuiltInReason::Linked { equal_heat: false },
        Regulators::LinkedHeat => BuiltInReason::Linked { equal_heat: true },
        Regulators::Apart if inputs.two.voltage_offset_v != 0.0 => {
            BuiltInReason::HigherCarriesAll {
                higher: volts(inputs.two.voltage_offset_v.abs()).to(2),
            }
        }
        Regulators::Apart | Regulators::Together => BuiltInReason::TakeTurns {
            apart: volts(0.1 * case.figures.blocks),
        },
    }
}

/// The second alternator's regulator.
pub(super) fn second(case: Case) -> Option<Group> {
    let (inputs, f) = (case.inputs, case.figures);
    let which = WhichAlternator::Second;
    let installed = inputs.alternator(which)?;
    let run = case.report.analyses.run.alternators.get(which.index())?;
    let settings = match (installed.connection.on_house(), inputs.reg.kind) {
        (true, RegulatorKind::External) => vec![
            current(case, &installed),
            hottest(&installed, &run.peak),
            Setting::new(
                SettingCode::Others,
                SettingValue::AsFirstAlternator,
                as_first(case),
                Source::CommonPractice,
            ),
        ],
        (true, RegulatorKind::Internal) => {
            let quantity = volts(f.charge_v);
            vec![Setting::new(
                SettingCode::Voltage,
                SettingValue::AtMost { quantity },
                BuiltInReason::BankVoltage,
                Source::Calculated,
            )]
        }
        (false, _) => vec![Setting::new(
            SettingCode::Voltage,
            at_start_battery(inputs),
            BuiltInReason::ChargesStartBattery {
                services: amperes(inputs.way.services_a),
            },
            Source::Worksheet(key!(way.start_v)),
        )],
    };
    Some(Group {
        device: Device::Second,
        settings,
    })
}
