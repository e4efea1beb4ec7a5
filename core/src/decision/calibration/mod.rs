//! The sea trial: readings of a real charging run correct the model.
//!
//! [`log`] reads what was typed or pasted; `model` runs the machine's lumps
//! with the logged current; `learn` finds which figures the log can tell, and
//! `fit` what it tells, by `least_squares`; `output` weighs the amps against the
//! output curve; [`apply()`] puts the figures into the worksheet. What a log
//! cannot tell is said in words.

mod anchor;
pub mod columns;
mod course;
mod fit;
mod guess;
mod learn;
pub mod log;
mod model;
mod output;
mod refuse;
mod result;
mod sample;
mod words;

use crate::Worksheet;
use crate::boat::Curve;
use crate::boat::house_load_a;
use crate::schema::InputError;

pub use log::{Log, read};
pub use result::{Compared, Fit, Fitted, apply};
pub use sample::SAMPLE;
pub use words::HOW_TO;

use model::Trial;
use output::Output;

/// Fits a worksheet's model to a log.
///
/// # Errors
/// A sentence saying why nothing can be learnt from the log.
pub fn fit(sheet: &Worksheet, log: &Log) -> Result<Fit, InputError> {
    let before = &sheet.inputs;
    if let Some(complaint) = refuse::complaint(log, before.start_c()) {
        return Err(complaint);
    }
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
        return Err(InputError(
            "These readings tell neither how well the machine is cooled nor how much heat it holds: they are too few or scatter too much. Log half an hour from a cold start at a steady speed, with the air near the machine.".to_string(),
        ));
    }
    Ok(result::build(&trial, &solution, &output, before))
}
