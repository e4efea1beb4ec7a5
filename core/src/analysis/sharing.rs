//! How two alternators on the house bank share the charging run.

use serde::Serialize;

use crate::boat::{Inputs, WhichAlternator};
use crate::simulation::Limit;
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Sample, Trace};

/// Moments of the run that are looked at, evenly apart.
const LOOKS: u32 = 120;

/// An alternator that gives less than this part of what it could stands idle. Own
/// reasoning.
const IDLE: f64 = 0.05;

/// How the alternators on the house bank share the run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SharingReport {
    /// What each gives of all that they give in the run \[%\].
    pub parts_pct: PerAlternator<f64>,
    /// One that stands idle while the other one charges; none where both do.
    pub idle: Option<IdleReport>,
}

/// One alternator stands idle while the other one charges.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct IdleReport {
    /// The idle one.
    pub alternator: WhichAlternator,
    /// The one that charges.
    pub other: WhichAlternator,
    /// How long in the run \[min\].
    pub minutes: f64,
    /// How long of that the other one is at its temperature limit \[min\].
    pub other_hot_min: f64,
    /// When it is first so \[min\].
    pub from_min: f64,
}

/// How they share a run that ends at a time \[s\]; none where there are no two on
/// the house bank.
pub(super) fn sharing_report(
    inputs: &Inputs,
    plant: &Plant,
    trace: &Trace,
    end_s: f64,
) -> Option<SharingReport> {
    if !inputs.two_on_house() || end_s <= 0.0 {
        return None;
    }
    let step_s = end_s / f64::from(LOOKS);
    let looks: Vec<Sample> = (0..LOOKS)
        .map(|look| trace.sample(step_s * (f64::from(look) + 0.5)))
        .collect();
    let given_a = |at: usize| -> f64 {
        let each = looks
            .iter()
            .map(|look| look.moment.flow.outputs[at].amperes);
        each.sum()
    };
    let count = plant.alternators.len();
    let all_a: f64 = (0..count).map(given_a).sum();
    let part_pct = |at: usize| {
        if all_a > 0.0 {
            100.0 * given_a(at) / all_a
        } else {
            0.0
        }
    };
    let [first, second] = WhichAlternator::ALL;
    let idle = [(first, second), (second, first)]
        .into_iter()
        .filter_map(|(alternator, other)| idle(plant, &looks, step_s / 60.0, alternator, other))
        .max_by(|one, other| one.minutes.total_cmp(&other.minutes));
    Some(SharingReport {
        parts_pct: (0..count).map(part_pct).collect(),
        idle,
    })
}

/// Whether an alternator stands idle in looks so far apart \[min\].
fn idle(
    plant: &Plant,
    looks: &[Sample],
    apart_min: f64,
    alternator: WhichAlternator,
    other: WhichAlternator,
) -> Option<IdleReport> {
    let stands = |look: &&Sample| {
        let outputs = &look.moment.flow.outputs;
        let able_a = |which: WhichAlternator| plant.able_a(which.index(), look).0;
        outputs[alternator.index()].amperes < IDLE * able_a(alternator)
            && outputs[other.index()].amperes > IDLE * able_a(other)
    };
    let first = looks.iter().position(|look| stands(&look))?;
    let while_idle = looks.iter().filter(stands);
    let hot = |look: &&Sample| plant.able_a(other.index(), look).1 == Limit::Temperature;
    Some(IdleReport {
        alternator,
        other,
        minutes: apart_min * while_idle.clone().count() as f64,
        other_hot_min: apart_min * while_idle.filter(hot).count() as f64,
        from_min: apart_min * first as f64,
    })
}
