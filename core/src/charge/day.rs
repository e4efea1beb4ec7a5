//! How long the engine must run each day.

use super::plant::Plant;
use super::run::{Fineness, Trace, charge};
use crate::numerics::falling_root;

/// The daily engine run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DailyRun {
    /// The sun puts back all that is used.
    SunCovers,
    /// So many hours bring the bank back to where it was.
    Hours {
        /// Engine time \[h\].
        hours: f64,
        /// State of charge the run begins at, 0 to 1.
        from: f64,
        /// Power the alternator's shaft takes meanwhile \[kWh\].
        shaft_kwh: f64,
        /// Ampere-hours the bank gained \[A·h\].
        gained_ah: f64,
    },
    /// No run of a day is long enough, or the bank is too small for a day.
    Never,
}

/// Hours of engine to put back `need_ah` (the day's use less the sun), the
/// run ending at state of charge `to` (0 to 1) at the latest.
///
/// While the engine runs the machine carries the house load as well, so that
/// this much of the day's use need not come out of the bank.
pub fn daily_run(plant: &Plant, need_ah: f64, to: f64) -> DailyRun {
    if need_ah <= 0.0 {
        return DailyRun::SunCovers;
    }
    match daily_trace(plant, need_ah, to) {
        None => DailyRun::Never,
        Some((trace, seconds)) => DailyRun::Hours {
            hours: seconds / 3600.0,
            from: to - need_ah / plant.bank.capacity_ah,
            shaft_kwh: trace.shaft_kwh(seconds),
            gained_ah: (trace.charge_at(seconds) - to) * plant.bank.capacity_ah + need_ah,
        },
    }
}

/// The daily engine run step by step, and how long it takes \[s\]; none when no
/// run of a day is long enough.
pub fn daily_trace(plant: &Plant, need_ah: f64, to: f64) -> Option<(Trace, f64)> {
    const DAY_S: f64 = 24.0 * 3600.0;
    let capacity_ah = plant.bank.capacity_ah;
    let from = to - need_ah / capacity_ah;
    if from < 0.0 {
        return None;
    }
    let trace = charge(plant, from, to, DAY_S, &Fineness::USUAL);
    let missing_ah = |seconds: f64| {
        let gained_ah = (trace.charge_at(seconds) - from) * capacity_ah;
        need_ah - gained_ah - plant.load_a * seconds / 3600.0
    };
    let last_s = trace.last_s();
    if missing_ah(last_s) > 1e-6 * need_ah {
        return None;
    }
    let seconds = falling_root(missing_ah, 0.0, last_s, 1e-12);
    Some((trace, seconds))
}
