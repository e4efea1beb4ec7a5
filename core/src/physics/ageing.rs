//! What years do to a bank.

use crate::formula::formula;
use crate::physics::sources;

/// Capacity left after some years \[A·h\] of that when new, of which a bank loses
/// the same part each year, 0 to 1; a tenth is always left. Straight over the
/// years is common practice: cells lose a little more at first.
#[formula(symbol = "C", unit = "A·h", source = sources::AGEING)]
pub fn aged_ah(
    #[symbol("C_new")] new_ah: f64,
    #[symbol("f_fade")] fade: f64,
    #[symbol("N_age")] years: f64,
) -> f64 {
    new_ah * (1.0 - fade * years).max(0.1)
}

/// Resistance of cells after some years \[Ω·A·h\], which gain the same part of that
/// when new each year, 0 to 1.
#[formula(symbol = "r_C", unit = "Ω·A·h", source = sources::AGEING)]
pub fn aged_ohm_ah(
    #[symbol("r_new")] new_ohm_ah: f64,
    #[symbol("f_rise")] rise: f64,
    #[symbol("N_age")] years: f64,
) -> f64 {
    new_ohm_ah * (1.0 + rise * years)
}

/// Years that a bank lasts by its cycles, from its full cycles, its capacity when
/// new \[A·h\] and what is used in a year \[A·h\]; no end for no use.
#[formula(symbol = "N_by_cycles", unit = "years", source = sources::COMMON_PRACTICE)]
pub fn cycle_years(
    #[symbol("N_cycles")] life_cycles: f64,
    #[symbol("C_new")] capacity_ah: f64,
    #[symbol("Q_year")] use_ah: f64,
) -> f64 {
    life_cycles * capacity_ah / use_ah
}

/// Years that a bank lasts: by its cycles or by the calendar, whichever ends first.
#[formula(symbol = "N_bank", unit = "years", source = sources::COMMON_PRACTICE)]
pub fn bank_years(
    #[symbol("N_by_cycles")] cycle_years: f64,
    #[symbol("N_calendar")] calendar_years: f64,
) -> f64 {
    cycle_years.min(calendar_years)
}
