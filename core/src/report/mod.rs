//! All results of a worksheet, as one structure that the page, the print and
//! the JSON output share. Names end in their unit; `null` in JSON means "does
//! not happen".

mod findings;
mod outline;

use serde::Serialize;

use crate::charge::Limit;
use crate::charge::day::{DailyRun, daily_run};
use crate::charge::plant::Plant;
use crate::charge::run::{Fineness, Sample, Trace, charge};
use crate::charge::steady::settled;
use crate::energy::{Energy, energy, house_load_a};
use crate::physics::thermal::Temperatures;
use crate::worksheet::Worksheet;

pub use findings::{CAUTIONS, Caution, Finding, Severity};
pub use outline::{Answer, clock, sentence};

/// Everything that follows from a worksheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    /// The day's energy.
    pub energy: Energy,
    /// The alternator, cold and hot.
    pub machine: MachineReport,
    /// The charging run.
    pub run: RunReport,
    /// The daily engine time.
    pub day: DayReport,
    /// What to mind, worst first.
    pub findings: Vec<Finding>,
}

/// The alternator, cold and hot.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MachineReport {
    /// Its own speed while charging \[rpm\].
    pub shaft_rpm: f64,
    /// Its own speed with the engine at its highest \[rpm\].
    pub top_shaft_rpm: f64,
    /// Full-field output as rated, at this speed \[A\].
    pub full_cold_a: f64,
    /// What it holds on and on, everything settled, the bank half-way \[A\].
    pub hot_a: f64,
    /// What holds it there.
    pub hot_limit: Limit,
    /// Temperatures then; none when it never settles.
    pub hot: Option<Temps>,
    /// Output at endless speed of the fitted curve \[A\].
    pub infinite_a: f64,
    /// Speed the fitted curve begins at \[rpm\].
    pub zero_rpm: f64,
    /// Resistance of one phase as if in star, at 20 °C \[Ω\].
    pub phase_20c_ohm: f64,
    /// Factor that fits the cooling to its anchor.
    pub cooling_factor: f64,
    /// Air through the engine space \[m³/h\].
    pub space_air_m3h: f64,
    /// Output against engine speed, hot and settled, and cold.
    pub by_engine_rpm: Vec<SpeedPoint>,
}

/// Output at an engine speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SpeedPoint {
    /// Engine speed \[rpm\].
    pub engine_rpm: f64,
    /// Full-field output as rated \[A\].
    pub cold_a: f64,
    /// What it holds on and on \[A\].
    pub hot_a: f64,
}

/// Temperatures \[°C\].
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Temps {
    /// Stator winding.
    pub winding_c: f64,
    /// Case.
    pub case_c: f64,
    /// Rectifier plate.
    pub rectifier_c: f64,
    /// Air of the engine space.
    pub air_c: f64,
}

impl From<Temperatures> for Temps {
    fn from(t: Temperatures) -> Temps {
        Temps {
            winding_c: t.winding_c,
            case_c: t.body_c,
            rectifier_c: t.rectifier_c,
            air_c: t.air_c,
        }
    }
}

/// The charging run, from `run_from_pct` to `run_to_pct`.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RunReport {
    /// What the boat drew meanwhile \[A\].
    pub house_load_a: f64,
    /// Alternator current at the start \[A\].
    pub start_a: f64,
    /// Alternator current half-way through the time \[A\].
    pub mid_a: f64,
    /// Current into the bank half-way through the time \[A\].
    pub mid_bank_a: f64,
    /// Mean current into the bank \[A\].
    pub mean_bank_a: f64,
    /// Time to the target \[min\].
    pub minutes_to_target: Option<f64>,
    /// Time to 80 % \[min\].
    pub minutes_to_80: Option<f64>,
    /// Time to 90 % \[min\].
    pub minutes_to_90: Option<f64>,
    /// Time to 100 % \[min\].
    pub minutes_to_100: Option<f64>,
    /// How long the run below is: to the target, or to giving up \[min\].
    pub minutes: f64,
    /// State of charge at its end \[%\].
    pub end_charge_pct: f64,
    /// Hottest of each.
    pub peak: Temps,
    /// Most power at the alternator's shaft \[W\].
    pub peak_shaft_w: f64,
    /// Alternator efficiency half-way \[%\].
    pub mid_efficiency_pct: f64,
    /// Energy the alternator's shaft took \[kWh\].
    pub shaft_kwh: f64,
    /// Ampere-hours the alternator gave \[A·h\].
    pub alternator_ah: f64,
    /// All fuel of the run, engine run for charging alone \[L\].
    pub fuel_l: f64,
    /// The alternator's part of the fuel \[L\], all there is to count while motoring anyway.
    pub marginal_fuel_l: f64,
    /// What limits when, in order.
    pub stretches: Vec<StretchReport>,
    /// Part of the time each limit holds \[%\], largest first.
    pub limit_shares: Vec<LimitShare>,
    /// The run, moment by moment.
    pub series: Vec<Moment>,
}

