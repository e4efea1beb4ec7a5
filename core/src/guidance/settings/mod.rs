//! What to set in every device of the arrangement, in neutral trade terms,
//! each with its reason and with who has the last word on it. Not part of the
//! report: it is asked for by itself.
//!
//! A setting is a code, a value and a reason, each with its quantities; its
//! sentences stand in `text::settings`. `figures` has the numbers, with `steps`
//! (low and high voltage) and `cap` (an alternator's current); the other files
//! each have the settings of one subject and the reasons for them. They hold for
//! a season, not for one cold morning. The link and the date belong to the page
//! that shows or prints it.

mod alternator;
mod amount;
mod built_in;
mod cap;
mod charge;
mod charger;
mod closed_packs;
mod code;
mod converter;
mod external;
mod figures;
mod link;
mod low_voltage;
mod management;
mod reason;
mod start_battery;
mod steps;
mod temperature;
#[cfg(test)]
mod tests;
mod value;

use serde::Serialize;

use crate::boat::{Inputs, Key, RegulatorKind, WayKind, Worksheet};
use crate::guidance::{MakerQuestion, maker_questions};
use crate::report::Report;
use crate::units::Quantity;

pub use alternator::AlternatorReason;
pub use built_in::BuiltInReason;
pub use charge::ChargeReason;
pub use charger::ChargerReason;
pub use code::{GroupCode, SettingCode};
pub use converter::ConverterReason;
pub use external::RegulatorReason;
pub(crate) use figures::{Figures, sensor_part, set_point};
pub use low_voltage::LowVoltageReason;
pub use management::ManagementReason;
pub use reason::SettingReason;
pub use start_battery::StartBatteryReason;
pub(crate) use temperature::cell_steps;
pub use temperature::{CellTemperatureReason, CurrentInTheCold};
pub use value::{ChargingOff, FieldCut, Period, SettingValue, StartBatterySource, Terminals};

/// What to set, device by device.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Settings {
    /// Those that the arrangement has, in the order to set them.
    pub groups: Vec<Group>,
    /// What to ask the makers of battery and regulator before buying.
    pub ask: Vec<MakerQuestion>,
}

/// The settings of one device.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Group {
    /// The device.
    #[serde(flatten)]
    pub device: Device,
    /// Its settings.
    pub settings: Vec<Setting>,
}

/// What a group of settings is made in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Device {
    /// Everything that charges the house bank.
    Charge {
        /// Whether solar panels do too.
        with_solar: bool,
    },
    /// Everything that charges a lithium bank, by the temperature of its cells.
    ByTemperature,
    /// The external regulator.
    Regulator,
    /// The built-in regulator.
    BuiltIn,
    /// The second alternator's regulator.
    Second,
    /// A DC-DC charger.
    Converter {
        /// What it charges.
        charges: Charged,
    },
    /// The battery management system of a lithium bank.
    Management,
    /// A battery management system that nobody can set: closed (drop-in) packs.
    #[serde(rename = "management")]
    ClosedPacks,
    /// A lead bank's alarm and switch.
    LowVolts,
    /// The charger on shore power or a generator.
    ShoreCharger,
    /// The start battery.
    StartBattery,
}

/// Which battery a DC-DC charger charges.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Charged {
    /// The house bank, from the start battery.
    HouseBank,
    /// The start battery, from the house bank.
    StartBattery,
}

/// One setting.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Setting {
    /// Which one, within its group.
    pub code: SettingCode,
    /// What to set.
    pub value: SettingValue,
    /// Why.
    pub reason: SettingReason,
    /// Who says so.
    pub from: Source,
}

/// Who has the last word on a setting.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// This input of the worksheet.
    Worksheet(Key),
    /// Calculated from the worksheet.
    Calculated,
    /// The battery maker's sheet: what stands here, if anything, only serves
    /// until it is at hand.
    BatteryMaker,
    /// Common practice, no source.
    CommonPractice,
}

impl Device {
    /// The name of its group.
    pub const fn code(self) -> GroupCode {
        match self {
            Device::Charge { .. } => GroupCode::Charge,
            Device::ByTemperature => GroupCode::ByTemperature,
            Device::Regulator => GroupCode::Regulator,
            Device::BuiltIn => GroupCode::BuiltIn,
            Device::Second => GroupCode::Second,
            Device::Converter { .. } => GroupCode::Converter,
            Device::Management | Device::ClosedPacks => GroupCode::Management,
            Device::LowVolts => GroupCode::LowVolts,
            Device::ShoreCharger => GroupCode::ShoreCharger,
            Device::StartBattery => GroupCode::StartBattery,
        }
    }
}

impl Group {
    /// Its name.
    pub const fn code(&self) -> GroupCode {
        self.device.code()
    }

    /// Its setting of a name; none where it has no such setting.
    pub fn setting(&self, code: SettingCode) -> Option<&Setting> {
        self.settings.iter().find(|setting| setting.code == code)
    }
}

impl Settings {
    /// A group; none where the boat has no such device.
    pub fn group(&self, code: GroupCode) -> Option<&Group> {
        self.groups.iter().find(|group| group.code() == code)
    }

    /// A setting; none where there is no such one.
    pub fn setting(&self, group: GroupCode, code: SettingCode) -> Option<&Setting> {
        self.group(group)?.setting(code)
    }
}

impl Setting {
    fn new(
        code: SettingCode,
        value: SettingValue,
        reason: impl Into<SettingReason>,
        from: Source,
    ) -> Setting {
        Setting {
            code,
            value,
            reason: reason.into(),
            from,
        }
    }

    /// The figure to set, where one stands for the whole.
    pub const fn figure(&self) -> Option<Quantity> {
        self.value.figure()
    }

    /// That figure in the unit of its kind.
    pub fn number(&self) -> Option<f64> {
        self.figure().map(|figure| figure.value)
    }
}

/// What the groups are made from.
#[derive(Clone, Copy)]
struct Case<'a> {
    inputs: &'a Inputs,
    report: &'a Report,
    figures: &'a Figures,
    /// Peak house load \[A\].
    peak_house_a: f64,
}

/// Works out what to set.
pub fn settings(sheet: &Worksheet, report: &Report) -> Settings {
    let inputs = &sheet.inputs;
    let figures = &Figures::of(sheet);
    let case = Case {
        inputs,
        report,
        figures,
        peak_house_a: sheet.bus_peak_a(),
    };
    let mut groups = vec![charge::charge(case)];
    if figures.lithium {
        groups.push(temperature::by_temperature(case));
    }
    if inputs.engine_charges() {
        groups.push(match inputs.reg.kind {
            RegulatorKind::External => external::regulator(case),
            RegulatorKind::Internal => built_in::built_in(case),
        });
        groups.extend(built_in::second(case));
        if inputs.way.kind == WayKind::Converter {
            groups.push(converter::to_house(case));
        } else if inputs.feeds_start_back() {
            groups.push(converter::to_start(case));
        }
    }
    groups.push(match (figures.lithium, inputs.packs_closed()) {
        (true, true) => closed_packs::closed_packs(case),
        (true, false) => management::management(case),
        (false, _) => low_voltage::low_voltage(case),
    });
    if inputs.mains_charger_a() > 0.0 {
        groups.push(charger::shore_charger(case));
    }
    groups.push(start_battery::start_battery(case));
    Settings {
        groups,
        ask: maker_questions(inputs),
    }
}
