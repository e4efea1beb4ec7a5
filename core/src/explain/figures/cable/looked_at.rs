//! The run of cable that a figure is of, and its size: by the figure's place, which
//! is its run, plus the number of runs for the gauge sizes.

use crate::analysis::cable::{CableChoice, CableRun};
use crate::explain::boat::Boat;
use crate::explain::figure::Figure;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, maybe};

/// The most runs a boat has.
pub(super) const RUNS: usize = 8;

/// A figure of each run.
pub(super) type OfRuns = [Figure; RUNS];
/// A figure of each run's metric and gauge size.
pub(super) type OfChoices = [Figure; 2 * RUNS];

fn run_at<'a>(boat: &Boat<'a>, place: usize) -> Option<&'a CableRun> {
    boat.report.analyses.cables.runs.get(place % RUNS)
}

fn choice_at<'a>(boat: &Boat<'a>, place: usize) -> Option<&'a CableChoice> {
    let run = run_at(boat, place)?;
    if place < RUNS {
        run.metric.as_ref()
    } else {
        run.gauge.as_ref()
    }
}

pub(super) fn is_there(boat: &Boat, place: usize) -> bool {
    run_at(boat, place).is_some()
}

pub(super) fn is_chosen(boat: &Boat, place: usize) -> bool {
    choice_at(boat, place).is_some()
}

/// The run that is looked at.
pub(super) fn run<'a>(s: &Instant<'a>) -> Option<&'a CableRun> {
    run_at(s.boat, s.place)
}

/// Its size that is looked at.
pub(super) fn choice<'a>(s: &Instant<'a>) -> Option<&'a CableChoice> {
    choice_at(s.boat, s.place)
}

pub(super) fn of_run(s: &Instant, figures: &'static OfRuns) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place % RUNS).unwrap_or(first))
}

pub(super) fn of_choice(s: &Instant, figures: &'static OfChoices) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place).unwrap_or(first))
}

pub(super) fn length(s: &Instant) -> Term {
    maybe("Length one way", "m", run(s).map(|run| run.length_m))
}

pub(super) fn air(s: &Instant) -> Term {
    maybe("Air along the cable", "°C", run(s).map(|run| run.air_c))
}
