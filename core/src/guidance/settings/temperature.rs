//! The most charge current of a lithium bank by the temperature of its cells.

use serde::Serialize;

use crate::boat::{ChargeStep, Inputs, WayKind};
use crate::guidance::settings::amount::set_a;
use crate::guidance::settings::{Case, Device, Group, Setting, SettingCode, SettingValue, Source};
use crate::units::Quantity;
use crate::units::quantity::{celsius, count};

/// Why a bank may take so much at a temperature of its cells.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum CellTemperatureReason {
    /// Nothing may charge.
    AllStops,
    /// The bank's own limit holds.
    OwnLimit {
        /// Current for each ampere hour of capacity \[1/h\].
        rate: Quantity,
        /// What to set all together to, so that the other packs hold when one
        /// opens; none where the limit itself may be set.
        #[serde(skip_serializing_if = "Option::is_none")]
        set: Option<Quantity>,
    },
    /// Less than the bank's own limit, for the first time in the table.
    FirstLess {
        /// Current for each ampere hour of capacity \[1/h\].
        rate: Quantity,
        /// What sees to it.
        held_by: CurrentInTheCold,
    },
    /// Less than the bank's own limit.
    Less {
        /// Current for each ampere hour of capacity \[1/h\].
        rate: Quantity,
    },
}

/// What sees to it that a cold or hot bank gets less.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum CurrentInTheCold {
    /// The battery tells the regulator over a data link.
    DataLink,
    /// Nothing: the mains charger is set by hand.
    ChargerByHand,
    /// Nothing: the regulator is set by hand.
    RegulatorByHand,
    /// A signal that only stops: the regulator is set by hand.
    RegulatorByHandOrStopped,
    /// Nothing: the DC-DC charger is set by hand.
    DcDcChargerByHand,
}

/// The coldest and the hottest that cells may be charged at \[°C\]; none where
/// nothing is allowed at all.
pub(super) fn allowed(inputs: &Inputs) -> Option<(f64, f64)> {
    let rows = inputs.charge_ladder();
    let mut open = rows.iter().filter(|row| row.amperes > 0.0);
    let first = open.next()?;
    let last = open.next_back().unwrap_or(first);
    first.from_c.zip(last.to_c)
}

/// A step as it is set.
fn cell_step(step: &ChargeStep) -> SettingValue {
    SettingValue::CellStep {
        from: step.from_c.map(celsius),
        to: step.to_c.map(celsius),
        most: (step.amperes > 0.0).then(|| set_a(step.amperes)),
    }
}

/// Every step, coldest first; none for lead.
pub(crate) fn cell_steps(inputs: &Inputs) -> Vec<SettingValue> {
    inputs.charge_ladder().iter().map(cell_step).collect()
}

/// A step's name: where it ends.
fn code(step: &ChargeStep) -> SettingCode {
    match (step.from_c, step.to_c) {
        (None, _) => SettingCode::Frost,
        (_, None) => SettingCode::Hot,
        (_, Some(to_c)) if to_c <= 5.0 => SettingCode::To5,
        (_, Some(to_c)) if to_c <= 10.0 => SettingCode::To10,
        (_, Some(to_c)) if to_c <= 50.0 => SettingCode::To50,
        _ => SettingCode::To60,
    }
}

/// The table, coldest first.
pub(super) fn by_temperature(case: Case) -> Group {
    let own_a = case.figures.bank_limit_a;
    let rows = case.inputs.charge_ladder();
    let less = |row: &&ChargeStep| row.amperes > 0.0 && row.amperes < own_a;
    let first_less = rows.iter().find(less).copied();
    let settings = rows
        .iter()
        .map(|row| setting(case, row, first_less == Some(*row)))
        .collect();
    Group {
        device: Device::ByTemperature,
        settings,
    }
}

fn setting(case: Case, row: &ChargeStep, first_less: bool) -> Setting {
    let (inputs, f) = (case.inputs, case.figures);
    let rate = count(row.amperes / inputs.bank.capacity_ah).to(2);
    let (reason, from) = if row.amperes <= 0.0 {
        (CellTemperatureReason::AllStops, Source::BatteryMaker)
    } else if row.amperes >= f.bank_limit_a {
        let one_out = f.setting_limit_a < f.bank_limit_a;
        let set = one_out.then(|| set_a(f.setting_limit_a));
        (CellTemperatureReason::OwnLimit { rate, set }, f.limit_from)
    } else if first_less {
        let held_by = held_by(inputs);
        let reason = CellTemperatureReason::FirstLess { rate, held_by };
        (reason, Source::BatteryMaker)
    } else {
        let reason = CellTemperatureReason::Less { rate };
        (reason, Source::BatteryMaker)
    };
    Setting::new(code(row), cell_step(row), reason, from)
}

fn held_by(inputs: &Inputs) -> CurrentInTheCold {
    match (inputs.engine_charges(), inputs.way.kind) {
        (true, _) if inputs.limit_linked() => CurrentInTheCold::DataLink,
        (false, _) => CurrentInTheCold::ChargerByHand,
        (true, WayKind::Direct) if inputs.field_off_first() => {
            CurrentInTheCold::RegulatorByHandOrStopped
        }
        (true, WayKind::Direct) => CurrentInTheCold::RegulatorByHand,
        (true, WayKind::Converter) => CurrentInTheCold::DcDcChargerByHand,
    }
}
