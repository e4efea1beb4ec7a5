//! The figures of this boat that stand in a step, and those at which to stop.

use serde::Serialize;

use crate::analysis::Part;
use crate::guidance::settings::SettingValue;
use crate::units::Quantity;

/// What a step says with this boat's figures.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum StepFigure {
    /// What the belts carry.
    BeltPower {
        /// The most.
        power: Quantity,
    },
    /// Where the sensor belongs, and what it reads when all is cold.
    Sensor {
        /// The part.
        on: Part,
        /// What the air does on the day of the worksheet.
        air: Quantity,
        /// Within this.
        within: Quantity,
    },
    /// The bank at rest where the run begins.
    AtRest {
        /// The voltage
        voltage: Quantity,
        /// at this state of charge.
        soc: Quantity,
    },
    /// Speeds while charging.
    Speeds {
        /// Of the engine.
        engine: Quantity,
        /// Of the alternator.
        shaft: Quantity,
    },
    /// What flows at the start.
    FirstCurrent {
        /// The current.
        current: Quantity,
        /// The bank is never above this.
        never_above: Quantity,
    },
    /// Voltage drop of both leads together.
    VoltageDrop {
        /// The most allowed.
        most: Quantity,
    },
    /// What the house draws.
    HouseLoad {
        /// The current.
        current: Quantity,
    },
    /// What the regulator shows of the battery's limits.
    SentLimits {
        /// The current limit at the worksheet's temperature.
        current: Quantity,
        /// The voltage limit; none where none is sent.
        voltage: Option<Quantity>,
    },
    /// What each of several packs takes.
    PackShares {
        /// The least part.
        least: Quantity,
        /// The most.
        most: Quantity,
        /// No pack takes more current than this.
        limit: Quantity,
    },
    /// What the regulator does with the data link's plug out.
    OnLinkLoss {
        /// Whether it is to stop; otherwise it goes on within these.
        stops: bool,
        /// The voltage.
        voltage: Quantity,
        /// The current.
        current: Quantity,
    },
    /// The voltage is held at this or less.
    HeldAtMost {
        /// The voltage.
        voltage: Quantity,
    },
    /// When the DC-DC charger comes on, and what it gives.
    DcDcCharger {
        /// From this voltage up.
        from: Quantity,
        /// The most it gives.
        most: Quantity,
    },
    /// The start battery with the engine running.
    StartBattery {
        /// The voltage.
        voltage: Quantity,
    },
    /// What the mains charger gives.
    ShoreCharger {
        /// The most current.
        current: Quantity,
        /// The most voltage.
        voltage: Quantity,
    },
    /// How empty the bank is at the beginning.
    BeginAt {
        /// At this state of charge or lower.
        soc: Quantity,
        /// Whether it fills before the half hour is over even so.
        fills_sooner: bool,
    },
    /// The engine's speed.
    EngineSpeed {
        /// The speed.
        engine: Quantity,
    },
    /// How far a lug may be above its own cable.
    LugAboveCable {
        /// The most.
        most: Quantity,
    },
    /// What the rectifier plate reaches after the engine has stopped.
    PlateAfterStop {
        /// The temperature.
        plate: Quantity,
    },
    /// The current to test with.
    SmallCurrent {
        /// Below this, a tenth of the rating.
        below: Quantity,
    },
    /// The steps of high voltage.
    HighVoltage {
        /// Warning.
        warning: Quantity,
        /// Charging off.
        charging_off: Quantity,
        /// The contactor opens.
        contactor: Quantity,
    },
    /// The most charge current by cell temperature.
    ByTemperature {
        /// The steps, coldest first.
        steps: Vec<SettingValue>,
    },
    /// The steps of low voltage.
    LowVoltage {
        /// Warning.
        warning: Quantity,
        /// Large loads off.
        loads_off: Quantity,
        /// All off, or the contactor opens.
        off: Quantity,
    },
    /// What the alternator should hold hot.
    HoldsHot {
        /// The current.
        hot: Quantity,
    },
    /// Spread of the cells.
    CellSpread {
        /// The most.
        most: Quantity,
    },
    /// How far densities may differ.
    DensitySpread {
        /// The most.
        most: Quantity,
    },
    /// When a lead bank is full.
    Full {
        /// Below this current
        below: Quantity,
        /// at this voltage.
        at: Quantity,
    },
    /// From which difference of densities on to equalise.
    EqualiseFrom {
        /// The difference.
        difference: Quantity,
    },
}

/// When to stop.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum StepStop {
    /// Stop the engine: the bank's voltage or a lug's temperature.
    BankOrLug {
        /// The bank's voltage.
        bank: Quantity,
        /// A lug's temperature.
        lug: Quantity,
    },
    /// Switch the charger off: the bank's voltage or temperature.
    BankVoltageOrTemperature {
        /// The bank's voltage.
        voltage: Quantity,
        /// The bank's temperature.
        temperature: Quantity,
    },
    /// Stop the hot run.
    HotRun {
        /// Of the case.
        case: Quantity,
        /// Of the rectifier plate.
        plate: Quantity,
        /// Of a lug.
        lug: Quantity,
        /// Of the engine's coolant.
        coolant: Quantity,
    },
    /// At this temperature of the winding.
    Winding {
        /// The temperature.
        winding: Quantity,
    },
    /// At this temperature of a lug.
    Lug {
        /// The temperature.
        lug: Quantity,
    },
    /// Stop charging at this temperature of the bank.
    Bank {
        /// The temperature.
        bank: Quantity,
    },
    /// Stop the engine if the current has not gone in time.
    CurrentRemains {
        /// The time.
        within: Quantity,
    },
}
