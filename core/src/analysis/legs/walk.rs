//! Takes the legs through the same simulation as the charging run, each from what
//! the one before and the pause have left.

use crate::analysis::RunReport;
use crate::analysis::charging_run::timed_report;
use crate::analysis::energy::Energy;
use crate::analysis::legs::{LegAlternator, LegReport, LegsReport};
use crate::boat::{
    EngineLoad, Leg, Purpose, When, Worksheet, engine_loads, house_load_a, under_way_load_a,
};
use crate::simulation::alternators::Alternators;
use crate::simulation::carried::Carried;
use crate::simulation::engine_load::SwitchedLoad;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Trace, charge_on, run_for};

/// A day \[h\].
const DAY_H: f64 = 24.0;

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
pub(in crate::analysis) fn legs_report(
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
    let falls = (day.idle_a * rest_h + later_ah) / sheet.inputs.bank_ah();
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
        let mut report = leg_report(leg, &trace, &start, end_s, run);
        report.pause_h = pause_h;
        report.pause_ah = pause_ah;
        report.short_ah = wanted_ah - pause_ah;
        (report, Carried::after(&trace, end_s))
    }
}

/// A leg that has been run, its pause still open.
fn leg_report(leg: &Leg, trace: &Trace, start: &Carried, end_s: f64, run: RunReport) -> LegReport {
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
