//! The day as legs: the engine's runs one after another through the same
//! simulation, each from what the one before and the pause have left.

use serde::Serialize;

use crate::analysis::RunReport;
use crate::analysis::charging_run::timed_report;
use crate::analysis::energy::Energy;
use crate::analysis::temperatures::PartTemperatures;
use crate::boat::{
    EngineLoad, Leg, Purpose, When, Worksheet, engine_loads, house_load_a, under_way_load_a,
};
use crate::simulation::Limit;
use crate::simulation::alternators::Alternators;
use crate::simulation::carried::Carried;
use crate::simulation::opening::Opening;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Trace, charge_on, run_for};
use crate::simulation::switched::SwitchedLoad;

/// A day \[h\].
const DAY_H: f64 = 24.0;

/// The day as legs. The first begins cold, at the state of charge of the charging
/// run; pauses count from the second one on.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LegsReport {
    /// Each leg, in order; there is at least one.
    pub legs: Vec<LegReport>,
    /// The engine runs \[h\].
    pub engine_h: f64,
    /// … of that only for charging \[h\].
    pub charging_h: f64,
    /// … of that anyway \[h\].
    pub motoring_h: f64,
    /// The engine is off between the legs \[h\].
    pub pause_h: f64,
    /// Fuel for charging: all of the legs run for it, and the alternator's part of
    /// the others \[L\].
    pub fuel_l: f64,
    /// Into the bank in all legs \[A·h\].
    pub bank_ah: f64,
    /// State of charge when the first leg begins \[%\].
    pub from_pct: f64,
    /// State of charge when the last one ends \[%\].
    pub end_pct: f64,
    /// State of charge a day after the first leg began, the rest of the day at
    /// anchor; none where the legs take longer than a day \[%\].
    pub next_day_pct: Option<f64>,
}

/// One leg.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LegReport {
    /// What it is called.
    pub name: String,
    /// Engine speed \[rpm\].
    pub rpm: f64,
    /// What the engine is run for.
    pub purpose: Purpose,
    /// The engine was off before it \[h\].
    pub pause_h: f64,
    /// What the bank gave in that time, less what the sun put back \[A·h\].
    pub pause_ah: f64,
    /// What the boat wanted in that time and the empty bank could not give \[A·h\].
    pub short_ah: f64,
    /// How long the engine runs \[min\].
    pub minutes: f64,
    /// Whether it is to run until the bank has come to its target, and whether it
    /// does; none where its time is given.
    pub reaches_target: Option<bool>,
    /// State of charge at its start \[%\].
    pub from_pct: f64,
    /// State of charge at its end \[%\].
    pub to_pct: f64,
    /// Current of the alternators that charge the house bank, at its start \[A\].
    pub start_a: f64,
    /// The same at its end \[A\].
    pub end_a: f64,
    /// Into the bank, less what it gave \[A·h\].
    pub bank_ah: f64,
    /// What all alternators gave \[A·h\].
    pub alternator_ah: f64,
    /// What the house drew \[A·h\].
    pub house_ah: f64,
    /// Each alternator, the first one first.
    pub alternators: Vec<LegAlternator>,
    /// Hottest air of the engine space \[°C\].
    pub peak_air_c: f64,
    /// What limits the current for most of its time.
    pub limit: Limit,
    /// When the bank's management system opens; none when it does not. All else
    /// goes on as if the bank had stayed connected.
    pub opening: Option<Opening>,
    /// Fuel for charging: all of it, or the alternator's part where the engine runs
    /// anyway \[L\].
    pub fuel_l: f64,
    /// The alternator's part of the fuel \[L\].
    pub marginal_fuel_l: f64,
    /// The leg as a charging run.
    #[serde(skip)]
    pub run: RunReport,
}

/// One alternator in a leg.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LegAlternator {
    /// As warm as it is when the leg begins.
    pub start: PartTemperatures,
    /// Hottest of each of its parts.
    pub peak: PartTemperatures,
}

/// The day that is walked through.
struct Day<'a> {
    sheet: &'a Worksheet,
    alternators: &'a Alternators,
    /// What the bank gives while the engine is off and no leg goes on \[A\].
    idle_a: f64,
    /// The loads that run with the engine, with the hours that are left of each.
    left: Vec<EngineLoad>,
}

