//! Whether the bank's management system opens while the engine charges.

mod find;

use serde::Serialize;

use crate::analysis::load_dump::VoltageRange;
use crate::boat::WhichAlternator;
use crate::findings::{Code, Severity};

pub(super) use find::{less_voltage, management_findings};

/// The bank's management system disconnects it, or may.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ManagementFinding {
    /// It disconnects the bank in the run.
    ManagementOpens(ManagementOpens),
    /// The current stays within the bank's limit only while the house draws its part.
    LimitHeldByLoads {
        /// What the bank may take \[A\].
        limit_a: f64,
        /// What the house draws \[A\].
        house_a: f64,
        /// What flows into the bank with nothing drawn \[A\].
        without_a: f64,
        /// What to do.
        remedy: LessCurrent,
    },
}

/// How the management system disconnects the bank in the run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ManagementOpens {
    /// Time after the start \[s\].
    pub after_s: f64,
    /// Temperature of the bank \[°C\].
    pub bank_c: f64,
    /// Why, and what to do.
    pub cause: OpensFor,
    /// Whether the field is off before anything opens: by the charge-disable
    /// signal, or over a data link.
    pub field_off_first: bool,
    /// The alternators that lose their load by it; none where each keeps a battery,
    /// and where the field is off first.
    pub load_lost: Option<LoadLost>,
}

/// Why the management system disconnects the bank, and what to do.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "why", rename_all = "snake_case")]
pub enum OpensFor {
    /// More current flows than the bank may take.
    OverCurrent {
        /// What flows into it \[A\].
        bank_a: f64,
        /// What it may take \[A\].
        limit_a: f64,
        /// Whether its temperature limits that.
        by_temperature: bool,
        /// Packs that share the current, though not alike; 1 for a single one.
        packs: usize,
        /// Why nothing holds the current to the limit.
        not_held_by: NotHeldBy,
        /// What to do.
        remedy: LessCurrent,
    },
    /// Its cells are charged too high.
    OverVoltage {
        /// Voltage of the bank \[V\].
        bank_v: f64,
        /// What to do.
        remedy: LessVoltage,
    },
    /// Its cells are too cold.
    Cold {
        /// Coldest at which it may be charged \[°C\].
        coldest_c: f64,
    },
    /// Its cells are too hot.
    Hot,
}

/// Why nothing holds the current to a bank's limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NotHeldBy {
    /// A DC-DC charger gives what it is set to.
    Charger,
    /// A built-in regulator holds a voltage only.
    BuiltInRegulator,
    /// The current cap is too high.
    CurrentCap,
    /// The regulator has neither data link nor current cap.
    RegulatorWithoutLink,
    /// A charge-disable signal says stop, and not how much.
    SignalOnly,
    /// Drop-in packs tell nobody what they may take.
    ClosedPacks,
}

/// How to keep the current within a bank's limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "what", rename_all = "snake_case")]
pub enum LessCurrent {
    /// Bring the bank to a better temperature, or follow its limit.
    BetterTemperature {
        /// Whether it is too cold; too hot otherwise.
        cold: bool,
        /// Most to set as it is \[A\].
        set_a: f64,
        /// Whether the bank could tell a regulator its limit over a data link.
        by_link: bool,
    },
    /// Set the DC-DC charger lower.
    SetCharger {
        /// To so much or less \[A\].
        set_a: f64,
    },
    /// Set the DC-DC charger and the second alternator lower.
    SetChargerAndSecond {
        /// To so much or less together \[A\].
        set_a: f64,
    },
    /// Set a current cap.
    SetCap {
        /// So much for each alternator \[A\].
        set_a: f64,
        /// Whether there are two on the bank.
        each: bool,
        /// Whether the bank could tell the regulator its limit over a data link.
        by_link: bool,
    },
    /// Fit an external regulator with a current cap, or a DC-DC charger.
    FitRegulator {
        /// So much for each alternator \[A\].
        set_a: f64,
        /// Whether there are two on the bank.
        each: bool,
        /// A DC-DC charger of at most so much \[A\].
        charger_a: f64,
    },
}

/// How to keep lithium cells from being charged too high.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "what", rename_all = "snake_case")]
pub enum LessVoltage {
    /// A built-in regulator cannot be set.
    FitRegulator {
        /// The usual charge voltage \[V\].
        usual_v: f64,
    },
    /// Set the charge voltage, and switch temperature compensation off.
    SetWithoutCompensation {
        /// The usual charge voltage \[V\].
        usual_v: f64,
    },
    /// Set the charge voltage.
    Set {
        /// The usual charge voltage \[V\].
        usual_v: f64,
    },
}

/// Alternators that lose their load when the bank disconnects.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LoadLost {
    /// Whether both alternators do.
    pub both: bool,
    /// The one with the higher spike.
    pub alternator: WhichAlternator,
    /// Current that is cut off, of all of them \[A\].
    pub lost_a: f64,
    /// The voltage spike in the run, without protection.
    pub spike: VoltageRange,
    /// Engine speed of that \[rpm\].
    pub engine_rpm: f64,
    /// The voltage spike with the engine at its highest, where it is higher.
    pub top_spike: Option<VoltageRange>,
    /// The engine's highest speed \[rpm\].
    pub top_rpm: f64,
    /// What the protection that is entered leaves \[V\]; none where it leaves all.
    pub left_v: Option<f64>,
    /// What electronics withstand for a moment \[V\].
    pub withstand_v: f64,
}

impl ManagementFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            ManagementFinding::ManagementOpens(opens) if opens.field_off_first => Severity::Fix,
            ManagementFinding::ManagementOpens(_) => Severity::Danger,
            ManagementFinding::LimitHeldByLoads { .. } => Severity::Fix,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            ManagementFinding::ManagementOpens(_) => Code::ManagementOpens,
            ManagementFinding::LimitHeldByLoads { .. } => Code::LimitHeldByLoads,
        }
    }
}
