//! Why nothing can be learnt from a log.

use std::fmt;

use serde::Serialize;

/// Why a log gives no fit.
///
/// The sentence for the user is [`crate::text::calibration::refusal`]; `Display`
/// gives a short line for logs and programs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Refusal {
    /// Too few readings.
    FewReadings {
        /// How many there are.
        count: usize,
        /// How many are needed.
        least: usize,
    },
    /// A time is earlier than the one before.
    TimesFall {
        /// Line of the text, from 1.
        line: usize,
        /// Its time \[min\].
        minute: f64,
        /// The time before \[min\].
        before: f64,
    },
    /// The readings span too short a time.
    TooShort {
        /// How long it is \[min\].
        minutes: f64,
        /// How long it has to be \[min\].
        least: f64,
    },
    /// Too few readings of the case, or none.
    NoCase,
    /// No reading of the current.
    NoAmps,
    /// The alternator gave less than an ampere on average.
    NoCurrent,
    /// The mean speed is none that an engine charges at, or an alternator turns at.
    WrongSpeed {
        /// Mean of the readings \[rpm\].
        rpm: f64,
        /// Whether it should be the alternator's own.
        shaft: bool,
    },
    /// The speed was not steady.
    SpeedWanders {
        /// Standard deviation \[rpm\].
        deviation_rpm: f64,
        /// Mean \[rpm\].
        mean_rpm: f64,
        /// Largest deviation, as a share of the mean.
        most: f64,
    },
    /// The case neither warmed up nor stood above the air.
    NoHeat,
    /// No plausible cooling explains the readings.
    Cooling {
        /// Whether it would have to be better than on the worksheet, or worse.
        better: bool,
    },
    /// No plausible heat capacity explains the readings.
    HeatCapacity {
        /// Whether the case warms too slowly for it, or too fast.
        slow: bool,
    },
    /// The model does not follow the readings.
    Misses {
        /// Root mean square of what it misses them by \[K\].
        residual_k: f64,
    },
    /// The readings tell neither the cooling nor the heat capacity.
    Untold,
}

impl Refusal {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            Refusal::FewReadings { .. } => "few_readings",
            Refusal::TimesFall { .. } => "times_fall",
            Refusal::TooShort { .. } => "too_short",
            Refusal::NoCase => "no_case",
            Refusal::NoAmps => "no_amps",
            Refusal::NoCurrent => "no_current",
            Refusal::WrongSpeed { .. } => "wrong_speed",
            Refusal::SpeedWanders { .. } => "speed_wanders",
            Refusal::NoHeat => "no_heat",
            Refusal::Cooling { .. } => "cooling",
            Refusal::HeatCapacity { .. } => "heat_capacity",
            Refusal::Misses { .. } => "misses",
            Refusal::Untold => "untold",
        }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Refusal::FewReadings { count, least } => write!(f, "{count} of {least} readings"),
            Refusal::TimesFall {
                line,
                minute,
                before,
            } => write!(f, "line {line}: minute {minute} after {before}"),
            Refusal::TooShort { minutes, least } => write!(f, "{minutes} of {least} min"),
            Refusal::NoCase => f.write_str("no case temperature"),
            Refusal::NoAmps => f.write_str("no current"),
            Refusal::NoCurrent => f.write_str("current is 0 A"),
            Refusal::WrongSpeed { rpm, .. } => write!(f, "mean speed {rpm} rpm"),
            Refusal::SpeedWanders {
                deviation_rpm,
                mean_rpm,
                ..
            } => write!(f, "speed {mean_rpm} ± {deviation_rpm} rpm"),
            Refusal::NoHeat => f.write_str("case does not warm up"),
            Refusal::Cooling { .. } => f.write_str("cooling out of bounds"),
            Refusal::HeatCapacity { .. } => f.write_str("heat capacity out of bounds"),
            Refusal::Misses { residual_k } => write!(f, "residual {residual_k} K"),
            Refusal::Untold => f.write_str("neither cooling nor heat capacity is told"),
        }
    }
}

impl std::error::Error for Refusal {}
