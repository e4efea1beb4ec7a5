//! Cables and fuses: what each run carries and may lose, what its sizes bear.
//!
//! `looked_at` finds the run and size that a figure is of; `run` and `size` hold the
//! figures of either.

/// A figure of each run.
macro_rules! each_run {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "cables.runs.0." "Cable run 0: ",
                1 "cables.runs.1." "Cable run 1: ",
                2 "cables.runs.2." "Cable run 2: ",
                3 "cables.runs.3." "Cable run 3: ",
                4 "cables.runs.4." "Cable run 4: ",
                5 "cables.runs.5." "Cable run 5: ",
                6 "cables.runs.6." "Cable run 6: ",
                7 "cables.runs.7." "Cable run 7: ",
            ] of crate::analysis::cable::CableRun, crate::explain::figures::cable::looked_at::run;
            $($figure)*, crate::explain::figures::cable::looked_at::is_there
        )
    };
}

/// A figure of each run's metric and gauge size.
macro_rules! each_choice {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "cables.runs.0.metric." "Cable: ",
                1 "cables.runs.1.metric." "Cable: ",
                2 "cables.runs.2.metric." "Cable: ",
                3 "cables.runs.3.metric." "Cable: ",
                4 "cables.runs.4.metric." "Cable: ",
                5 "cables.runs.5.metric." "Cable: ",
                6 "cables.runs.6.metric." "Cable: ",
                7 "cables.runs.7.metric." "Cable: ",
                8 "cables.runs.0.gauge." "Cable: ",
                9 "cables.runs.1.gauge." "Cable: ",
                10 "cables.runs.2.gauge." "Cable: ",
                11 "cables.runs.3.gauge." "Cable: ",
                12 "cables.runs.4.gauge." "Cable: ",
                13 "cables.runs.5.gauge." "Cable: ",
                14 "cables.runs.6.gauge." "Cable: ",
                15 "cables.runs.7.gauge." "Cable: ",
            ] of crate::analysis::cable::CableChoice, crate::explain::figures::cable::looked_at::choice;
            $($figure)*, crate::explain::figures::cable::looked_at::is_chosen
        )
    };
}

mod looked_at;
mod run;
mod size;

use crate::explain::figure::Figure;

pub(super) use run::SHORT_CIRCUIT_A;

/// Every figure of every run.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    let of_runs = [
        &run::CARRIES_A,
        &run::ALLOWED_V,
        &run::ALLOWED_PCT,
        &run::CIRCULAR_MILS,
    ];
    let of_choices = [
        &size::AMPACITY_A,
        &size::SPARE_PCT,
        &size::COPPER_C,
        &size::DROP_V,
        &size::SPARE_V,
        &size::FUSE_LEAST_A,
        &size::FUSE_MOST_A,
    ];
    std::iter::once(&run::SHORT_CIRCUIT_A)
        .chain(of_runs.into_iter().flatten())
        .chain(of_choices.into_iter().flatten())
}
