//! Every figure that is explained, group by group: which formula ran, with what.
//!
//! A figure is a constant of its own, so that another one that uses it names
//! it, and a name that is not there does not compile.

mod day;
mod engine;
mod flow;
mod heat;
mod lead;
mod machine;
mod moment;
mod notes;
mod run;
mod steps;
mod temperatures;
mod terms;

use super::figure::Figure;

/// Every figure, in the order the workings are printed.
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
