//! What is to be set.

use serde::Serialize;

use crate::analysis::Part;
use crate::units::Quantity;

/// What is to be set.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum SettingValue {
    /// There is no such setting, or it stays off.
    Off,
    /// Just this.
    Exactly {
        /// The figure.
        quantity: Quantity,
    },
    /// This or more.
    AtLeast {
        /// The figure.
        quantity: Quantity,
    },
    /// This or less.
    AtMost {
        /// The figure.
        quantity: Quantity,
    },
    /// Less than can be set.
    LessThan {
        /// The figure.
        quantity: Quantity,
    },
    /// A voltage where it is measured.
    VoltageAt {
        /// The voltage.
        voltage: Quantity,
        /// Where it is measured.
        at: Terminals,
    },
    /// No float, or this at most where the device must have one.
    FloatIfAny {
        /// The most.
        at_most: Quantity,
    },
    /// Once the current into the bank is below this, or after a time.
    BelowOrAfter {
        /// The current.
        current: Quantity,
        /// The time.
        time: Quantity,
    },
    /// Compensation for each cell and for the whole bank; both 0 for none.
    Compensation {
        /// Of each cell.
        cell: Quantity,
        /// Of the whole bank.
        bank: Quantity,
    },
    /// With the cells between two temperatures.
    CellsBetween {
        /// From here
        from: Quantity,
        /// to here.
        to: Quantity,
    },
    /// At no temperature.
    Never,
    /// Above freezing and below a temperature.
    NotFrozenAndBelow {
        /// The temperature.
        temperature: Quantity,
    },
    /// Now and then to a voltage, for a time, or when the cells differ.
    Equalise {
        /// The voltage.
        voltage: Quantity,
        /// At this temperature.
        temperature: Quantity,
        /// For this long at least.
        shortest: Quantity,
        /// For this long at most.
        longest: Quantity,
        /// Or when the densities of the cells differ by so much.
        density_difference: Quantity,
    },
    /// Once in a period.
    Once {
        /// The period.
        period: Period,
    },
    /// As for the house bank.
    AsHouseBank,
    /// As for the first alternator.
    AsFirstAlternator,
    /// By the charge-disable signal of the battery management system.
    ChargeDisableSignal,
    /// What the battery sends over its data link is followed.
    FollowLink {
        /// Whether a voltage limit is sent beside the current limit.
        volts: bool,
    },
    /// To stop charging.
    StopCharging,
    /// To go on within a voltage and a current.
    GoOnWithin {
        /// The voltage.
        voltage: Quantity,
        /// The current.
        current: Quantity,
    },
    /// A surge suppressor at the alternator, or a lead battery that stays on it.
    ProtectAlternator,
    /// A fuse: its rating, and what it must be able to break; none where none is
    /// sold or built for it.
    Fuse {
        /// The rating.
        rating: Option<Quantity>,
        /// What it must be able to break.
        breaks: Option<Quantity>,
    },
    /// Not connected to the house bank.
    OffTheHouseBank,
    /// At the bank's terminals, by a wire of its own.
    SensedAtBank,
    /// A temperature limit and the part the sensor sits on.
    TemperatureLimit {
        /// The limit.
        limit: Quantity,
        /// The part the sensor sits on.
        sensor: Part,
    },
    /// Nothing limits the temperature.
    NoTemperatureLimit,
    /// Full field to none across a range.
    Derating {
        /// How wide it is.
        range: Quantity,
    },
    /// Part of the field below a speed of the shaft and of the engine.
    FieldBelow {
        /// The most field.
        field: Quantity,
        /// The speed of the shaft.
        shaft: Quantity,
        /// The speed of the engine.
        engine: Quantity,
    },
    /// Part of the field for a time from the engine's start, or while a switch is on.
    FieldFor {
        /// The most field.
        field: Quantity,
        /// The time; none for a switch at the helm.
        time: Option<Quantity>,
    },
    /// A time to full field.
    FullFieldAfter {
        /// The time.
        time: Quantity,
    },
    /// Missing on this device.
    NotFitted,
    /// A voltage of the whole bank and of each cell.
    CellVoltage {
        /// Of the whole bank.
        bank: Quantity,
        /// Of each cell.
        cell: Quantity,
    },
    /// A voltage of the whole bank and of each cell, and what is switched off then.
    ChargingOff {
        /// Of the whole bank.
        bank: Quantity,
        /// Of each cell.
        cell: Quantity,
        /// What is switched off.
        acts: ChargingOff,
    },
    /// A voltage of the whole bank and of each cell, at which the contactor opens some
    /// time after the step before.
    ContactorOpens {
        /// Of the whole bank.
        bank: Quantity,
        /// Of each cell.
        cell: Quantity,
        /// After this at the soonest
        soonest: Quantity,
        /// and this at the latest.
        latest: Quantity,
    },
    /// A voltage that has lasted for a time.
    VoltageFor {
        /// The voltage.
        voltage: Quantity,
        /// The time.
        time: Quantity,
    },
    /// A voltage, and a wait.
    VoltageAfter {
        /// The voltage.
        voltage: Quantity,
        /// The wait.
        wait: Quantity,
    },
    /// To be asked of the battery maker.
    AskBatteryMaker,
    /// Most current with the cells from a temperature, up to one; none for
    /// "however cold", "however hot" and "no charging".
    CellStep {
        /// From here
        from: Option<Quantity>,
        /// to here.
        to: Option<Quantity>,
        /// The most current.
        most: Option<Quantity>,
    },
    /// What charges the start battery.
    ChargedBy {
        /// The source.
        source: StartBatterySource,
    },
    /// Open, and closed by hand for a start only.
    OpenButForAStart,
    /// With the engine running, or while the house bank is charged.
    WithEngineOrCharging,
}

/// Where a voltage is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Terminals {
    /// At the terminals of the house bank.
    HouseBank,
    /// At the start battery.
    StartBattery,
}

/// How often something is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Period {
    /// Every week.
    Week,
    /// Every month.
    Month,
}

/// What the second step of high voltage switches off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct ChargingOff {
    /// How the field of an alternator that charges the bank directly is cut.
    pub field: Option<FieldCut>,
    /// Whether a DC-DC charger charges the bank.
    pub dc_dc_charger: bool,
}

/// How a field is cut.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FieldCut {
    /// At an input of the external regulator.
    AtRegulator,
    /// By a relay, as a built-in regulator has no such input.
    ByRelay,
}

/// What charges the start battery.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum StartBatterySource {
    /// The mains charger, and an alternator when the engine runs.
    ShoreChargerOrAlternator,
    /// The alternator before the DC-DC charger.
    Alternator,
    /// The alternator through what joins both banks.
    WithHouseBank,
    /// The DC-DC charger from the house bank.
    DcDcCharger,
    /// The second alternator.
    SecondAlternator,
    /// Something the worksheet does not name.
    NotGiven,
}
