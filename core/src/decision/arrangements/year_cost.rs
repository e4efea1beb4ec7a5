//! What a year costs, and when a purchase has paid for itself.

use serde::Serialize;

use crate::analysis::year::YearSums;
use crate::boat::Worksheet;
use crate::physics::charging::energy_wh;
use crate::physics::drive::kilo;
use crate::physics::money::{
    bank_a_year, capital_recovery, engine_each_kwh, payback_years, priced, wear_per_hour,
    year_total,
};
use crate::report::Report;

/// What a year costs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct YearCost {
    /// Fuel.
    pub fuel: f64,
    /// Service and overhaul of the engine.
    pub engine: f64,
    /// Service and wear of the generator.
    pub generator: f64,
    /// Shore power.
    pub shore: f64,
    /// What the bank loses of its life.
    pub bank: f64,
    /// Years that the bank lasts, by cycles or by the calendar, whichever ends first.
    pub bank_years: f64,
    /// The purchase, spread over its years.
    pub capital: f64,
    /// All of it.
    pub total: f64,
}

impl YearCost {
    /// What a year costs once everything is bought.
    pub fn running(&self) -> f64 {
        self.total - self.capital
    }
}

/// A saving below this part of what a year costs today is dust of the
/// calculation, not money: own reasoning.
const DUST: f64 = 0.002;
/// What takes longer is never paid back \[years\]: no part lives so long.
const LONGEST_YEARS: f64 = 50.0;

/// Years until a purchase has paid for itself by what it saves a year; none
/// when it saves nothing worth the name.
pub(super) fn paid_back_years(bought: f64, today: &YearCost, then: &YearCost) -> Option<f64> {
    let saved = today.running() - then.running();
    if saved < DUST * today.running() {
        return None;
    }
    payback_years(bought, saved).filter(|years| *years <= LONGEST_YEARS)
}

fn wear(sheet: &Worksheet) -> f64 {
    let cost = &sheet.inputs.cost;
    wear_per_hour(cost.service, cost.service_h, cost.overhaul, cost.overhaul_h)
}

/// What a year with this arrangement costs, by the sums of its year; none when
/// that does not cover the use.
pub(super) fn year_cost(with: &Worksheet, sums: &YearSums, bought: f64) -> Option<YearCost> {
    if !sums.covered {
        return None;
    }
    let inputs = &with.inputs;
    let cost = &inputs.cost;
    let fuel = priced(sums.fuel_l, cost.fuel_l);
    let engine = priced(sums.charging_h, wear(with));
    let generator = priced(sums.generator_h, inputs.genset.wear_h);
    let shore = priced(sums.shore_kwh, cost.shore_kwh);
    let bank_years = inputs.bank_years(sums.use_ah);
    let bank = bank_a_year(inputs.bank_price(), bank_years);
    let recovery = capital_recovery(cost.interest_pct / 100.0, cost.years);
    let capital = priced(bought, recovery);
    Some(YearCost {
        fuel,
        engine,
        generator,
        shore,
        bank,
        bank_years,
        capital,
        total: year_total(fuel, engine, generator, shore, bank, capital),
    })
}

/// Fuel and wear of the day's run for each kilowatt-hour that goes into bank
/// and boat meanwhile.
pub(super) fn engine_kwh(with: &Worksheet, report: &Report) -> Option<f64> {
    let (hours, fuel_l) = (
        report.analyses.day.engine_hours?,
        report.analyses.day.fuel_l?,
    );
    let kwh = kilo(energy_wh(
        report.analyses.energy.engine_ah,
        report.analyses.energy.bank_v,
    ));
    let fuel_price = with.inputs.cost.fuel_l;
    (hours > 0.0).then(|| engine_each_kwh(fuel_l, fuel_price, hours, wear(with), kwh))
}
