//! What would happen if the data link were lost and the regulator went on with its
//! own settings.

use serde::Serialize;

use crate::boat::{Inputs, RegulatorLink};
use crate::simulation::alternators::Alternators;
use crate::simulation::opening::Opening;
use crate::simulation::run::{Fineness, charge};

/// The charging run without the data link.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LinkLossReport {
    /// When its management system opens; none where it does not.
    pub opening: Option<Opening>,
}

/// A boat with its data link gone; a charge-disable signal of its own stays.
fn unlinked(inputs: &Inputs) -> Inputs {
    let mut lost = *inputs;
    lost.reg.link = RegulatorLink::None;
    lost
}

/// The run without the link; none for a boat that has none.
pub(super) fn link_loss_report(
    inputs: &Inputs,
    alternators: &Alternators,
    load_a: f64,
) -> Option<LinkLossReport> {
    if !inputs.limit_linked() || !inputs.engine_charges() {
        return None;
    }
    let plant = alternators.plant(&unlinked(inputs), load_a);
    let (from, to) = (inputs.run.from_pct / 100.0, inputs.run.to_pct / 100.0);
    let last_s = inputs.run.longest_h * 3600.0;
    let trace = charge(&plant, from, 1.0, last_s, &Fineness::USUAL);
    let end_s = trace.reaches(to).unwrap_or(trace.last_s());
    Some(LinkLossReport {
        opening: trace.opening(end_s),
    })
}
