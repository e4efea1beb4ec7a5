//! Every figure that is explained, group by group: which formula ran, with what.
//!
//! A figure is a constant of its own, so that another one that uses it names
//! it, and a name that is not there does not compile.

mod arrangement;
mod balance;
mod bank;
mod belt;
mod cable;
mod daily_run;
mod day;
mod engine;
mod field;
mod flow;
mod heat;
mod lead;
mod load_dump;
mod losses;
mod moment;
mod notes;
mod output;
mod rating;
mod run;
mod steps;
mod sun;
mod temperatures;
mod terms;
mod times;
mod year_cost;

use crate::explain::figure::Figure;

/// What comes of an arrangement, in the order of its table.
pub(super) fn of_arrangement() -> impl Iterator<Item = &'static Figure> {
    [arrangement::TAKEN, year_cost::FIGURES, arrangement::PAID]
        .into_iter()
        .flatten()
        .copied()
}

/// Every figure of a report, in the order the workings are printed.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    [
        day::FIGURES,
        daily_run::FIGURES,
        output::OUTPUT,
        temperatures::SETTLED,
        output::SPACE,
        rating::FIGURES,
        heat::FIGURES,
        times::FIGURES,
        run::FIGURES,
        temperatures::OF_THE_RUN,
        lead::FIGURES,
        engine::FIGURES,
        moment::FIGURES,
    ]
    .into_iter()
    .flat_map(|group| group.iter().copied())
    .chain(steps::all())
    .chain(belt::all())
    .chain(cable::all())
    .chain(load_dump::all())
}