/// The day as legs; none where no legs are listed.
pub(super) fn legs_report(
    sheet: &Worksheet,
    alternators: &Alternators,
    energy: &Energy,
) -> Option<LegsReport> {
    let first = sheet.legs.first()?;
    let loads = engine_loads(sheet);
    let at_anchor = loads.iter().filter(|load| load.when != When::UnderWay);
    let with_engine_ah: f64 = at_anchor.map(|load| load.amperes * load.hours).sum();
    let mut day = Day {
        sheet,
        alternators,
        idle_a: (energy.rest_ah - with_engine_ah).max(0.0) / DAY_H,
        left: loads,
    };
    let from = sheet.inputs.run.from_pct / 100.0;
    let mut carried = Carried::cold(&day.plant(first), from);
    let mut legs: Vec<LegReport> = Vec::new();
    for leg in &sheet.legs {
        // The first one begins as the charging run does.
        let pause_h = if legs.is_empty() {
            0.0
        } else {
            leg.row.pause_h
        };
        let (done, left) = day.run(leg, &carried, pause_h);
        legs.push(done);
        carried = left;
    }
    let hours = |counts: fn(Purpose) -> bool| -> f64 {
        let counted = legs.iter().filter(|leg| counts(leg.purpose));
        counted.fold(0.0, |sum, leg| sum + leg.minutes) / 60.0
    };
    let sum = |figure: fn(&LegReport) -> f64| legs.iter().fold(0.0, |sum, leg| sum + figure(leg));
    let (engine_h, pause_h) = (hours(|_| true), sum(|leg| leg.pause_h));
    let rest_h = DAY_H - engine_h - pause_h;
    let later_ah: f64 = day
        .left
        .iter()
        .filter(|load| load.when != When::UnderWay)
        .map(|load| load.amperes * load.hours)
        .sum();
    let falls = (day.idle_a * rest_h + later_ah) / sheet.inputs.bank.capacity_ah;
    Some(LegsReport {
        engine_h,
        charging_h: hours(|purpose| purpose == Purpose::Charging),
        motoring_h: hours(|purpose| purpose == Purpose::Anyway),
        pause_h,
        fuel_l: sum(|leg| leg.fuel_l),
        bank_ah: sum(|leg| leg.bank_ah),
        from_pct: 100.0 * from,
        end_pct: 100.0 * carried.soc(),
        next_day_pct: (rest_h >= 0.0).then(|| 100.0 * (carried.soc() - falls).max(0.0)),
        legs,
    })
}

impl Day<'_> {
    /// The boat in a leg, without what is carried over.
    fn plant(&self, leg: &Leg) -> Plant {
        let row = &leg.row;
        let (house_a, not_then) = match row.purpose {
            Purpose::Charging => (house_load_a(self.sheet), When::UnderWay),
            Purpose::Anyway => (under_way_load_a(self.sheet), When::Anchor),
        };
        let runs = self.left.iter().filter(|load| load.when != not_then);
        self.alternators
            .plant_at(&self.sheet.inputs, house_a + row.extra_a, row.rpm)
            .with_engine_loads(runs.map(SwitchedLoad::from).collect())
    }

    /// Takes off the hours that the loads have run in a leg \[h\].
    fn has_run(&mut self, purpose: Purpose, hours: f64) {
        let not_then = match purpose {
            Purpose::Charging => When::UnderWay,
            Purpose::Anyway => When::Anchor,
        };
        for load in self.left.iter_mut().filter(|load| load.when != not_then) {
            load.hours = (load.hours - hours).max(0.0);
        }
    }

    /// A leg after a pause, and what it leaves.
    fn run(&mut self, leg: &Leg, before: &Carried, pause_h: f64) -> (LegReport, Carried) {
        let inputs = &self.sheet.inputs;
        let cold = self.plant(leg);
        let wanted_ah = self.idle_a * pause_h;
        let pause_ah = wanted_ah.min((before.soc() * cold.bank.capacity_ah).max(0.0));
        let start = before.rested(&cold, 3600.0 * pause_h, pause_ah);
        let plant = start.onto(cold);
        let to = inputs.run.to_pct / 100.0;
        let trace = match leg.row.minutes {
            Some(minutes) => run_for(&plant, &start, 60.0 * minutes, &Fineness::USUAL),
            None => {
                let last_s = inputs.run.longest_h * 3600.0;
                charge_on(&plant, &start, 1.0, last_s, &Fineness::USUAL)
            }
        };
        let end_s = match leg.row.minutes {
            Some(_) => trace.last_s(),
            None => trace.reaches(to).unwrap_or(trace.last_s()),
        };
        let run = timed_report(&plant, &trace, start.soc(), to, end_s);
        self.has_run(leg.row.purpose, end_s / 3600.0);
        let mut told = told(leg, &trace, &start, end_s, run);
        told.pause_h = pause_h;
        told.pause_ah = pause_ah;
        told.short_ah = wanted_ah - pause_ah;
        (told, Carried::after(&trace, end_s))
    }
}

/// A leg that has been run, its pause still open.
fn told(leg: &Leg, trace: &Trace, start: &Carried, end_s: f64, run: RunReport) -> LegReport {
    let row = &leg.row;
    let plant = trace.plant();
    let starts = start.temperatures();
    let each = starts.iter().zip(&run.alternators);
    LegReport {
        name: leg.name.clone(),
        rpm: row.rpm,
        purpose: row.purpose,
        pause_h: 0.0,
        pause_ah: 0.0,
        short_ah: 0.0,
        minutes: run.minutes,
        reaches_target: row
            .minutes
            .is_none()
            .then_some(run.minutes_to_target.is_some()),
        from_pct: 100.0 * start.soc(),
        to_pct: 100.0 * trace.soc_at(end_s),
        start_a: run.start_a,
        end_a: run
            .series
            .last()
            .map_or(run.start_a, |end| end.alternator_a),
        bank_ah: trace.bank_ah(end_s),
        alternator_ah: run.alternator_ah,
        house_ah: plant.house_ah(end_s) + plant.back_a * end_s / 3600.0,
        alternators: each
            .map(|(start, run)| LegAlternator {
                start: (*start).into(),
                peak: run.peak,
            })
            .collect(),
        peak_air_c: run.peak_air_c,
        limit: run
            .limit_shares
            .first()
            .map_or_else(|| trace.sample(0.0).moment.flow.limit, |share| share.limit),
        opening: run.opening,
        fuel_l: match row.purpose {
            Purpose::Charging => run.fuel_l,
            Purpose::Anyway => run.marginal_fuel_l,
        },
        marginal_fuel_l: run.marginal_fuel_l,
        run,
    }
}
