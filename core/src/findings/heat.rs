//! Whether anything gets too hot.

mod find;

use serde::Serialize;

use crate::analysis::Part;
use crate::boat::WhichAlternator;
use crate::findings::{Code, Severity};

pub(super) use find::{heat_findings, remedy};

/// An alternator that nothing holds back is put right as long as its hottest
/// part comes nearer to its limit than this \[K\]; further away it is only to be
/// known. Own reasoning: a warmer day takes that much; on lithium, which takes all
/// it gives for hours, also what nobody knows of its cooling.
const UNWATCHED_K: f64 = 10.0;
const UNWATCHED_ON_LITHIUM_K: f64 = 30.0;
/// A part this far beyond its limit is in danger \[K\]. Own reasoning.
const FAR_BEYOND_K: f64 = 10.0;
/// Nearer than this to the case's limit a temperature limit for the case leaves
/// it next to nothing \[K\]. Own reasoning.
pub(crate) const SET_POINT_ROOM_K: f64 = 5.0;

/// Air that electrical equipment in an engine room is made for \[°C\]: 46 CFR
/// 111.01-15.
pub(crate) const ROOM_C: f64 = 50.0;

/// Something gets too hot.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum HeatFinding {
    /// Nothing limits the temperature of an alternator straight on the house bank.
    NothingWatchesHeat {
        /// Which alternator.
        alternator: WhichAlternator,
        /// Whether a lithium bank takes all it gives.
        lithium: bool,
        /// Where it settles; none when it never does.
        settled: Option<Settled>,
        /// What its winding withstands for long \[°C\].
        limit_c: f64,
        /// How far below its limit its hottest part stays \[K\].
        margin_k: f64,
    },
    /// The winding passes its limit.
    WindingTooHot(PartTooHot),
    /// The rectifier plate passes its limit.
    RectifierTooHot(PartTooHot),
    /// The case passes its limit.
    CaseTooHot(PartTooHot),
    /// A part comes near its limit without passing it.
    NearLimit {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// Which part.
        part: Part,
        /// How hot it gets \[°C\].
        hottest_c: f64,
        /// Whether that is the most it may be, as nobody has measured it.
        at_most: bool,
        /// What it withstands for long \[°C\].
        limit_c: f64,
        /// What to do.
        remedy: HeatRemedy,
    },
    /// A sensor on the case feels the winding's heat late.
    CaseSensorLags {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// Highest temperature of the winding \[°C\].
        winding_c: f64,
        /// What the winding withstands for long \[°C\].
        limit_c: f64,
        /// The temperature limit the regulator holds \[°C\].
        set_point_c: f64,
    },
    /// The regulator's temperature limit is next to the case's own.
    SetPointHigh {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// The temperature limit the regulator holds \[°C\].
        set_point_c: f64,
        /// What the case withstands for long \[°C\].
        limit_c: f64,
    },
    /// The rectifier passes its limit after the engine has stopped.
    SoakRectifier {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// How hot it gets \[°C\].
        rectifier_c: f64,
        /// What it withstands for long \[°C\].
        limit_c: f64,
    },
    /// The engine is not run for charging: what is found of heat is of a run to
    /// motor, in which the alternator charges all the same.
    HotWhenMotoring {
        /// State of charge at the start of such a run \[%\].
        from_pct: f64,
        /// And at its end \[%\].
        to_pct: f64,
    },
    /// The engine heats its space after it has stopped.
    SoakAir {
        /// How hot the air gets \[°C\].
        air_c: f64,
        /// When, after stopping \[min\].
        after_min: f64,
        /// By how much hotter than while the engine ran \[K\].
        rise_k: f64,
    },
}

/// Where an alternator settles when charging goes on and on.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Settled {
    /// Its winding \[°C\].
    pub winding_c: f64,
    /// Its case \[°C\].
    pub case_c: f64,
    /// What it gives then \[A\].
    pub hot_a: f64,
}

/// A part that passes its limit in the run, or would in a longer one.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PartTooHot {
    /// Which alternator's.
    pub alternator: WhichAlternator,
    /// Its highest in the run \[°C\].
    pub peak_c: f64,
    /// The higher of that and where it settles in a longer run \[°C\].
    pub hottest_c: f64,
    /// Whether that is the most it may be, as nobody has measured it.
    pub at_most: bool,
    /// What it withstands for long \[°C\].
    pub limit_c: f64,
    /// Whether the battery management system disconnects the bank in this run
    /// before the part passes its limit.
    pub after_disconnect: bool,
    /// What to do; said once for each alternator, with its worst part.
    pub remedy: Option<HeatRemedy>,
}

impl PartTooHot {
    /// Whether it passes its limit in the run, not only in a longer one.
    pub fn in_this_run(&self) -> bool {
        self.peak_c > self.limit_c
    }

    /// What only may be so hot is to be found out, however far beyond its limit.
    fn severity(&self) -> Severity {
        if self.peak_c > self.limit_c + FAR_BEYOND_K && !self.at_most {
            Severity::Danger
        } else {
            Severity::Fix
        }
    }
}

/// What to do about the heat of an alternator.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum HeatRemedy {
    /// Cooler air, or less load: nothing else can be set.
    CoolerAirOrLessLoad,
    /// The regulator's temperature limit or current cap, or cooler air.
    SetRegulator,
    /// The DC-DC charger's output, or cooler air.
    SetCharger,
    /// Cooler air, a DC-DC charger or an external regulator.
    FitCurrentLimit,
}

impl HeatFinding {
    pub(crate) fn severity(&self) -> Severity {
        match self {
            HeatFinding::NothingWatchesHeat {
                settled,
                limit_c,
                margin_k,
                lithium,
                ..
            } => match settled {
                None => Severity::Danger,
                Some(settled) if settled.winding_c > *limit_c => Severity::Danger,
                Some(_) if *lithium && *margin_k < UNWATCHED_ON_LITHIUM_K => Severity::Fix,
                Some(_) if *margin_k < UNWATCHED_K => Severity::Fix,
                Some(_) => Severity::Note,
            },
            HeatFinding::WindingTooHot(part)
            | HeatFinding::RectifierTooHot(part)
            | HeatFinding::CaseTooHot(part) => part.severity(),
            HeatFinding::NearLimit { .. }
            | HeatFinding::SetPointHigh { .. }
            | HeatFinding::SoakRectifier { .. } => Severity::Fix,
            HeatFinding::CaseSensorLags { .. }
            | HeatFinding::HotWhenMotoring { .. }
            | HeatFinding::SoakAir { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            HeatFinding::NothingWatchesHeat { .. } => Code::NothingWatchesHeat,
            HeatFinding::WindingTooHot(_) => Code::WindingTooHot,
            HeatFinding::RectifierTooHot(_) => Code::RectifierTooHot,
            HeatFinding::CaseTooHot(_) => Code::CaseTooHot,
            HeatFinding::NearLimit { .. } => Code::NearLimit,
            HeatFinding::CaseSensorLags { .. } => Code::CaseSensorLags,
            HeatFinding::SetPointHigh { .. } => Code::SetPointHigh,
            HeatFinding::SoakRectifier { .. } => Code::SoakRectifier,
            HeatFinding::HotWhenMotoring { .. } => Code::HotWhenMotoring,
            HeatFinding::SoakAir { .. } => Code::SoakAir,
        }
    }
}
