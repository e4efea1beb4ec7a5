//! A day at anchor, hour by hour, once the days have settled. Uses the month's
//! hours and the walk.

use serde::Serialize;

use crate::analysis::year::engine_loads::DayKind;
use crate::analysis::year::ledger::EnergyLedger;
use crate::analysis::year::walk::YearWalk;
use crate::analysis::year::weather::Weather;

/// Days after which a pattern that has not repeated itself is left at that.
const LONGEST_PATTERN: usize = 60;
/// Two days are alike when their states of charge differ by no more.
const ALIKE: f64 = 0.001;

/// A day at anchor once the days have settled.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct DayReport {
    /// After how many days all repeats itself: 1 when each day is like the
    /// last; none when it never quite does. Of the days that follow each other
    /// this is the one with the most charging by engine, generator or shore power.
    pub repeats_days: Option<usize>,
    /// Engine time of the day \[h\].
    pub engine_h: f64,
    /// Time of the generator \[h\].
    pub generator_h: f64,
    /// Time on shore power \[h\].
    pub shore_h: f64,
    /// Its hours, from midnight by the sun.
    pub hours: Vec<HourReport>,
    /// State of charge at its end \[%\].
    pub end_charge_pct: f64,
}

/// One hour of a day.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct HourReport {
    /// It begins at this hour.
    pub hour: usize,
    /// State of charge at its beginning \[%\].
    pub charge_pct: f64,
    /// Offered by the panels \[W\].
    pub sun_w: f64,
    /// Brought by the other sources \[W\].
    pub other_w: f64,
    /// Wanted by the loads \[W\].
    pub use_w: f64,
    /// Minutes of it with the engine running.
    pub engine_min: f64,
    /// Minutes of it with the generator running.
    pub generator_min: f64,
    /// Minutes of it on shore power.
    pub shore_min: f64,
}

impl DayReport {
    /// Days at anchor, one after the other, until they repeat themselves; of
    /// those the one with the most charging by engine, generator or shore power.
    pub fn settled(weather: &Weather, mut walker: YearWalk) -> DayReport {
        let mut mornings = vec![(walker.charge(), walker.charging)];
        let mut days: Vec<DayReport> = Vec::new();
        let mut repeats_days = None;
        while repeats_days.is_none() && days.len() < LONGEST_PATTERN {
            days.push(DayReport::next(weather, &mut walker));
            let now = (walker.charge(), walker.charging);
            repeats_days = mornings
                .iter()
                .rev()
                .position(|then| then.1 == now.1 && (then.0 - now.0).abs() <= ALIKE)
                .map(|back| back + 1);
            mornings.push(now);
        }
        let pattern = repeats_days.unwrap_or(1);
        let busiest = days
            .into_iter()
            .rev()
            .take(pattern)
            .max_by(|a, b| a.charging_h().total_cmp(&b.charging_h()));
        DayReport {
            repeats_days,
            ..busiest.unwrap_or_default()
        }
    }

    /// Time of engine, generator and shore power together \[h\].
    fn charging_h(&self) -> f64 {
        self.engine_h + self.generator_h + self.shore_h
    }

    /// The next day at anchor.
    fn next(weather: &Weather, walker: &mut YearWalk) -> DayReport {
        let mut report = DayReport::default();
        walker.begin_day(Some(DayKind::Anchor));
        for (at, hour) in weather.anchor.iter().enumerate() {
            let mut ledger = EnergyLedger::default();
            let charge_pct = walker.pct(walker.charge_ah);
            walker.hour(hour, &mut ledger);
            report.engine_h += ledger.engine_h;
            report.generator_h += ledger.generator_h;
            report.shore_h += ledger.shore_h;
            report.hours.push(HourReport {
                hour: at,
                charge_pct,
                sun_w: hour.sun_a * weather.bank_v,
                other_w: hour.other_a * weather.bank_v,
                use_w: ledger.balance.use_ah * weather.bank_v,
                engine_min: 60.0 * ledger.engine_h,
                generator_min: 60.0 * ledger.generator_h,
                shore_min: 60.0 * ledger.shore_h,
            });
        }
        report.end_charge_pct = walker.pct(walker.charge_ah);
        report
    }
}
