//! The sea trial: readings of a real charging run correct the model.
//!
//! [`log`] reads what was pasted, [`entry`] what is typed aboard, a reading at a
//! time: both end in a [`Log`]. While the trial goes on, [`outlook`] says where
//! the case is heading and [`stop`] when to stop; [`stopped`] tells winding and rotor by their resistance. Afterwards `model` runs the
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
pub mod stopped;

use crate::Worksheet;
use crate::boat::{Curve, Plate, house_load_a, key};

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
    let mut output = output::weigh(&trial, house_load_a(sheet));
    if let Some(warm) = rated_warm(sheet, log, &output) {
        output = output::weigh(&warm, house_load_a(sheet));
        trial = warm;
    }
    if let Output::Point {
        shaft_rpm, amperes, ..
    } = output
    {
        // Another output curve means other losses at the same current.
        let mut inputs = trial.inputs;
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

/// The same log against a rating of a warmed-up alternator, where nobody has looked
/// what the rating is for and that explains the amps much better: it gives a quarter
/// more when cold, and loses as much more.
fn rated_warm(sheet: &Worksheet, log: &Log, output: &Output) -> Option<Trial> {
    /// Of what the curve was wrong by, at most so much may be left.
    const LEFT: f64 = 0.5;
    let share = output.wrong_share().filter(|share| *share > 1.0)?;
    let is_open = sheet.inputs.alt.plate == Plate::Cold
        && sheet.inputs.alt.plate_rotor_c.is_none()
        && !sheet.knowledge(key!(alt.plate)).is_read();
    let mut inputs = sheet.inputs;
    inputs.alt.plate = Plate::Warm;
    let warm = is_open.then(|| Trial::new(&inputs, log))?;
    let left = output::weigh(&warm, house_load_a(sheet)).wrong_share();
    let off = (left.unwrap_or(1.0) - 1.0).abs();
    (off < LEFT * (share - 1.0)).then_some(warm)
}
