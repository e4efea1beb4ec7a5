//! Money over time. Amounts are in whatever currency went in.

use crate::formula::formula;
use crate::physics::sources;

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

/// So many times a day, over the days of a year.
#[formula(symbol = "x", unit = "", source = sources::ARITHMETIC)]
pub fn over_year(#[symbol("x_day")] a_day: f64, #[symbol("N_days")] days: f64) -> f64 {
    a_day * days
}

/// What an amount costs at a price for each.
#[formula(symbol = "K", unit = "", source = sources::ARITHMETIC)]
pub fn priced(#[symbol("x")] amount: f64, #[symbol("K_each")] each: f64) -> f64 {
    amount * each
}

/// What a year takes of a bank's price, which lasts some years.
#[formula(symbol = "K_bank", unit = "", source = sources::COMMON_PRACTICE)]
pub fn bank_a_year(#[symbol("K_new")] price: f64, #[symbol("N_bank")] life_years: f64) -> f64 {
    price / life_years
}

/// What a year costs, all in: fuel, engine, generator, shore power, bank, capital.
#[formula(symbol = "K_year", unit = "", source = sources::ARITHMETIC)]
pub fn year_total(
    #[symbol("K_fuel")] fuel: f64,
    #[symbol("K_engine")] engine: f64,
    #[symbol("K_generator")] generator: f64,
    #[symbol("K_shore")] shore: f64,
    #[symbol("K_bank")] bank: f64,
    #[symbol("K_capital")] capital: f64,
) -> f64 {
    fuel + engine + generator + shore + bank + capital
}

/// Fuel and wear of an engine's run for each kilowatt-hour it gives.
#[formula(symbol = "K_kWh", unit = "/kW·h", source = sources::ARITHMETIC)]
pub fn engine_each_kwh(
    #[symbol("B_day")] fuel_l: f64,
    #[symbol("K_L")] fuel_price: f64,
    #[symbol("t_day")] hours: f64,
    #[symbol("w")] wear: f64,
    #[symbol("E_engine")] kwh: f64,
) -> f64 {
    (fuel_l * fuel_price + hours * wear) / kwh
}

/// A cost for each kilowatt-hour of an energy \[W·h\].
#[formula(symbol = "K_kWh", unit = "/kW·h", source = sources::ARITHMETIC)]
pub fn each_kwh(#[symbol("K_year")] cost: f64, #[symbol("E_year")] energy_wh: f64) -> f64 {
    cost / (energy_wh / 1000.0)
}

/// Years in which a yearly saving makes up for a purchase.
#[formula(symbol = "t", unit = "years", source = sources::ARITHMETIC)]
pub fn made_up_years(
    #[symbol("K_buy")] purchase: f64,
    #[symbol("K_saved")] saved_a_year: f64,
) -> f64 {
    purchase / saved_a_year
}

/// Years until a purchase has paid for itself; none when it saves nothing.
pub fn payback_years(purchase: f64, saved_a_year: f64) -> Option<f64> {
    if purchase <= 0.0 {
        return Some(0.0);
    }
    (saved_a_year > 0.0).then(|| made_up_years(purchase, saved_a_year))
}
