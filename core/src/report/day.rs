//! The daily engine time.

use serde::Serialize;

use crate::charge::day::{DailyRun, daily_run};
use crate::charge::plant::Plant;

/// The daily engine time.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DayReport {
    /// What the engine must put back \[A·h\].
    pub need_ah: f64,
    /// Engine time a day \[h\]; 0 when the sun covers it, none when no day is long enough.
    pub engine_hours: Option<f64>,
    /// State of charge the daily run begins at \[%\].
    pub from_pct: Option<f64>,
    /// Mean current into the bank on that run \[A\].
    pub mean_bank_a: Option<f64>,
    /// Energy the alternators' shafts took on it \[kWh\].
    pub shaft_kwh: Option<f64>,
    /// Fuel a day, engine run for charging alone \[L\].
    pub fuel_l: Option<f64>,
    /// The alternator's part of it \[L\].
    pub marginal_fuel_l: Option<f64>,
}

pub(super) fn day_report(plant: &Plant, need_ah: f64, to: f64) -> DayReport {
    let blank = DayReport {
        need_ah,
        engine_hours: None,
        from_pct: None,
        mean_bank_a: None,
        shaft_kwh: None,
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
            gained_ah,
        } => {
            let marginal_fuel_l = plant.marginal_fuel_l_h(1000.0) * shaft_kwh;
            DayReport {
                engine_hours: Some(hours),
                from_pct: Some(100.0 * from),
                mean_bank_a: Some(
                    gained_ah / hours.max(f64::MIN_POSITIVE) / plant.bank.charge_efficiency,
                ),
                shaft_kwh: Some(shaft_kwh),
                fuel_l: Some(plant.fuel.idle_l_h * hours + marginal_fuel_l),
                marginal_fuel_l: Some(marginal_fuel_l),
                ..blank
            }
        }
    }
}
