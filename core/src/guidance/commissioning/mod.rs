//! The commissioning list: what to do, in order, before the arrangement is
//! trusted, and when to stop. `code` names the steps, `steps` says which of them a
//! boat has and with which figures (`figure`), `figures` works these out, `form`
//! is the sheet for the readings of the hot run, which the sea trial reads. The
//! sentences stand in `text::commissioning`.
//!
//! Which steps are done is kept in the worksheet: [`Worksheet::tick`].

mod code;
mod figure;
mod figures;
mod form;
mod steps;

use serde::Serialize;

use crate::boat::Worksheet;
use crate::report::Report;

pub use code::{StageCode, StepCode};
pub use figure::{StepFigure, StepStop};
use figures::Figures;
pub use form::{Form, FormRow, form};

/// A part of the list.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Stage {
    /// Its name.
    pub code: StageCode,
    /// Its steps that this boat has.
    pub steps: Vec<Step>,
}

/// A step of the list.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// Its name: what a tick is kept under.
    pub code: StepCode,
    /// This boat's figures in it.
    pub figure: Option<StepFigure>,
    /// When to stop and not go on.
    pub stop: Option<StepStop>,
    /// Whether it is ticked.
    pub done: bool,
}

/// The list for a boat; stages that would be empty are left out.
pub fn commissioning(sheet: &Worksheet, report: &Report) -> Vec<Stage> {
    let figures = Figures::of(sheet, report);
    let step = |code: StepCode| Step {
        code,
        figure: steps::figure(code, &figures),
        stop: steps::stop(code, &figures),
        done: sheet.is_done(code.name()),
    };
    let stage = |code: StageCode| Stage {
        code,
        steps: StepCode::ALL
            .iter()
            .filter(|step| step.stage() == code && steps::applies(**step, &sheet.inputs))
            .map(|code| step(*code))
            .collect(),
    };
    let stages = StageCode::ALL.iter().map(|code| stage(*code));
    stages.filter(|stage| !stage.steps.is_empty()).collect()
}

/// Every step there is, of any boat, in order.
pub fn all_ids() -> impl Iterator<Item = &'static str> {
    StepCode::ALL.iter().map(|code| code.name())
}
