//! The daily engine time.

use serde::Serialize;

use crate::analysis::engine_day::{DailyRun, DayNeed, DayTrouble, daily_run, frozen_from};
use crate::physics::fuel::{marginal_l, run_l};
use crate::simulation::plant::Plant;

/// The daily engine time.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DayReport {
    /// What the engine must put back \[A·h\].
    pub need_ah: f64,
    /// Engine time a day \[h\]; 0 when the sun covers it, none when there is trouble.
    pub engine_hours: Option<f64>,
    /// In how many equal runs; 0 when the sun covers it or there is trouble.
    pub runs: u32,
    /// Engine time of each of them \[h\].
    pub run_hours: Option<f64>,
    /// Why no engine run puts it back; none when one does.
    pub trouble: Option<DayTrouble>,
    /// State of charge each run begins at \[%\]: the lowest of the day, also where
    /// the bank is found frozen there.
    pub from_pct: Option<f64>,
    /// Mean current into the bank while the engine runs \[A\].
    pub mean_bank_a: Option<f64>,
    /// Energy the alternators' shafts took in a day \[kWh\].
    pub shaft_kwh: Option<f64>,
    /// Fuel a day, engine run for charging alone \[L\].
    pub fuel_l: Option<f64>,
    /// The alternator's part of it \[L\].
    pub marginal_fuel_l: Option<f64>,
}

pub(super) fn day_report(plant: &Plant, day: &DayNeed) -> DayReport {
    let blank = DayReport {
        need_ah: day.need_ah,
        engine_hours: None,
        runs: 0,
        run_hours: None,
        trouble: None,
        from_pct: None,
        mean_bank_a: None,
        shaft_kwh: None,
        fuel_l: None,
        marginal_fuel_l: None,
    };
    match daily_run(plant, day) {
        DailyRun::Trouble(trouble) => DayReport {
            trouble: Some(trouble),
            from_pct: frozen_from(plant, day).map(|soc| 100.0 * soc),
            ..blank
        },
        DailyRun::SunCovers => DayReport {
            engine_hours: Some(0.0),
            fuel_l: Some(0.0),
            marginal_fuel_l: Some(0.0),
            ..blank
        },
        DailyRun::Runs(runs) => {
            let hours = runs.hours();
            let marginal_fuel_l = marginal_l(plant.marginal_l_kwh(), runs.shaft_kwh);
            DayReport {
                engine_hours: Some(hours),
                runs: runs.runs,
                run_hours: Some(runs.run_hours),
                from_pct: Some(100.0 * runs.from),
                mean_bank_a: Some(runs.mean_bank_a(plant.bank.charge_efficiency)),
                shaft_kwh: Some(runs.shaft_kwh),
                fuel_l: Some(run_l(plant.fuel.idle_l_h, hours, marginal_fuel_l)),
                marginal_fuel_l: Some(marginal_fuel_l),
                ..blank
            }
        }
    }
}
