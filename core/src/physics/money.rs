//! Money over time. Amounts are in whatever currency went in.

use super::sources;
use crate::formula::formula;

/// What a purchase of 1 costs a year when it is spread over `years` at an
/// interest of `rate` (0.05 for 5 %): capital recovery factor
/// i(1+i)ⁿ/((1+i)ⁿ−1), 1/n without interest. Any textbook of engineering
/// economy; the form is that of L. Blank, A. Tarquin, "Engineering Economy"
/// (from memory).
#[formula(symbol = "k_capital", unit = "", source = sources::ECONOMY)]
pub fn capital_recovery(#[symbol("z")] rate: f64, #[symbol("N_years")] years: f64) -> f64 {
    let growth = (1.0 + rate).powf(years);
    if growth - 1.0 < 1e-9 {
        return 1.0 / years;
    }
    rate * growth / (growth - 1.0)
}

/// What an hour of engine uses up besides fuel: service and overhaul, each its
/// price over the hours it serves (common practice).
#[formula(symbol = "w", unit = "/h", source = sources::COMMON_PRACTICE)]
pub fn wear_per_hour(
    #[symbol("K_service")] service: f64,
    #[symbol("t_service")] service_h: f64,
    #[symbol("K_overhaul")] overhaul: f64,
    #[symbol("t_overhaul")] overhaul_h: f64,
) -> f64 {
    service / service_h + overhaul / overhaul_h
}

/// Years until a purchase has paid for itself; none when it saves nothing.
pub fn payback_years(purchase: f64, saved_a_year: f64) -> Option<f64> {
    if purchase <= 0.0 {
        return Some(0.0);
    }
    (saved_a_year > 0.0).then(|| purchase / saved_a_year)
}
