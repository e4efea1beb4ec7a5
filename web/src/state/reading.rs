//! Where the charging run is read off.

use ampwright_core::analysis::{Moment, RunReport};
use leptos::prelude::*;

use crate::state::AppState;

impl AppState {
    /// The moment that is read off; none where there is nothing to charge.
    pub fn moment(self) -> Option<Moment> {
        let share = self.reading.get();
        self.settled(|_, report| {
            let run = &report.analyses.run;
            let at = nearest(run, share * run.minutes)?;
            run.series.get(at).cloned()
        })
    }

    /// Goes on by so many moments of the run.
    pub fn step_reading(self, by: isize) {
        let share = self.reading.get_untracked();
        let next = self.glance(|_, report| {
            let run = &report.analyses.run;
            let last = run.series.len().saturating_sub(1);
            let here = nearest(run, share * run.minutes)?;
            let moment = run.series.get(here.saturating_add_signed(by).min(last))?;
            Some(moment.minute / run.minutes.max(1e-9))
        });
        if let Some(next) = next {
            self.reading.set(next);
        }
    }
}

/// The place in the series of the moment next to a minute.
fn nearest(run: &RunReport, minute: f64) -> Option<usize> {
    let distance = |(_, moment): &(usize, &Moment)| (moment.minute - minute).abs();
    let moments = run.series.iter().enumerate();
    let nearest = moments.min_by(|one, other| distance(one).total_cmp(&distance(other)));
    nearest.map(|(at, _)| at)
}