/// A stretch of the run with one limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct StretchReport {
    /// \[min\]
    pub from_min: f64,
    /// \[min\]
    pub to_min: f64,
    /// What holds the current down.
    pub limit: Limit,
}

/// How much of the run one limit holds.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LimitShare {
    /// The limit.
    pub limit: Limit,
    /// Part of the time \[%\].
    pub share_pct: f64,
}

/// One moment of the run.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Moment {
    /// \[min\]
    pub minute: f64,
    /// \[%\]
    pub charge_pct: f64,
    /// Alternator \[A\]
    pub alternator_a: f64,
    /// Into the bank \[A\]
    pub bank_a: f64,
    /// At the bank \[V\]
    pub bank_v: f64,
    /// At the alternator \[V\]
    pub alternator_v: f64,
    /// \[°C\]
    pub winding_c: f64,
    /// \[°C\]
    pub case_c: f64,
    /// \[°C\]
    pub rectifier_c: f64,
    /// \[°C\]
    pub air_c: f64,
    /// At the alternator's shaft \[W\]
    pub shaft_w: f64,
    /// What holds the current down.
    pub limit: Limit,
}

/// The daily engine time.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DayReport {
    /// What the engine must put back \[A·h\].
    pub need_ah: f64,
    /// Engine time a day \[h\]; 0 when the sun covers it, none when no day is long enough.
    pub engine_hours: Option<f64>,
    /// State of charge the daily run begins at \[%\].
    pub from_pct: Option<f64>,
    /// Fuel a day, engine run for charging alone \[L\].
    pub fuel_l: Option<f64>,
    /// The alternator's part of it \[L\].
    pub marginal_fuel_l: Option<f64>,
}

/// Works out everything.
pub fn report(sheet: &Worksheet) -> Report {
    let inputs = &sheet.inputs;
    let energy = energy(sheet);
    let plant = Plant::new(inputs, house_load_a(sheet));
    let (from, to) = (inputs.run.from_pct / 100.0, inputs.run.to_pct / 100.0);
    let last_s = inputs.run.longest_h * 3600.0;
    let trace = charge(&plant, from, 1.0, last_s, &Fineness::USUAL);
    let run = run_report(&plant, &trace, from, to);
    let day = day_report(&plant, energy.engine_ah, to);
    let machine = machine_report(sheet, &plant, 0.5 * (from + to));
    let mut report = Report {
        energy,
        machine,
        run,
        day,
        findings: Vec::new(),
    };
    report.findings = findings::findings(sheet, &plant, &report);
    report
}

fn machine_report(sheet: &Worksheet, plant: &Plant, charge: f64) -> MachineReport {
    let inputs = &sheet.inputs;
    let hot = settled(plant, charge);
    let as_rated = |plant: &Plant| plant.full_field_a(plant.curve.test_v, plant.curve.rotor_c);
    // Ten speeds from a low idle to the engine's highest.
    let (low, high) = (600.0_f64.min(inputs.eng.rpm), inputs.eng.top_rpm);
    let by_engine_rpm = (0..=10)
        .map(|k| {
            let engine_rpm = low + (high - low).max(0.0) * f64::from(k) / 10.0;
            let there = Plant::at_engine_rpm(inputs, plant.load_a, engine_rpm);
            SpeedPoint {
                engine_rpm,
                cold_a: as_rated(&there),
                hot_a: settled(&there, charge).flow.alternator_a,
            }
        })
        .collect();
    MachineReport {
        shaft_rpm: plant.shaft_rpm,
        top_shaft_rpm: inputs.shaft_rpm(inputs.eng.top_rpm),
        full_cold_a: as_rated(plant),
        hot_a: hot.flow.alternator_a,
        hot_limit: hot.flow.limit,
        hot: hot.stable.then(|| hot.temperatures.into()),
        infinite_a: plant.curve.infinite_a,
        zero_rpm: plant.curve.zero_rpm,
        phase_20c_ohm: plant.losses.phase_20c_ohm,
        cooling_factor: plant.cooling,
        space_air_m3h: plant.space.flow_m3h,
        by_engine_rpm,
    }
}

