//! Every figure that is explained, group by group: which formula ran, with what.
//!
//! A figure is a constant of its own, so that another one that uses it names
//! it, and a name that is not there does not compile.

/// One figure at several places of the report: place by place its number,
/// what its name there begins with, and what the page calls that place; then whose
/// figure it is and how that is found; then its own name, what the page calls it,
/// unit, decimals, how it came about, what the report has, and where it is there.
macro_rules! at_each_place {
    (
        [$($place:literal $at:literal $called:literal),+ $(,)?] of $of:ty, $found:path;
        $field:literal, $what:literal, $unit:literal, $decimals:literal, $explain:path, $value:expr, $there:path
    ) => {
        [$(
            Figure::new(concat!($at, $field), $what, $unit, $decimals, $explain)
                .named(concat!($called, $what))
                .is(|s| ($value as fn(&$of) -> _)($found(s)?).into())
                .nth($place, $there)
        ),+]
    };
}

mod arrangement;
mod balance;
mod bank;
mod bank_limit;
mod belt;
mod cable;
mod curve;
mod daily_run;
mod day;
mod engine;
mod field;
mod flow;
mod fuel;
mod generator;
mod heat;
mod lead;
mod legs;
mod life;
mod load_dump;
mod losses;
mod moment;
mod notes;
mod output;
mod packs;
mod payback;
mod rating;
mod run;
mod space_air;
mod step;
mod steps;
mod sun;
mod temperatures;
mod terms;
mod times;
mod to_body;
mod year_cost;

use crate::explain::figure::Figure;

/// What comes of an arrangement, in the order of its table.
pub(super) fn of_arrangement() -> impl Iterator<Item = &'static Figure> {
    [arrangement::FIGURES, year_cost::FIGURES, payback::FIGURES]
        .into_iter()
        .flatten()
        .copied()
}

/// Every figure of a report, in the order the workings are printed.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    [
        day::FIGURES,
        daily_run::FIGURES,
        generator::FIGURES,
        output::FIGURES,
        temperatures::SETTLED,
        life::FIGURES,
        space_air::FIGURES,
        rating::FIGURES,
        heat::FIGURES,
        times::FIGURES,
        run::FIGURES,
        temperatures::OF_THE_RUN,
        legs::FIGURES,
        lead::FIGURES,
        engine::FIGURES,
        packs::FIGURES,
        moment::FIGURES,
    ]
    .into_iter()
    .flat_map(|group| group.iter().copied())
    .chain(steps::all())
    .chain(belt::all())
    .chain(cable::all())
    .chain(load_dump::all())
}
