//! A boat that is explained, with the run and the settled state its report was
//! read off.

use crate::analysis::flooded;
use crate::analysis::solar_day::{SolarDay, solar_day};
use crate::boat::{Inputs, InstalledAlternator, WhichAlternator, Worksheet};
use crate::decision::arrangements::Outcome;
use crate::physics::battery::Bank;
use crate::report::Report;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::plant::Plant;
use crate::simulation::run::Trace;
use crate::simulation::steady_state::Settled;

/// A boat that is explained.
pub(super) struct Boat<'a> {
    pub(super) sheet: &'a Worksheet,
    pub(super) report: &'a Report,
    pub(super) plant: &'a Plant,
    pub(super) trace: &'a Trace,
    pub(super) hot: &'a Settled,
    /// The minute of the run that somebody looks at.
    pub(super) minute: f64,
    /// What comes of it as an arrangement, where it is looked at as one.
    pub(super) costs: Option<Costs<'a>>,
}

/// An arrangement's outcome, beside that of the boat as it stands.
#[derive(Clone, Copy)]
pub(super) struct Costs<'a> {
    pub(super) outcome: &'a Outcome,
    pub(super) today: &'a Outcome,
}

impl<'a> Boat<'a> {
    /// A worksheet, its report and a minute of its run.
    pub(super) fn new(sheet: &'a Worksheet, report: &'a Report, minute: f64) -> Boat<'a> {
        let (plant, trace) = (&report.analyses.plant, &report.analyses.trace);
        Boat {
            sheet,
            report,
            trace,
            hot: &report.analyses.hot,
            plant,
            minute: minute.clamp(0.0, report.analyses.run.minutes),
            costs: None,
        }
    }

    /// This boat looked at as an arrangement: what comes of it, beside the boat as it
    /// stands.
    pub(super) fn costing(mut self, outcome: &'a Outcome, today: &'a Outcome) -> Boat<'a> {
        self.costs = Some(Costs { outcome, today });
        self
    }

    /// Its inputs.
    pub(super) fn inputs(&self) -> &Inputs {
        &self.sheet.inputs
    }

    /// The alternator that every boat has.
    pub(super) fn first(&self) -> &AlternatorAtSpeed {
        &self.plant.alternators[0]
    }

    /// One of them by its place in the list of alternators, as the worksheet
    /// describes it; the first one beyond the list's end.
    pub(super) fn installed(&self, place: usize) -> InstalledAlternator<'_> {
        let which = WhichAlternator::ALL.get(place);
        let which = which.copied().unwrap_or(WhichAlternator::First);
        self.inputs().as_described(which)
    }

    /// Every other one.
    pub(super) fn others(
        &self,
    ) -> impl Iterator<Item = (InstalledAlternator<'_>, &AlternatorAtSpeed)> {
        self.inputs()
            .alternators()
            .zip(&self.plant.alternators)
            .skip(1)
    }

    /// Every other one that charges the house bank.
    pub(super) fn others_on_house(
        &self,
    ) -> impl Iterator<Item = (InstalledAlternator<'_>, &AlternatorAtSpeed)> {
        self.others()
            .filter(|(installed, _)| installed.connection.on_house())
    }

    /// Whether several alternators charge the house bank.
    pub(super) fn several_charge(&self) -> bool {
        self.others_on_house().next().is_some()
    }

    /// Flooded lead of the same ampere-hours.
    pub(super) fn lead_bank(&self) -> Bank {
        flooded(self.inputs()).house_bank()
    }

    /// The mean day of its month.
    pub(super) fn solar_day(&self) -> SolarDay {
        solar_day(self.inputs(), self.inputs().sun.month)
    }
}
