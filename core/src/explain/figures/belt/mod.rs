//! Belts: what each carries by the formula and by the rule of thumb, and what it
//! pulls at.
//!
//! `looked_at` finds the belt that a figure is of, `geometry` its pulleys and wrap,
//! `load` what it is asked for; `rule` and `carries` hold that against what it can do.

/// A figure of each belt.
macro_rules! each_belt {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "belts.0." "Belt: ",
                1 "belts.1." "Second alternator's belt: ",
            ] of crate::analysis::belt::BeltReport, crate::explain::figures::belt::looked_at::report;
            $($figure)*
        )
    };
}

/// A figure of each belt at both engine speeds.
macro_rules! each_load {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "belts.0.charging." "Belt while charging: ",
                1 "belts.1.charging." "Second alternator's belt while charging: ",
                2 "belts.0.top." "Belt at the highest engine speed: ",
                3 "belts.1.top." "Second alternator's belt at the highest engine speed: ",
            ] of crate::analysis::belt::BeltLoad, crate::explain::figures::belt::looked_at::load;
            $($figure)*
        )
    };
}

mod carries;
mod geometry;
mod load;
mod looked_at;
mod rule;

use crate::explain::figure::Figure;

/// Every figure of every belt.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    let of_belts = [
        &geometry::ENGINE_PULLEY_MM,
        &geometry::WRAP_DEG,
        &carries::TIGHT_N,
        &carries::SLIPS_AT_RATIO,
        &rule::RULE_LOW_A,
        &rule::RULE_HIGH_A,
    ];
    let at_speeds = [
        &geometry::BELT_M_S,
        &load::SHAFT_NM,
        &load::ENGINE_W,
        &rule::RULE_W,
        &carries::CARRIES_W,
        &carries::FORMULA_PCT,
        &rule::RULE_PCT,
        &carries::SIDE_N,
    ];
    of_belts
        .into_iter()
        .flatten()
        .chain(at_speeds.into_iter().flatten())
}
