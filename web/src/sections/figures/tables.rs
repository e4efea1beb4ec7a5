//! The tables and their lines.

use ampwright_core::Report;
use ampwright_core::units::QuantityKind::{
    AirFlow, Charge, Count, Current, DayEnergy, Fuel, FuelRate, LargePower, Percent, Speed,
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
    table("machine", "The alternator", &MACHINE),
    table("run", "The charging run", &RUN),
    table("heat", "Hottest in the run, and after", &HEAT),
    table("engine", "The engine", &ENGINE),
    Table {
        instead: |r| r.analyses.lead.is_none().then_some("This bank is of lead"),
        ..table("lead", "Beside a lead bank", &LEAD)
    },
];

#[rustfmt::skip]
static DAY: [Line; 9] = [
    line("energy.anchor.use_ah", "Used", Charge, |r| Some(r.analyses.energy.anchor.use_ah)),
    line("energy.anchor.use_wh", "… as energy", DayEnergy, |r| Some(r.analyses.energy.anchor.use_wh)),
    line("energy.anchor.night_share_pct", "… of that at night", Percent, |r| Some(r.analyses.energy.anchor.night_share_pct)),
    line("energy.sun_ah", "From the sun", Charge, |r| Some(r.analyses.energy.sun_ah)),
    line("energy.engine_ah", "Left to the engine", Charge, |r| Some(r.analyses.energy.engine_ah)),
    line("energy.autonomy_days", "Without the engine", Count, |r| r.analyses.energy.autonomy_days).to(1).unit("days").or_of_unit("no end"),
    line("day.engine_hours", "Engine", Time, |r| minutes_of(r.analyses.day.engine_hours)).or(LONG).in_runs(Runs::Day),
    line("day.fuel_l", "Fuel for it", Fuel, |r| r.analyses.day.fuel_l).to(1).or_of_unit("–"),
    line("day.marginal_fuel_l", "… while motoring anyway", Fuel, |r| r.analyses.day.marginal_fuel_l).to(1).or_of_unit("–"),
];

#[rustfmt::skip]
static MACHINE: [Line; 8] = [
    line("machine.shaft_rpm", "Its own speed", Speed, |r| Some(r.analyses.machine.shaft_rpm)),
    line("machine.full_cold_a", "Full field, cold", Current, |r| Some(r.analyses.machine.full_cold_a)),
    line("machine.hot_a", "Held, hot", Current, |r| Some(r.analyses.machine.hot_a)),
    line("machine.hot.winding_c", "… winding", Temperature, |r| r.analyses.machine.hot.map(|t| t.winding_c)).or("never settles"),
    line("machine.hot.rectifier_c", "… rectifier plate", Temperature, |r| r.analyses.machine.hot.map(|t| t.rectifier_c)),
    line("machine.hot.case_c", "… case", Temperature, |r| r.analyses.machine.hot.map(|t| t.case_c)),
    line("machine.hot.air_c", "… air of the space", Temperature, |r| r.analyses.machine.hot.map(|t| t.air_c)),
    line("machine.space_air_m3h", "Air through the space", AirFlow, |r| Some(r.analyses.machine.space_air_m3h)),
];

#[rustfmt::skip]
static RUN: [Line; 12] = [
    line("run.minutes_to_target", "To the target", Time, |r| r.analyses.run.minutes_to_target).or(NEVER),
    line("run.minutes_to_80", "To 80 %", Time, |r| r.analyses.run.minutes_to_80).or(NEVER),
    line("run.minutes_to_90", "To 90 %", Time, |r| r.analyses.run.minutes_to_90).or(NEVER),
    line("run.minutes_to_100", "To 100 %", Time, |r| r.analyses.run.minutes_to_100).or(NEVER),
    line("run.start_a", "Alternator, at the start", Current, |r| Some(r.analyses.run.start_a)),
    line("run.mid_a", "… half-way", Current, |r| Some(r.analyses.run.mid_a)),
    line("run.mean_bank_a", "Into the bank, mean", Current, |r| Some(r.analyses.run.mean_bank_a)),
    line("run.bank_energy_pct", "Energy kept of what went in", Percent, |r| Some(r.analyses.run.bank_energy_pct)),
    line("run.house_load_a", "House load meanwhile", Current, |r| Some(r.analyses.run.house_load_a)).to(1),
    line("run.peak_shaft_w", "Most power at its shaft", LargePower, |r| Some(r.analyses.run.peak_shaft_w / 1000.0)).to(2),
    line("run.fuel_l", "Fuel, run for charging", Fuel, |r| Some(r.analyses.run.fuel_l)).to(1),
    line("run.marginal_fuel_l", "… while motoring anyway", Fuel, |r| Some(r.analyses.run.marginal_fuel_l)).to(1),
];

