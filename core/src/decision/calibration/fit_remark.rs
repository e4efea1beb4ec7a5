//! What a log could not tell, and what is to be known of what it told.

use serde::Serialize;

use crate::decision::calibration::fit::Solution;
use crate::decision::calibration::late_air::late_air;
use crate::decision::calibration::learn::{CAPACITY, COOLING, COUPLING, RECIRCULATION, WALLS};
use crate::decision::calibration::model::Trial;
use crate::decision::calibration::output::{Output, OutputUntold};

/// A model that misses by more is worth a word \[K\].
const LARGE_RESIDUAL_K: f64 = 3.0;

/// Something to know about a fit. Its sentence is
/// [`crate::text::calibration::fit_remark`].
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum FitRemark {
    /// The log does not tell the cooling.
    CoolingUntold,
    /// The log does not tell the heat capacity.
    CapacityUntold,
    /// The log does not tell recirculated air from worse cooling.
    RecirculationUntold,
    /// The log does not tell how much hotter than the case the winding runs.
    WindingUntold,
    /// The air near the alternator is that of the day of the log.
    AirOfTheDay,
    /// The air near the alternator may still have been warming, and is not taken over.
    AirStillWarming,
    /// There is no air in the log; it was calculated from the engine space.
    AirCalculated,
    /// The alternator was warm when the log began.
    BeganWarm,
    /// The log does not show whether the output curve is right.
    OutputUntold {
        /// Why.
        why: OutputUntold,
    },
    /// The output curve is right within what the log can tell.
    OutputAgrees,
    /// The output curve got another second point.
    OutputCorrected,
    /// The output curve is wrong, and no curve through the rating explains it.
    OutputWrong {
        /// What the alternator gave, as a share of the curve.
        share: f64,
    },
    /// The model follows the readings badly.
    Misses {
        /// Root mean square of what it misses them by \[K\].
        residual_k: f64,
    },
}

impl FitRemark {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            FitRemark::CoolingUntold => "cooling_untold",
            FitRemark::CapacityUntold => "capacity_untold",
            FitRemark::RecirculationUntold => "recirculation_untold",
            FitRemark::WindingUntold => "winding_untold",
            FitRemark::AirOfTheDay => "air_of_the_day",
            FitRemark::AirStillWarming => "air_still_warming",
            FitRemark::AirCalculated => "air_calculated",
            FitRemark::BeganWarm => "began_warm",
            FitRemark::OutputUntold { .. } => "output_untold",
            FitRemark::OutputAgrees => "output_agrees",
            FitRemark::OutputCorrected => "output_corrected",
            FitRemark::OutputWrong { .. } => "output_wrong",
            FitRemark::Misses { .. } => "misses",
        }
    }
}

/// What there is to know about a solution.
pub(super) fn remarks(trial: &Trial, solution: &Solution, output: &Output) -> Vec<FitRemark> {
    let told = &solution.told;
    let mut remarks = Vec::new();
    if !told[COOLING] {
        remarks.push(FitRemark::CoolingUntold);
    }
    if !told[CAPACITY] {
        remarks.push(FitRemark::CapacityUntold);
    }
    if !told[RECIRCULATION] {
        remarks.push(FitRemark::RecirculationUntold);
    }
    if !told[COUPLING] && trial.inputs.alt.coupling_w_k.is_none() {
        remarks.push(FitRemark::WindingUntold);
    }
    if trial.has_air() {
        remarks.push(match late_air(trial) {
            Some(_) => FitRemark::AirOfTheDay,
            None => FitRemark::AirStillWarming,
        });
    } else if trial.models_air() && !told[WALLS] {
        remarks.push(FitRemark::AirCalculated);
    }
    if trial.begins_warm {
        remarks.push(FitRemark::BeganWarm);
    }
    remarks.push(match *output {
        Output::Untold(why) => FitRemark::OutputUntold { why },
        Output::Agrees => FitRemark::OutputAgrees,
        Output::Point { .. } => FitRemark::OutputCorrected,
        Output::Wrong { share } => FitRemark::OutputWrong { share },
    });
    if solution.residual_k > LARGE_RESIDUAL_K {
        remarks.push(FitRemark::Misses {
            residual_k: solution.residual_k,
        });
    }
    remarks
}
