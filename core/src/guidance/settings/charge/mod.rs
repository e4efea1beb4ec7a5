//! How the house bank is charged, whatever charges it.

mod reason;

use crate::boat::Chemistry;
use crate::guidance::settings::amount::set_a;
use crate::guidance::settings::temperature::allowed;
use crate::guidance::settings::{
    Case, Device, Group, Period, Setting, SettingCode, SettingValue, Source, Terminals,
};
use crate::units::quantity::{
    Quantity, QuantityKind, ampere_hours, amperes, celsius, count, minutes, percent, volts,
};

pub use reason::ChargeReason;

/// Equalising voltage of a 12 V flooded block at 25 °C \[V\]: 2.58 V a cell,
/// 15.5 to 16 V is common practice.
const EQUALISING_V: f64 = 15.5;
/// Shortest and longest equalising \[h\], common practice.
const EQUALISING_H: [f64; 2] = [1.0, 3.0];
/// Difference of densities at which to equalise, common practice.
const DENSITY_DIFFERENCE: f64 = 0.03;
/// Absorption ends by now at the latest \[min\]: lithium, lead; common practice.
const LONGEST_MIN: [f64; 2] = [30.0, 240.0];
/// A lead bank is not charged from here on \[°C\], common practice.
const MOST_LEAD_C: f64 = 50.0;

/// The charge, the same for everything that charges the bank.
pub(super) fn charge(case: Case) -> Group {
    let mut settings = vec![
        voltage(case),
        absorption_end(case),
        float(case),
        compensation(case),
        window(case),
        equalising(case),
    ];
    settings.extend(upkeep(case));
    Group {
        device: Device::Charge {
            with_solar: case.inputs.sun.panel_w > 0.0,
        },
        settings,
    }
}

fn voltage(case: Case) -> Setting {
    let f = case.figures;
    let cell = volts(f.cell_v(f.charge_v)).to(2);
    let reason = match (f.charge_too_high_v, f.charge_too_low_v) {
        (Some(given_v), _) if f.lithium => ChargeReason::NoRoomBelowContactor {
            cell,
            given: volts(given_v),
            contactor: volts(f.high_v[2]),
        },
        (Some(given_v), _) => ChargeReason::MoreThanItWithstands {
            given: volts(given_v),
            cell,
        },
        (None, Some(given_v)) => ChargeReason::WouldChargeNothing {
            cell,
            given: volts(given_v),
        },
        (None, None) => ChargeReason::CellsInSeries {
            cells: count(f.cells),
            cell,
            at: celsius(25.0),
        },
    };
    let value = SettingValue::VoltageAt {
        voltage: volts(f.charge_v),
        at: Terminals::HouseBank,
    };
    Setting::new(SettingCode::Voltage, value, reason, f.charge_from)
}

fn absorption_end(case: Case) -> Setting {
    let f = case.figures;
    let [lithium_min, lead_min] = LONGEST_MIN;
    let value = SettingValue::BelowOrAfter {
        current: set_a(f.tail_a),
        time: minutes(if f.lithium { lithium_min } else { lead_min }),
    };
    let reason = ChargeReason::FullByThen {
        share: percent(f.tail_pct),
        capacity: ampere_hours(case.inputs.bank.capacity_ah),
        house_load: case
            .inputs
            .engine_charges()
            .then(|| amperes(case.report.analyses.run.house_load_a)),
    };
    let code = SettingCode::AbsorptionEnd;
    Setting::new(code, value, reason, Source::BatteryMaker)
}

fn float(case: Case) -> Setting {
    let f = case.figures;
    let float = volts(f.float_v);
    let cell = volts(f.cell_v(f.float_v)).to(2);
    let (value, reason) = if f.lithium {
        (
            SettingValue::FloatIfAny { at_most: float },
            ChargeReason::RestsWhenFull { cell },
        )
    } else {
        (
            SettingValue::Exactly { quantity: float },
            ChargeReason::KeepsFull { cell },
        )
    };
    Setting::new(SettingCode::Float, value, reason, Source::BatteryMaker)
}

