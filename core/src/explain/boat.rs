//! A boat that is explained, with the run and the settled state its report was
//! read off.

use crate::analysis::flooded;
use crate::analysis::solar_day::{SolarDay, solar_day};
use crate::boat::{Inputs, Worksheet};
use crate::decision::arrangements::Outcome;
use crate::physics::battery::Bank;
use crate::report::Report;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::plant::Plant;
use crate::simulation::run::Trace;
use crate::simulation::steady_state::{Settled, settled};

/// A boat that is explained.
pub(super) struct Boat<'a> {
    pub(super) sheet: &'a Worksheet,
    pub(super) report: &'a Report,
    pub(super) plant: &'a Plant,
    pub(super) trace: &'a Trace,
    pub(super) hot: Settled,
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
        let run = &sheet.inputs.run;
        let (plant, trace) = (&report.analyses.plant, &report.analyses.trace);
        let from = run.from_pct / 100.0;
        Boat {
            sheet,
            report,
            trace,
            hot: settled(plant, 0.5 * (from + run.to_pct / 100.0)),
            plant,
            minute: minute.clamp(0.0, report.analyses.run.minutes),
            costs: None,
        }
    }

    /// The same, looked at as an arrangement.
    pub(super) fn costing(mut self, outcome: &'a Outcome, today: &'a Outcome) -> Boat<'a> {
        self.costs = Some(Costs { outcome, today });
        self
    }

    /// Its inputs.
    pub(super) fn inputs(&self) -> &Inputs {
        &self.sheet.inputs
    }

    /// One of its alternators, 0 the first and 1 the second, where there is one.
    pub(super) fn unit(&self, alternator: usize) -> &AlternatorAtSpeed {
        match &self.plant.second {
            Some(second) if alternator == 1 => &second.unit,
            _ => &self.plant.main,
        }
    }

    /// Whether a second alternator charges the house bank.
    pub(super) fn two_charge(&self) -> bool {
        self.plant.second.is_some_and(|second| second.feeds_house)
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
