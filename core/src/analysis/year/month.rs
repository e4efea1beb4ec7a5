//! What is told of a month.

use serde::Serialize;

use crate::analysis::engine_day::DayTrouble;

/// One month of the year. Figures a day or a week are of days aboard; the
/// others are of all of the month's days aboard.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MonthReport {
    /// 1 for January.
    pub month: usize,
    /// Days aboard \[d\].
    pub days_aboard: f64,
    /// Outside air \[°C\].
    pub air_c: f64,
    /// Cells of the bank \[°C\].
    pub bank_c: f64,
    /// Hours of full sun a day on a level surface \[h\].
    pub full_hours: f64,
    /// From sunrise to sunset \[h\].
    pub daylight_h: f64,
    /// What the panels offer a day \[W·h\].
    pub sun_wh_day: f64,
    /// What the panels offer a day \[A·h\].
    pub sun_ah_day: f64,
    /// Of that, what found the bank full \[W·h\].
    pub wasted_wh_day: f64,
    /// The same \[A·h\].
    pub wasted_ah_day: f64,
    /// The same \[%\].
    pub wasted_pct: f64,
    /// What the boat uses a day, days under way among them \[A·h\].
    pub use_ah_day: f64,
    /// What the engine gives a day \[A·h\].
    pub engine_ah_day: f64,
    /// Engine time in seven days aboard \[h\].
    pub engine_h_week: f64,
    /// Of that, motoring that would have been done anyway \[h\].
    pub motoring_h_week: f64,
    /// Engine time for charging in the month, motoring not counted \[h\].
    pub charging_h: f64,
    /// Motoring in the month that would have been done anyway \[h\].
    pub motoring_h: f64,
    /// Fuel in the month: of the runs for charging, and what the alternators ask
    /// while motoring \[L\].
    pub fuel_l: f64,
    /// What shore power gives a day \[A·h\].
    pub shore_ah_day: f64,
    /// Time at the dock with the charger on, in seven days aboard \[h\].
    pub shore_h_week: f64,
    /// Taken from shore power in the month \[kW·h\].
    pub shore_kwh: f64,
    /// The sun's part of what sun, engine and shore power gave \[%\].
    pub sun_share_pct: f64,
    /// Lowest state of charge \[%\].
    pub lowest_pct: f64,
    /// Days aboard on which the bank fell below the lowest wanted.
    pub days_below: u32,
    /// Use that found the bank empty, a day \[A·h\].
    pub short_ah_day: f64,
    /// Why the engine gives nothing in this month when the rule asks for it;
    /// none when it does.
    pub trouble: Option<DayTrouble>,
    /// Where all ampere-hours of the month went.
    pub balance: Balance,
    /// A day at anchor; without hours where nobody is aboard, or where only the
    /// sums were asked for.
    pub day: DayReport,
}

/// The ampere-hours of a month, with the days between weekends aboard: sun −
/// wasted + engine + shore − use + short − lost = change. The engine, or shore
/// power, puts back what the month has taken from the bank, so that only what
/// the bank gained and cannot give back is a change.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize)]
pub struct Balance {
    /// Offered by the panels \[A·h\].
    pub sun_ah: f64,
    /// Of that, not taken: the bank was full or charged as fast as it may be \[A·h\].
    pub wasted_ah: f64,
    /// From the engine \[A·h\].
    pub engine_ah: f64,
    /// From shore power \[A·h\].
    pub shore_ah: f64,
    /// Wanted by the loads \[A·h\].
    pub use_ah: f64,
    /// Of that, not given: the bank was empty \[A·h\].
    pub short_ah: f64,
    /// Lost in charging \[A·h\].
    pub lost_ah: f64,
    /// Change of the bank from beginning to end \[A·h\].
    pub change_ah: f64,
}

/// A day at anchor once the days have settled.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct DayReport {
    /// After how many days all repeats itself: 1 when each day is like the
    /// last; none when it never quite does. Of the days that follow each other
    /// this is the one with the most charging by engine or shore power.
    pub repeats_days: Option<usize>,
    /// Engine time of the day \[h\].
    pub engine_h: f64,
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
    /// Wanted by the loads \[W\].
    pub use_w: f64,
    /// Minutes of it with the engine running.
    pub engine_min: f64,
    /// Minutes of it on shore power.
    pub shore_min: f64,
}
