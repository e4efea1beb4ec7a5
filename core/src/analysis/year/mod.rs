//! The year aboard: twelve months of four weeks, hour by hour, the bank charged
//! by the engine or at the dock as the user's rule says.
//!
//! `weather` spreads sun and use over the hours of a month's days, `charger`
//! tabulates what the engine gives, `rule` holds the rule, `walk` steps a bank
//! through the hours. There are no clouds: every day of a month has that
//! month's mean sun. An engine that cannot charge the bank, by the same test as
//! the day's answer, gives nothing here either.

mod charger;
mod rule;
mod walk;
mod weather;

use serde::Serialize;

use crate::analysis::energy::energy;
use crate::analysis::engine_day::{DayTrouble, gives_nothing};
use crate::analysis::solar_day::{SolarDay, solar_day};
use crate::boat::{Month, SunBasis, Worksheet};
use crate::boat::{house_load_a, mean_draw_a};
use crate::simulation::plant::Plant;
use crate::simulation::shore_charger::ShoreCharger;

use charger::Charger;
use rule::{EngineSchedule, Source};
use walk::{Chargers, YearWalk};
use weather::Weather;

const HOURS_A_DAY: usize = 24;

/// A year aboard. Everything in it is a mean year's: no month has weather.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Year {
    /// Whether the sun differs from month to month: it does when reckoned
    /// from the latitude, not when the user gives the hours.
    pub sun_by_month: bool,
    /// State of charge at which sun and engine stop \[%\].
    pub full_pct: f64,
    /// The lowest state of charge wanted \[%\].
    pub low_pct: f64,
    /// Voltage that watt-hours and ampere-hours are converted with \[V\].
    pub bank_v: f64,
    /// Engine hours of fifty-two weeks, motoring included \[h\].
    pub engine_h: f64,
    /// Taken from shore power in fifty-two weeks \[kW·h\]; 0 where the engine charges.
    pub shore_kwh: f64,
    /// Whether the bank is charged at the dock and not by the engine.
    pub at_dock: bool,
    /// State of charge at which charging starts \[%\].
    pub start_pct: f64,
    /// Why the engine gives nothing when the rule asks for it; none when it does.
    pub trouble: Option<DayTrouble>,
    /// The months, January first.
    pub months: Vec<MonthReport>,
}

/// Four weeks of one month.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MonthReport {
    /// 1 for January.
    pub month: usize,
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
    /// Engine time a week \[h\].
    pub engine_h_week: f64,
    /// Of that, motoring that would have been done anyway \[h\].
    pub motoring_h_week: f64,
    /// What shore power gives a day \[A·h\].
    pub shore_ah_day: f64,
    /// Time at the dock with the charger on, a week \[h\].
    pub shore_h_week: f64,
    /// Taken from shore power in the four weeks \[kW·h\].
    pub shore_kwh: f64,
    /// The sun's part of what sun, engine and shore power gave \[%\].
    pub sun_share_pct: f64,
    /// Lowest state of charge \[%\].
    pub lowest_pct: f64,
    /// Days on which the bank fell below the lowest wanted, of four weeks.
    pub days_below: u32,
    /// Use that found the bank empty, a day \[A·h\].
    pub short_ah_day: f64,
    /// Where all ampere-hours of the four weeks went.
    pub balance: Balance,
    /// A day at anchor.
    pub day: DayReport,
}

/// The ampere-hours of four weeks: sun − wasted + engine + shore − use + short −
/// lost = change.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
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

/// Works out the year.
pub fn year(sheet: &Worksheet) -> Year {
    let inputs = &sheet.inputs;
    let energy = energy(sheet);
    let plant = Plant::new(inputs, mean_draw_a(sheet));
    let orders = EngineSchedule::of(inputs);
    let trouble = trouble(sheet, &orders);
    let orders = orders.without_engine(trouble.is_some());
    let chargers = Chargers {
        engine: match trouble {
            None => Charger::of(&plant, 0.5 * (orders.start + orders.stop)),
            Some(_) => Charger::nothing(),
        },
        shore: ShoreCharger::of(inputs),
        limit_a: inputs.charge_limit_a(),
    };
    let mut walker = YearWalk::new(&plant.bank, &orders, &chargers);
    let skies: Vec<SolarDay> = Month::ALL
        .iter()
        .map(|month| solar_day(inputs, *month))
        .collect();
    // A December beforehand, so that January begins as the year goes on.
    if let Some(december) = skies.last() {
        Weather::new(&energy, december, &orders).four_weeks(&mut walker);
    }
    let months: Vec<MonthReport> = skies
        .iter()
        .zip(1..)
        .map(|(sky, month)| Weather::new(&energy, sky, &orders).month(month, &mut walker))
        .collect();
    let weeks = 52.0 / months.len().max(1) as f64;
    Year {
        sun_by_month: inputs.sun.basis == SunBasis::Place && inputs.sun.panel_w > 0.0,
        full_pct: 100.0 * orders.full,
        low_pct: 100.0 * orders.low,
        bank_v: energy.bank_v,
        engine_h: weeks * months.iter().map(|month| month.engine_h_week).sum::<f64>(),
        shore_kwh: weeks / 4.0 * months.iter().map(|month| month.shore_kwh).sum::<f64>(),
        at_dock: orders.source == Source::Shore,
        start_pct: 100.0 * orders.start,
        trouble,
        months,
    }
}

/// Why the engine cannot charge the bank to where the rule stops it, the boat
/// drawing what it does while charging.
fn trouble(sheet: &Worksheet, orders: &EngineSchedule) -> Option<DayTrouble> {
    let plant = Plant::new(&sheet.inputs, house_load_a(sheet));
    gives_nothing(&plant, orders.start, orders.stop)
}
