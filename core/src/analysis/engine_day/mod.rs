//! How long the engine must run each day, and how often.
//!
//! `closing` finds the run with which a day closes, `trouble` says why there is
//! none.

mod closing;
mod trouble;

use crate::analysis::energy::Energy;
use crate::boat::Inputs;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, charge};

pub use closing::{ClosedRun, closed_run};
pub use trouble::{DayTrouble, gives_nothing, gives_nothing_hotter};
use trouble::{blocked, too_slow};

/// More runs than this a day are no answer.
pub const MOST_RUNS: u32 = 12;
/// A day \[s\].
const DAY_S: f64 = 24.0 * 3600.0;

/// What a day asks of engine and bank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayNeed {
    /// What the bank lacks after a day without engine \[A·h\].
    pub need_ah: f64,
    /// State of charge at which the engine is stopped, 0 to 1.
    pub to: f64,
    /// Lowest state of charge wanted, 0 to 1.
    pub low: f64,
    /// Where the charging run begins, 0 to 1: the bank gets as low as that.
    pub start: f64,
}

impl DayNeed {
    /// A day at anchor of a worksheet.
    pub fn of(inputs: &Inputs, energy: &Energy) -> DayNeed {
        DayNeed::new(inputs, energy.engine_ah)
    }

    /// The bank and the target of a worksheet, with a need \[A·h\] that is not the
    /// day's own.
    pub fn new(inputs: &Inputs, need_ah: f64) -> DayNeed {
        DayNeed {
            need_ah,
            to: inputs.run.to_pct / 100.0,
            low: inputs.window_low_pct() / 100.0,
            start: inputs.run.from_pct / 100.0,
        }
    }
}

/// The daily engine run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DailyRun {
    /// The sun puts back all that is used.
    SunCovers,
    /// Equal runs close the day.
    Runs(DailyRuns),
    /// No runs do.
    Trouble(DayTrouble),
}

/// The equal runs of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DailyRuns {
    /// How many.
    pub runs: u32,
    /// Engine time of each \[h\].
    pub run_hours: f64,
    /// State of charge each begins at, 0 to 1.
    pub from: f64,
    /// Power the alternators' shafts take in all of them \[kWh\].
    pub shaft_kwh: f64,
    /// Ampere-hours the bank gains in all of them \[A·h\].
    pub gained_ah: f64,
}

impl DailyRuns {
    /// Engine time of the day \[h\].
    pub fn hours(&self) -> f64 {
        f64::from(self.runs) * self.run_hours
    }

    /// Mean current into the bank while the engine runs \[A\].
    pub fn mean_bank_a(&self, charge_efficiency: f64) -> f64 {
        self.gained_ah / self.hours().max(f64::MIN_POSITIVE) / charge_efficiency
    }
}

/// The daily runs step by step: one of them, and how many there are.
#[derive(Debug, Clone)]
pub struct DailyTrace {
    /// How many runs.
    pub runs: u32,
    /// Each of them.
    pub run: ClosedRun,
}

/// Hours of engine with which a day closes: each run ends at the target and
/// begins where the rest of the day left the bank. Every run starts cold.
pub fn daily_run(plant: &Plant, day: &DayNeed) -> DailyRun {
    if day.need_ah <= 0.0 {
        return DailyRun::SunCovers;
    }
    match daily_trace(plant, day) {
        Err(trouble) => DailyRun::Trouble(trouble),
        // The sun covers all but a rounding error.
        Ok(DailyTrace { run, .. }) if run.seconds <= 0.0 => DailyRun::SunCovers,
        Ok(DailyTrace { runs, run }) => {
            let times = f64::from(runs);
            let gained = run.trace.soc_at(run.seconds) - run.from;
            DailyRun::Runs(DailyRuns {
                runs,
                run_hours: run.seconds / 3600.0,
                from: run.from,
                shaft_kwh: times * run.trace.shaft_kwh(run.seconds),
                gained_ah: times * gained * plant.bank.capacity_ah,
            })
        }
    }
}

/// The daily runs step by step.
///
/// # Errors
/// Why no runs close the day.
pub fn daily_trace(plant: &Plant, day: &DayNeed) -> Result<DailyTrace, DayTrouble> {
    if frozen_from(plant, day).is_some() {
        return Err(DayTrouble::BankFrozen);
    }
    unfrozen_trace(plant, day)
}

/// The state of charge, 0 to 1, at which the engine finds the electrolyte of the
/// bank frozen; none where it never does. A run begins where the rest of the day
/// would leave the bank, or where the charging run does.
pub fn frozen_from(plant: &Plant, day: &DayNeed) -> Option<f64> {
    if day.need_ah <= 0.0 || !plant.bank.is_frozen(0.0) {
        return None;
    }
    let frozen = |soc: &f64| plant.bank.is_frozen(*soc);
    Some(day.start).filter(frozen).or_else(|| {
        let daily = unfrozen_trace(&plant.thawed(), day).ok()?;
        Some(daily.run.from).filter(frozen)
    })
}

/// The daily runs of a bank that is not frozen where they begin.
fn unfrozen_trace(plant: &Plant, day: &DayNeed) -> Result<DailyTrace, DayTrouble> {
    let plant = &plant.thawed();
    if let Some(trouble) = blocked(plant, day.to) {
        return Err(trouble);
    }
    let runs = runs_a_day(plant, day).ok_or(DayTrouble::BankTooSmall)?;
    let times = f64::from(runs);
    let plant = &plant.in_runs(times);
    let run = closed_run(plant, day.need_ah / times, day.to, DAY_S / times)
        .ok_or_else(|| too_slow(plant, day.to))?;
    match run.trace.opening(run.seconds) {
        Some(_) => Err(DayTrouble::ManagementOpens),
        None => Ok(DailyTrace { runs, run }),
    }
}

/// How many runs a day the bank asks for: one if it holds what a day takes from
/// it. A smaller bank gets the fewest with which it stays at or above the lowest
/// state of charge wanted, or where [`MOST_RUNS`] do not reach for that, the
/// fewest that do not empty it. None when those are not enough either.
fn runs_a_day(plant: &Plant, day: &DayNeed) -> Option<u32> {
    let capacity_ah = plant.bank.capacity_ah;
    if day.need_ah <= day.to * capacity_ah {
        return Some(1);
    }
    // One run from a state of charge to the target covers this much of a day:
    // what the bank falls by, and the loads that the engine carries.
    let covers_ah = |from: f64| {
        let trace = charge(plant, from, day.to, DAY_S, &Fineness::USUAL);
        let seconds = trace.reaches(day.to).unwrap_or(DAY_S);
        (day.to - from) * capacity_ah + plant.load_a * seconds / 3600.0
    };
    let times = |from: f64| {
        let runs = (day.need_ah / covers_ah(from) - 1e-6).ceil();
        (runs <= f64::from(MOST_RUNS)).then_some(runs.max(1.0) as u32)
    };
    let from_empty = times(0.0)?;
    if from_empty == 1 || day.low >= day.to {
        return Some(from_empty);
    }
    times(day.low).or(Some(from_empty))
}