fn run_report(plant: &Plant, trace: &Trace, from: f64, to: f64) -> RunReport {
    let minutes = |charge: f64| trace.reaches(charge).map(|seconds| seconds / 60.0);
    let reached_s = trace.reaches(to);
    let end_s = reached_s.unwrap_or(trace.last_s());
    let hours = end_s / 3600.0;
    let (start, mid) = (trace.sample(0.0), trace.sample(0.5 * end_s));
    let gained_ah = (trace.charge_at(end_s) - from) * plant.bank.capacity_ah;
    let stretches: Vec<StretchReport> = trace
        .stretches(end_s)
        .into_iter()
        .map(|stretch| StretchReport {
            from_min: stretch.from_s / 60.0,
            to_min: stretch.to_s / 60.0,
            limit: stretch.limit,
        })
        .collect();
    let series: Vec<Moment> = series_minutes(end_s / 60.0)
        .into_iter()
        .map(|minute| moment(trace.sample(minute * 60.0)))
        .collect();
    let shaft_kwh = trace.shaft_kwh(end_s);
    let marginal_fuel_l = plant.marginal_fuel_l_h(1000.0) * shaft_kwh;
    let given_w = mid.moment.alternator_a * mid.moment.alternator_v;
    RunReport {
        house_load_a: plant.load_a,
        start_a: start.moment.alternator_a,
        mid_a: mid.moment.alternator_a,
        mid_bank_a: mid.moment.bank_a,
        mean_bank_a: if hours > 0.0 {
            gained_ah / hours / plant.bank.charge_efficiency
        } else {
            start.moment.bank_a
        },
        minutes_to_target: reached_s.map(|seconds| seconds / 60.0),
        minutes_to_80: minutes(0.8),
        minutes_to_90: minutes(0.9),
        minutes_to_100: minutes(1.0),
        minutes: end_s / 60.0,
        end_charge_pct: 100.0 * trace.charge_at(end_s),
        peak: trace.hottest(end_s).into(),
        peak_shaft_w: series.iter().map(|m| m.shaft_w).fold(0.0, f64::max),
        mid_efficiency_pct: if given_w > 0.0 {
            100.0 * given_w / mid.moment.shaft_w()
        } else {
            0.0
        },
        shaft_kwh,
        alternator_ah: trace.alternator_ah(end_s),
        fuel_l: plant.fuel.idle_l_h * hours + marginal_fuel_l,
        marginal_fuel_l,
        limit_shares: shares(&stretches),
        stretches,
        series,
    }
}

fn day_report(plant: &Plant, need_ah: f64, to: f64) -> DayReport {
    let blank = DayReport {
        need_ah,
        engine_hours: None,
        from_pct: None,
        fuel_l: None,
        marginal_fuel_l: None,
    };
    match daily_run(plant, need_ah, to) {
        DailyRun::Never => blank,
        DailyRun::SunCovers => DayReport {
            engine_hours: Some(0.0),
            fuel_l: Some(0.0),
            marginal_fuel_l: Some(0.0),
            ..blank
        },
        DailyRun::Hours {
            hours,
            from,
            shaft_kwh,
        } => {
            let marginal_fuel_l = plant.marginal_fuel_l_h(1000.0) * shaft_kwh;
            DayReport {
                engine_hours: Some(hours),
                from_pct: Some(100.0 * from),
                fuel_l: Some(plant.fuel.idle_l_h * hours + marginal_fuel_l),
                marginal_fuel_l: Some(marginal_fuel_l),
                ..blank
            }
        }
    }
}

/// Every minute of the first half hour, when most happens, then every five,
/// and the end.
fn series_minutes(end_min: f64) -> Vec<f64> {
    let mut minutes: Vec<f64> = (0..=30)
        .chain((35..).step_by(5))
        .map(f64::from)
        .take_while(|minute| *minute < end_min)
        .collect();
    minutes.push(end_min);
    minutes
}

fn moment(sample: Sample) -> Moment {
    let (t, m) = (sample.temperatures, sample.moment);
    Moment {
        minute: sample.seconds / 60.0,
        charge_pct: 100.0 * sample.charge,
        alternator_a: m.alternator_a,
        bank_a: m.bank_a,
        bank_v: m.bank_v,
        alternator_v: m.alternator_v,
        winding_c: t.winding_c,
        case_c: t.body_c,
        rectifier_c: t.rectifier_c,
        air_c: t.air_c,
        shaft_w: m.shaft_w(),
        limit: m.limit,
    }
}

fn shares(stretches: &[StretchReport]) -> Vec<LimitShare> {
    let span = |stretch: &StretchReport| stretch.to_min - stretch.from_min;
    let total: f64 = stretches.iter().map(span).sum();
    let mut shares: Vec<LimitShare> = Limit::ALL
        .into_iter()
        .map(|limit| LimitShare {
            limit,
            share_pct: 100.0
                * stretches
                    .iter()
                    .filter(|stretch| stretch.limit == limit)
                    .map(span)
                    .sum::<f64>()
                / total.max(1e-9),
        })
        .filter(|share| share.share_pct > 0.0)
        .collect();
    shares.sort_by(|a, b| b.share_pct.total_cmp(&a.share_pct));
    shares
}
