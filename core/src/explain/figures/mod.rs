//! Every figure that is explained, group by group: which formula ran, with what.
//!
//! A figure is a constant of its own, so that another one that uses it names
//! it, and a name that is not there does not compile.

mod arrangement;
mod balance;
mod bank;
mod day;
mod engine;
mod field;
mod flow;
mod heat;
mod lead;
mod losses;
mod machine;
mod moment;
mod notes;
mod run;
mod steps;
mod sun;
mod temperatures;
mod terms;

use crate::explain::figure::Figure;

/// What comes of an arrangement, in the order of its table.
pub(super) fn of_arrangement() -> impl Iterator<Item = &'static Figure> {
    arrangement::FIGURES.iter().copied()
}

/// Every figure of a report, in the order the workings are printed.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    [
        day::FIGURES,
        machine::OUTPUT,
        temperatures::SETTLED,
        machine::CALIBRATED,
        heat::FIGURES,
        run::FIGURES,
        temperatures::OF_THE_RUN,
        lead::FIGURES,
        engine::FIGURES,
        moment::FIGURES,
    ]
    .into_iter()
    .flat_map(|group| group.iter().copied())
    .chain(steps::all())
}
