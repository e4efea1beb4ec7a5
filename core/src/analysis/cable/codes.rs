//! What a run is, what current it carries and what to know about it, as codes
//! with their figures.

use serde::Serialize;

use crate::schema::codes;

codes! {
    /// A run of cable. The names stay the same from version to version.
    RunCode {
        /// From the alternator to its battery.
        Alternator = "alternator",
        /// From the second alternator to its battery.
        SecondAlternator = "second_alternator",
        /// From the start battery to the DC-DC charger.
        ChargerIn = "converter_in",
        /// From the DC-DC charger to the house bank.
        ChargerOut = "converter_out",
        /// From the house bank to the switch panel.
        Bus = "bus",
        /// From the house bank to the inverter.
        Inverter = "inverter",
        /// From the house bank to the windlass.
        Windlass = "windlass",
        /// From the house bank to the thruster.
        Thruster = "thruster",
    }
}

codes! {
    /// Where a run begins or ends.
    RunEnd {
        /// The house bank.
        HouseBank = "house_bank",
        /// The start battery.
        StartBattery = "start_battery",
        /// The alternator.
        Alternator = "alternator",
        /// The second alternator.
        SecondAlternator = "second_alternator",
        /// The DC-DC charger.
        Charger = "dc_dc_charger",
        /// The switch panel.
        SwitchPanel = "switch_panel",
        /// The inverter.
        Inverter = "inverter",
        /// The windlass.
        Windlass = "windlass",
        /// The thruster.
        Thruster = "thruster",
    }
}

/// What current a run must carry.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Carries {
    /// What the alternator gives cold and at full field.
    ColdFullField {
        /// Engine speed \[rpm\].
        engine_rpm: f64,
    },
    /// The alternator's rating: at this speed it is too slow to give anything.
    Rating,
    /// The peak house load that is entered.
    PeakHouseLoad,
    /// What is taken for the peak house load: all of the list at once, at least 50 A.
    AssumedPeakHouseLoad,
    /// What the DC-DC charger takes.
    ChargerInput {
        /// Its rated output \[A\].
        output_a: f64,
        /// Voltage there \[V\].
        house_v: f64,
        /// Voltage of the start battery \[V\].
        start_v: f64,
        /// Its efficiency \[%\].
        efficiency_pct: f64,
    },
    /// The rated output of the DC-DC charger.
    ChargerOutput,
    /// What the inverter takes from a low bank.
    InverterInput {
        /// Its power \[W\].
        power_w: f64,
        /// Voltage of the low bank \[V\].
        low_v: f64,
        /// Its efficiency \[%\].
        efficiency_pct: f64,
    },
    /// What a motor draws at full load.
    MotorFullLoad,
}

/// What else to know about a run.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum RunNote {
    /// The regulator's current cap is not relied on.
    CapNotCounted {
        /// The cap \[A\].
        cap_a: f64,
    },
    /// The DC-DC charger limits its own current, the bank does not.
    ChargerLimitsItself,
    /// The fuse is larger than the cable's ampacity, which another flag's rule
    /// may not allow.
    FuseAboveAmpacity {
        /// The fuse \[A\].
        fuse_a: f64,
        /// Ampacity of one cable \[A\].
        ampacity_a: f64,
        /// Its size.
        size: &'static str,
    },
    /// A motor that runs for minutes is counted as if it ran on and on.
    ShortDuty {
        /// How long it runs at a time \[min\].
        minutes: f64,
    },
    /// The motor's maker names its fuse.
    FuseByMotorMaker,
    /// A lithium bank's management system must let the motor's current out.
    BankMustGive {
        /// The motor's current \[A\].
        motor_a: f64,
        /// The most the house draws beside it \[A\].
        house_a: f64,
    },
    /// Several cables side by side must be alike.
    ParallelAlike,
    /// The regulator should sense the voltage at the bank.
    SenseAtBank {
        /// Voltage drop along the lead \[V\].
        drop_v: f64,
    },
}

/// Whether the alternator's end of its lead wants a fuse of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum AlternatorFuse {
    /// Not where the lead is sheathed: it is short, and the alternator limits its
    /// own current.
    NotNeeded,
    /// Common practice wants one: the lead is longer than 40 in.
    Wanted,
}

/// How the figures differ from those of the tables.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum CableRemark {
    /// The engine space is hotter than the table's.
    HotEngineSpace {
        /// Air in it \[°C\].
        air_c: f64,
        /// Air of the table \[°C\].
        table_c: f64,
        /// Share of the table's ampacity that is left \[%\].
        factor_pct: f64,
    },
    /// A run works at 50 V or more, where the rule is stricter.
    HighVoltage,
}
