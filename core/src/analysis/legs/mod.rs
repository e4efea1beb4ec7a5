//! The day as legs: the engine's runs one after another. [`LegsReport`] is what
//! comes of them, `walk` takes them through the simulation.

mod walk;

use serde::Serialize;

use crate::analysis::RunReport;
use crate::analysis::temperatures::PartTemperatures;
use crate::boat::Purpose;
use crate::simulation::Limit;
use crate::simulation::opening::Opening;

pub(super) use walk::legs_report;

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
    /// Current of the alternators that charge the house bank, at its end \[A\].
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

impl LegReport {
    /// The hottest of a part, of all alternators \[°C\].
    fn hottest_c(&self, part: fn(&PartTemperatures) -> f64) -> f64 {
        let each = self.alternators.iter().map(|one| part(&one.peak));
        each.fold(f64::NEG_INFINITY, f64::max)
    }

    /// The hottest winding of all alternators \[°C\].
    pub fn hottest_winding_c(&self) -> f64 {
        self.hottest_c(|peak| peak.winding_c)
    }

    /// The hottest case of all alternators \[°C\].
    pub fn hottest_case_c(&self) -> f64 {
        self.hottest_c(|peak| peak.case_c)
    }
}
