//! The tables and their lines.

use ampwright_core::Report;
use ampwright_core::analysis::PartTemperatures;
use ampwright_core::units::QuantityKind::{
    AirFlow, Charge, Count, Current, DayEnergy, Fuel, FuelRate, Hours, LargePower, Percent, Speed,
    Temperature, Time,
};

use super::lines::{Line, Runs, line};

/// A table of figures.
pub struct Table {
    /// Its name among the places of the page.
    pub name: &'static str,
    /// What stands over it.
    pub caption: &'static str,
    /// In their order.
    pub lines: &'static [Line],
    /// What stands there in place of all lines; none where there are lines.
    pub instead: fn(&Report) -> Option<&'static str>,
}

const fn table(name: &'static str, caption: &'static str, lines: &'static [Line]) -> Table {
    Table {
        name,
        caption,
        lines,
        instead: |_| None,
    }
}

const LONG: &str = "none does";
const NEVER: &str = "not reached";

/// Minutes of hours.
fn minutes_of(hours: Option<f64>) -> Option<f64> {
    hours.map(|hours| 60.0 * hours)
}

/// In the order of the page.
pub static TABLES: [Table; 6] = [
    table("day", "The day at anchor", &DAY),
    table("alternator", "The alternator", &ALTERNATOR),
    table("run", "The charging run", &RUN),
    table("heat", "Hottest in the run, and after", &HEAT),
    table("engine", "The engine", &ENGINE),
    Table {
        instead: |r| (!r.analyses.lead.applies()).then_some("This bank is of lead"),
        ..table("lead", "Beside a lead bank", &LEAD)
    },
];

#[rustfmt::skip]
static DAY: [Line; 13] = [
    line("energy.anchor.use_ah", Charge, |r| Some(r.analyses.energy.anchor.use_ah)),
    line("energy.anchor.use_wh", DayEnergy, |r| Some(r.analyses.energy.anchor.use_wh)),
    line("energy.anchor.night_share_pct", Percent, |r| Some(r.analyses.energy.anchor.night_share_pct)),
    line("energy.sun_ah", Charge, |r| Some(r.analyses.energy.sun_ah)),
    line("energy.other_ah", Charge, |r| Some(r.analyses.energy.other_ah).filter(|ah| *ah > 0.0)),
    line("energy.engine_ah", Charge, |r| Some(r.analyses.energy.engine_ah)),
    line("energy.autonomy_days", Count, |r| r.analyses.energy.autonomy_days).to(1).unit("days").or_of_unit("no end"),
    line("day.engine_hours", Time, |r| minutes_of(r.analyses.day.engine_hours)).or(LONG).in_runs(Runs::Day),
    line("day.fuel_l", Fuel, |r| r.analyses.day.fuel_l).to(1).or_of_unit("–"),
    line("day.marginal_fuel_l", Fuel, |r| r.analyses.day.marginal_fuel_l).to(1).or_of_unit("–"),
    line("generator.hours", Time, |r| minutes_of(r.analyses.generator?.hours)),
    line("generator.load_pct", Percent, |r| r.analyses.generator?.load_pct),
    line("generator.fuel_l", Fuel, |r| r.analyses.generator?.fuel_l).to(1),
];

#[rustfmt::skip]
static ALTERNATOR: [Line; 11] = [
    line("alternators.0.shaft_rpm", Speed, |r| Some(r.analyses.alternators[0].shaft_rpm)),
    line("output.full_cold_a", Current, |r| Some(r.analyses.output.full_cold_a)),
    line("output.hot_a", Current, |r| Some(r.analyses.output.hot_a)),
    line("alternators.0.hot.winding_c", Temperature, |r| r.analyses.alternators[0].hot.map(|t| t.winding_c)).or("never settles"),
    line("alternators.0.hot.winding_may_be_c", Temperature, |r| r.analyses.alternators[0].hot.and_then(|t| t.winding_may_be_c)),
    line("alternators.0.hot.rectifier_c", Temperature, |r| r.analyses.alternators[0].hot.map(|t| t.rectifier_c)),
    line("alternators.0.hot.case_c", Temperature, |r| r.analyses.alternators[0].hot.map(|t| t.case_c)),
    line("alternators.0.hot.air_c", Temperature, |r| r.analyses.alternators[0].hot.map(|t| t.air_c)),
    line("alternators.0.insulation_h", Hours, |r| r.analyses.alternators[0].insulation_h.map(hundreds)),
    line("alternators.0.grease_h", Hours, |r| r.analyses.alternators[0].grease_h.map(hundreds)),
    line("output.space_air_m3h", AirFlow, |r| Some(r.analyses.output.space_air_m3h)),
];

