//! Whether the daily engine runs put back what the boat uses, and how low the
//! bank gets.

mod find;

use serde::Serialize;

use crate::boat::Chemistry;
use crate::findings::{Code, Severity};

pub(super) use find::day_findings;

/// The daily engine runs are not enough, or the bank gets too low.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum DayFinding {
    /// Nothing goes into the bank at its target.
    CannotBeCharged(NotCharged),
    /// The management system disconnects the bank on the daily run.
    DayDisconnects,
    /// A whole day of engine does not put back what is used.
    DayNotCovered(NotCovered),
    /// The bank is empty before the next run, however often the engine runs.
    BankTooSmall {
        /// What it holds \[A·h\].
        capacity_ah: f64,
        /// What a day takes \[A·h\].
        need_ah: f64,
    },
    /// The engine has to be run several times a day.
    SeveralRunsADay {
        /// What the bank holds \[A·h\].
        capacity_ah: f64,
        /// So many runs a day.
        runs: u32,
        /// Each of them \[h\].
        run_hours: f64,
        /// A bank that needs one run a day \[A·h\]; none where none does.
        one_run_ah: Option<f64>,
    },
    /// The bank falls below the lowest state of charge wanted.
    DayBelowWindow {
        /// What the bank is made of.
        chemistry: Chemistry,
        /// State of charge before each run \[%\].
        from_pct: f64,
        /// Lowest wanted \[%\].
        low_pct: f64,
        /// What to do.
        remedy: BelowWindowRemedy,
    },
}

/// Why nothing goes into the bank.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "why", rename_all = "snake_case")]
pub enum NotCharged {
    /// It may get no current at its temperature.
    Temperature {
        /// Its temperature \[°C\].
        bank_c: f64,
    },
    /// The charge voltage is too low for the target.
    ChargeVoltage {
        /// What the bank is made of.
        chemistry: Chemistry,
        /// Charge voltage \[V\].
        charge_v: f64,
        /// What is usual for such a bank \[V\].
        usual_v: f64,
        /// State of charge it gets to \[%\].
        ends_pct: f64,
        /// State of charge wanted \[%\].
        target_pct: f64,
    },
}

/// Why a day's use is not put back.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "why", rename_all = "snake_case")]
pub enum NotCovered {
    /// The boat draws all that reaches the house side.
    NothingLeft {
        /// What it draws while the engine runs \[A\].
        house_a: f64,
    },
    /// More than a day of engine is needed.
    TooSlow {
        /// What a day takes \[A·h\].
        need_ah: f64,
        /// State of charge wanted \[%\].
        target_pct: f64,
    },
}

/// How to keep the bank above the lowest state of charge wanted.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "what", rename_all = "snake_case")]
pub enum BelowWindowRemedy {
    /// More runs, a larger bank, panels, or less use.
    MoreRunsOrLargerBank {
        /// So many runs a day; none where that is more than is reasonable.
        runs: Option<f64>,
        /// A bank of so much \[A·h\].
        capacity_ah: f64,
    },
    /// The charge target is no higher than the lowest wanted.
    ChargeHigher {
        /// The target \[%\].
        target_pct: f64,
    },
}

impl DayFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            DayFinding::CannotBeCharged(_)
            | DayFinding::DayDisconnects
            | DayFinding::DayNotCovered(_)
            | DayFinding::BankTooSmall { .. } => Severity::Danger,
            DayFinding::SeveralRunsADay { .. } | DayFinding::DayBelowWindow { .. } => Severity::Fix,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            DayFinding::CannotBeCharged(_) => Code::CannotBeCharged,
            DayFinding::DayDisconnects => Code::DayDisconnects,
            DayFinding::DayNotCovered(_) => Code::DayNotCovered,
            DayFinding::BankTooSmall { .. } => Code::BankTooSmall,
            DayFinding::SeveralRunsADay { .. } => Code::SeveralRunsADay,
            DayFinding::DayBelowWindow { .. } => Code::DayBelowWindow,
        }
    }
}