#[rustfmt::skip]
static HEAT: [Line; 11] = [
    line("run.peak.winding_c", "Winding", Temperature, |r| Some(r.analyses.run.peak.winding_c)),
    line("run.peak.rectifier_c", "Rectifier plate", Temperature, |r| Some(r.analyses.run.peak.rectifier_c)),
    line("run.peak.case_c", "Case", Temperature, |r| Some(r.analyses.run.peak.case_c)),
    line("run.peak.air_c", "Air of the space", Temperature, |r| Some(r.analyses.run.peak.air_c)),
    line("run.second_peak.winding_c", "Second alternator, winding", Temperature, |r| r.analyses.run.second_peak.map(|t| t.winding_c)),
    line("run.second_peak.rectifier_c", "… rectifier plate", Temperature, |r| r.analyses.run.second_peak.map(|t| t.rectifier_c)),
    line("run.second_peak.case_c", "… case", Temperature, |r| r.analyses.run.second_peak.map(|t| t.case_c)),
    line("run.air_settles_min", "The air settles after", Time, |r| r.analyses.run.air_settles_min),
    line("run.soak.peak.rectifier_c", "After stopping: rectifier", Temperature, |r| Some(r.analyses.run.soak.peak.rectifier_c)),
    line("run.soak.peak.air_c", "… air of the space", Temperature, |r| Some(r.analyses.run.soak.peak.air_c)),
    line("run.soak.air_peak_min", "… after", Time, |r| Some(r.analyses.run.soak.air_peak_min)),
];

#[rustfmt::skip]
static ENGINE: [Line; 6] = [
    line("engine.available_kw", "It has, at this speed", LargePower, |r| Some(r.analyses.engine.available_kw)).to(1),
    line("engine.peak_kw", "The belts take at most", LargePower, |r| Some(r.analyses.engine.peak_kw)).to(2),
    line("engine.peak_share_pct", "… of what it has", Percent, |r| Some(r.analyses.engine.peak_share_pct)),
    line("engine.mean_share_pct", "… mean of the run", Percent, |r| Some(r.analyses.engine.mean_share_pct)),
    line("engine.idle_l_h", "To turn itself", FuelRate, |r| Some(r.analyses.engine.idle_l_h)).to(2),
    line("engine.marginal_l_kwh", "For a kW·h at the shaft", Fuel, |r| Some(r.analyses.engine.marginal_l_kwh)).to(2),
];

/// What flooded lead of the same ampere-hours would have done.
#[rustfmt::skip]
static LEAD: [Line; 6] = [
    line("day.engine_hours", "Engine a day, this bank", Time, |r| minutes_of(r.analyses.day.engine_hours)).or(LONG).in_runs(Runs::Day),
    line("lead.engine_hours", "… flooded lead", Time, |r| r.analyses.lead.and_then(|lead| minutes_of(lead.engine_hours))).or(LONG).in_runs(Runs::Lead),
    line("run.minutes_to_target", "To the target, this bank", Time, |r| r.analyses.run.minutes_to_target).or(NEVER),
    line("lead.minutes_to_target", "… flooded lead", Time, |r| r.analyses.lead.and_then(|lead| lead.minutes_to_target)).or(NEVER),
    line("run.mid_bank_a", "Half-way, into this bank", Current, |r| Some(r.analyses.run.mid_bank_a)),
    line("lead.mid_bank_a", "… into flooded lead", Current, |r| r.analyses.lead.map(|lead| lead.mid_bank_a)),
];