#[rustfmt::skip]
static RUN: [Line; 12] = [
    line("run.minutes_to_target", Time, |r| r.analyses.run.minutes_to_target).or(NEVER),
    line("run.minutes_to_80", Time, |r| r.analyses.run.minutes_to_80).or(NEVER),
    line("run.minutes_to_90", Time, |r| r.analyses.run.minutes_to_90).or(NEVER),
    line("run.minutes_to_100", Time, |r| r.analyses.run.minutes_to_100).or(NEVER),
    line("run.start_a", Current, |r| Some(r.analyses.run.start_a)),
    line("run.mid_a", Current, |r| Some(r.analyses.run.mid_a)),
    line("run.mean_bank_a", Current, |r| Some(r.analyses.run.mean_bank_a)),
    line("run.bank_energy_pct", Percent, |r| Some(r.analyses.run.bank_energy_pct)),
    line("run.house_load_a", Current, |r| Some(r.analyses.run.house_load_a)).to(1),
    line("run.peak_shaft_w", LargePower, |r| Some(r.analyses.run.peak_shaft_w / 1000.0)).to(2),
    line("run.fuel_l", Fuel, |r| Some(r.analyses.run.fuel_l)).to(1),
    line("run.marginal_fuel_l", Fuel, |r| Some(r.analyses.run.marginal_fuel_l)).to(1),
];

#[rustfmt::skip]
static HEAT: [Line; 11] = [
    line("run.alternators.0.peak.winding_c", Temperature, |r| Some(r.analyses.run.alternators[0].peak.winding_c)),
    line("run.alternators.0.peak.rectifier_c", Temperature, |r| Some(r.analyses.run.alternators[0].peak.rectifier_c)),
    line("run.alternators.0.peak.case_c", Temperature, |r| Some(r.analyses.run.alternators[0].peak.case_c)),
    line("run.peak_air_c", Temperature, |r| Some(r.analyses.run.peak_air_c)),
    line("run.alternators.1.peak.winding_c", Temperature, |r| second_peak(r).map(|t| t.winding_c)),
    line("run.alternators.1.peak.rectifier_c", Temperature, |r| second_peak(r).map(|t| t.rectifier_c)),
    line("run.alternators.1.peak.case_c", Temperature, |r| second_peak(r).map(|t| t.case_c)),
    line("run.air_settles_min", Time, |r| r.analyses.run.air_settles_min),
    line("run.alternators.0.soak_peak.rectifier_c", Temperature, |r| Some(r.analyses.run.alternators[0].soak_peak.rectifier_c)),
    line("run.soak.air_peak_c", Temperature, |r| Some(r.analyses.run.soak.air_peak_c)),
    line("run.soak.air_peak_min", Time, |r| Some(r.analyses.run.soak.air_peak_min)),
];

/// To the nearest hundred: a life is an order of magnitude.
fn hundreds(hours: f64) -> f64 {
    (hours / 100.0).round() * 100.0
}

/// The highest temperatures of the second alternator in the run; none where there
/// is no such one.
fn second_peak(report: &Report) -> Option<PartTemperatures> {
    let second = report.analyses.run.alternators.get(1);
    second.map(|run| run.peak)
}

#[rustfmt::skip]
static ENGINE: [Line; 6] = [
    line("engine.available_kw", LargePower, |r| Some(r.analyses.engine.available_kw)).to(1),
    line("engine.peak_kw", LargePower, |r| Some(r.analyses.engine.peak_kw)).to(2),
    line("engine.peak_share_pct", Percent, |r| Some(r.analyses.engine.peak_share_pct)),
    line("engine.mean_share_pct", Percent, |r| Some(r.analyses.engine.mean_share_pct)),
    line("engine.idle_l_h", FuelRate, |r| Some(r.analyses.engine.idle_l_h)).to(2),
    line("engine.marginal_l_kwh", Fuel, |r| Some(r.analyses.engine.marginal_l_kwh)).to(2),
];

/// What flooded lead of the same ampere-hours would have done.
#[rustfmt::skip]
static LEAD: [Line; 6] = [
    line("day.engine_hours", Time, |r| minutes_of(r.analyses.day.engine_hours)).or(LONG).in_runs(Runs::Day).called("Engine a day, this bank"),
    line("lead.engine_hours", Time, |r| r.analyses.lead.report().and_then(|lead| minutes_of(lead.engine_hours))).or(LONG).in_runs(Runs::Lead).called("… flooded lead"),
    line("run.minutes_to_target", Time, |r| r.analyses.run.minutes_to_target).or(NEVER).called("To the target, this bank"),
    line("lead.minutes_to_target", Time, |r| r.analyses.lead.report().and_then(|lead| lead.minutes_to_target)).or(NEVER).called("… flooded lead"),
    line("run.mid_bank_a", Current, |r| Some(r.analyses.run.mid_bank_a)),
    line("lead.mid_bank_a", Current, |r| r.analyses.lead.report().map(|lead| lead.mid_bank_a)),
];
