//! What is told of a month: its weather, and what the weeks that were walked of it
//! come to.

use serde::Serialize;

use crate::analysis::engine_day::DayTrouble;
use crate::analysis::year::day::DayReport;
use crate::analysis::year::ledger::Balance;
use crate::analysis::year::weather::Weather;
use crate::analysis::year::weeks::Weeks;

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
    /// Of that, what found the bank full, a day \[W·h\].
    pub wasted_wh_day: f64,
    /// What the panels offered and the bank, being full, did not take, a day
    /// \[A·h\].
    pub wasted_ah_day: f64,
    /// What found the bank full, as a part of what the panels offer \[%\]: 0 to
    /// 100, and 0 without sun.
    pub wasted_pct: f64,
    /// What the other sources bring a day \[A·h\].
    pub other_ah_day: f64,
    /// Of that, what found the bank full, a day \[A·h\].
    pub other_wasted_ah_day: f64,
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
    /// Fuel in the month: of the runs for charging, what the alternators ask while
    /// motoring, and the generator's \[L\].
    pub fuel_l: f64,
    /// What the generator gives a day \[A·h\].
    pub generator_ah_day: f64,
    /// Time of the generator in seven days aboard \[h\].
    pub generator_h_week: f64,
    /// Time of the generator in the month \[h\].
    pub generator_h: f64,
    /// Fuel of the generator in the month, a part of `fuel_l` \[L\].
    pub generator_fuel_l: f64,
    /// What shore power gives a day \[A·h\].
    pub shore_ah_day: f64,
    /// Time at the dock with the charger on, in seven days aboard \[h\].
    pub shore_h_week: f64,
    /// Taken from shore power in the month \[kW·h\].
    pub shore_kwh: f64,
    /// The sun's part of what sun, other sources, engine, generator and shore power gave \[%\].
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
    /// Why the mains, at the dock or of a generator, give the bank nothing in this
    /// month; none where they do, or do not charge it.
    pub mains_trouble: Option<DayTrouble>,
    /// Where all ampere-hours of the month went.
    pub balance: Balance,
    /// A day at anchor; without hours where nobody is aboard, or where only the
    /// sums were asked for.
    pub day: DayReport,
}

impl MonthReport {
    /// What is told of a month of which weeks were walked, without fuel.
    pub fn of(weather: &Weather, weeks: &Weeks) -> MonthReport {
        let Weeks { ledger, .. } = weeks;
        let flowed = &ledger.balance;
        let (days, bank_v) = (weeks.days_aboard, weather.bank_v);
        let times = weather.figures.days / days;
        let used_ah = flowed.sun_ah - flowed.wasted_ah;
        let other_ah = flowed.other_ah - flowed.other_wasted_ah;
        let mains_ah = flowed.generator_ah + flowed.shore_ah;
        MonthReport {
            wasted_wh_day: flowed.wasted_ah * bank_v / weeks.days,
            wasted_ah_day: flowed.wasted_ah / weeks.days,
            wasted_pct: part_pct(flowed.wasted_ah, flowed.sun_ah),
            other_ah_day: flowed.other_ah / weeks.days,
            other_wasted_ah_day: flowed.other_wasted_ah / weeks.days,
            use_ah_day: flowed.use_ah / days,
            engine_ah_day: flowed.engine_ah / days,
            engine_h_week: 7.0 * ledger.engine_h / days,
            motoring_h_week: 7.0 * ledger.motoring_h / days,
            charging_h: times * (ledger.engine_h - ledger.motoring_h).max(0.0),
            motoring_h: times * ledger.motoring_h,
            generator_ah_day: flowed.generator_ah / days,
            generator_h_week: 7.0 * ledger.generator_h / days,
            generator_h: times * ledger.generator_h,
            shore_ah_day: flowed.shore_ah / days,
            shore_h_week: 7.0 * ledger.shore_h / days,
            shore_kwh: times * ledger.shore_kwh,
            sun_share_pct: part_pct(used_ah, used_ah + other_ah + flowed.engine_ah + mains_ah),
            lowest_pct: weeks.lowest_pct,
            days_below: (times * weeks.days_below).ceil() as u32,
            short_ah_day: flowed.short_ah / days,
            balance: flowed.times(times),
            ..MonthReport::ashore(weather)
        }
    }

    /// What is told of a month with nobody aboard: its weather.
    pub fn ashore(weather: &Weather) -> MonthReport {
        MonthReport {
            month: weather.month.number(),
            days_aboard: weather.figures.days,
            air_c: weather.figures.air_c,
            bank_c: weather.figures.bank_c,
            full_hours: weather.sky.full_hours,
            daylight_h: weather.sky.daylight_h,
            sun_wh_day: weather.sky.day_wh(),
            sun_ah_day: weather.sky.day_wh() / weather.bank_v,
            wasted_wh_day: 0.0,
            wasted_ah_day: 0.0,
            wasted_pct: 0.0,
            other_ah_day: 0.0,
            other_wasted_ah_day: 0.0,
            use_ah_day: 0.0,
            engine_ah_day: 0.0,
            engine_h_week: 0.0,
            motoring_h_week: 0.0,
            charging_h: 0.0,
            motoring_h: 0.0,
            fuel_l: 0.0,
            generator_ah_day: 0.0,
            generator_h_week: 0.0,
            generator_h: 0.0,
            generator_fuel_l: 0.0,
            shore_ah_day: 0.0,
            shore_h_week: 0.0,
            shore_kwh: 0.0,
            sun_share_pct: 0.0,
            lowest_pct: 100.0,
            days_below: 0,
            short_ah_day: 0.0,
            trouble: None,
            mains_trouble: None,
            balance: Balance::default(),
            day: DayReport::default(),
        }
    }
}

/// A part of a whole \[%\], 0 to 100; 0 of nothing.
fn part_pct(part: f64, whole: f64) -> f64 {
    if whole > 0.0 {
        (100.0 * part / whole).clamp(0.0, 100.0)
    } else {
        0.0
    }
}