fn compensation(case: Case) -> Setting {
    let f = case.figures;
    let mv = |mv: f64| Quantity::new(mv, QuantityKind::Compensation);
    let charge = volts(f.charge_v);
    let bank_mv = f.compensation_mv * f.cells;
    let value = SettingValue::Compensation {
        cell: mv(f.compensation_mv).to(1),
        bank: mv(bank_mv),
    };
    let (reason, from) = if f.lithium {
        let reason = ChargeReason::CompensationIsForLead {
            lead_cell: mv(-4.0),
            charge,
            moves: volts(0.004 * 6.0 * f.blocks * 40.0),
            from: celsius(5.0),
            to: celsius(45.0),
        };
        (reason, Source::CommonPractice)
    } else if f.compensation_mv == 0.0 {
        let reason = ChargeReason::NoCompensationGiven {
            charge,
            least: mv(-3.0),
            most: mv(-5.0),
        };
        (reason, Source::BatteryMaker)
    } else {
        let at = |celsius: f64| volts(f.charge_v + bank_mv / 1000.0 * (celsius - 25.0));
        let reason = ChargeReason::Compensated {
            cold: at(10.0),
            cold_at: celsius(10.0),
            hot: at(40.0),
            hot_at: celsius(40.0),
        };
        (reason, Source::BatteryMaker)
    };
    Setting::new(SettingCode::Compensation, value, reason, from)
}

fn window(case: Case) -> Setting {
    let (value, reason) = if case.figures.lithium {
        let value = match allowed(case.inputs) {
            Some((from_c, to_c)) => SettingValue::CellsBetween {
                from: celsius(from_c),
                to: celsius(to_c),
            },
            None => SettingValue::Never,
        };
        (value, ChargeReason::LithiumColdOrHot)
    } else {
        let value = SettingValue::NotFrozenAndBelow {
            temperature: celsius(MOST_LEAD_C),
        };
        let freezes_at = celsius(-10.0);
        (value, ChargeReason::LeadHotOrFrozen { freezes_at })
    };
    let code = SettingCode::Temperature;
    Setting::new(code, value, reason, Source::BatteryMaker)
}

fn equalising(case: Case) -> Setting {
    let f = case.figures;
    let (value, reason, from) = match case.inputs.bank.chemistry {
        Chemistry::Lfp => {
            let withstands = volts(f.high_v[2]);
            let reason = ChargeReason::LithiumIsBalanced { withstands };
            (SettingValue::Off, reason, Source::CommonPractice)
        }
        Chemistry::Agm | Chemistry::Gel => {
            let reason = ChargeReason::SealedBattery;
            (SettingValue::Off, reason, Source::CommonPractice)
        }
        Chemistry::Flooded => {
            let [shortest, longest] = EQUALISING_H.map(|h| Quantity::new(h, QuantityKind::Hours));
            let value = SettingValue::Equalise {
                voltage: volts(EQUALISING_V * f.blocks),
                temperature: celsius(25.0),
                shortest,
                longest,
                density_difference: count(DENSITY_DIFFERENCE).to(2),
            };
            (value, ChargeReason::EqualiseWithCare, Source::BatteryMaker)
        }
    };
    Setting::new(SettingCode::Equalising, value, reason, from)
}

/// What keeps lead alive; nothing for lithium.
fn upkeep(case: Case) -> Vec<Setting> {
    let (inputs, f) = (case.inputs, case.figures);
    let once = |period| SettingValue::Once { period };
    let mut settings = Vec::new();
    if !f.lithium {
        let reason = ChargeReason::Sulphates {
            full_below: amperes(f.tail_a),
        };
        settings.push(Setting::new(
            SettingCode::FullCharge,
            once(Period::Week),
            reason,
            Source::CommonPractice,
        ));
    }
    if inputs.bank.chemistry == Chemistry::Flooded {
        settings.push(Setting::new(
            SettingCode::Water,
            once(Period::Month),
            ChargeReason::PlatesCovered,
            Source::CommonPractice,
        ));
    }
    settings
}
