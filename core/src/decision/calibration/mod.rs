//! The sea trial: readings of a real charging run correct the model.
//!
//! [`log`] reads what was pasted, [`entry`] what is typed aboard, a reading at a
//! time: both end in a [`Log`]. While the trial goes on, [`outlook`] says where
//! the case is heading and [`stop`] when to stop. Afterwards `model` runs the
//! alternator's lumps with the logged current; `learn` finds which figures the log can tell, and
//! `fit` what it tells, by `least_squares`; `output` weighs the amps against the
//! output curve; [`apply()`] puts the figures into the worksheet. What a log
//! cannot tell is remarked on. The sentences stand in [`crate::text::calibration`].

mod anchor;
pub mod columns;
mod course;
pub mod entry;
mod fit;
mod fit_remark;
mod guess;
mod headings;
mod late_air;
mod layout;
mod learn;
pub mod log;
mod log_remark;
mod model;
pub mod outlook;
mod output;
mod readings;
mod refusal;
mod refuse;
mod result;
mod sample;
mod settling;
pub mod stop;

use crate::Worksheet;
use crate::boat::Curve;
use crate::boat::house_load_a;

pub use fit_remark::FitRemark;
pub use log::{Log, read};
pub use log_remark::{LineError, LogRemark};
pub use output::OutputUntold;
pub use refusal::Refusal;
pub use result::{Compared, Fit, Fitted, FittedFigure, apply};
pub use sample::SAMPLE;

use model::Trial;
use output::Output;

/// Fits a worksheet's model to a log.
///
/// # Errors
/// Why nothing can be learnt from the log.
pub fn fit(sheet: &Worksheet, log: &Log) -> Result<Fit, Refusal> {
    let before = &sheet.inputs;
    refuse::check(log, before.start_c())?;
    let mut trial = Trial::new(before, log);
    let output = output::weigh(&trial, house_load_a(sheet));
    if let Output::Point {
        shaft_rpm, amperes, ..
    } = output
    {
        // Another output curve means other losses at the same current.
        let mut inputs = *before;
        inputs.alt.curve = Curve::Points;
        inputs.alt.second_rpm = shaft_rpm;
        inputs.alt.second_a = amperes;
        trial = Trial::new(&inputs, log);
    }
    let solution = fit::solve(&trial)?;
    if !solution.told[learn::COOLING] && !solution.told[learn::CAPACITY] {
        return Err(Refusal::Untold);
    }
    Ok(result::build(&trial, &solution, &output, before))
}
