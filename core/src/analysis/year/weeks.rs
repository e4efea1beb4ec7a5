//! The weeks of a month, walked once the bank has settled. Uses the month's hours,
//! the walk and the ledger.

use crate::analysis::year::engine_loads::DayKind;
use crate::analysis::year::ledger::EnergyLedger;
use crate::analysis::year::put_back::put_back;
use crate::analysis::year::rule::{EngineSchedule, Source};
use crate::analysis::year::walk::YearWalk;
use crate::analysis::year::weather::Weather;

/// How often the days that settle are walked at most.
const MOST_SETTLING: u32 = 12;
/// A bank that drifts less than this in them is settled, as a part of it.
const STEADY: f64 = 0.001;
/// A bank is below the lowest wanted from this much on: shown percents are
/// whole, and an engine that is started there takes a minute \[state of charge\].
const BELOW: f64 = 0.005;

/// The weeks that were walked of a month.
#[derive(Debug, Clone)]
pub struct Weeks {
    /// All that flowed in them.
    pub ledger: EnergyLedger,
    /// Days of them \[d\].
    pub days: f64,
    /// Days of them aboard \[d\]; at least one.
    pub days_aboard: f64,
    /// Days aboard on which the bank fell below the lowest wanted \[d\].
    pub days_below: f64,
    /// Lowest state of charge \[%\].
    pub lowest_pct: f64,
}

impl Weeks {
    /// Walks the weeks that count, after those to settle.
    pub fn walked(weather: &Weather, walker: &mut YearWalk) -> Weeks {
        settle(weather, walker);
        let before_ah = walker.charge_ah;
        let waited_ah = walker.waiting_ah();
        let mut ledger = EnergyLedger::starting(before_ah);
        let (mut days_aboard, mut days_below, mut open_h) = (0.0, 0.0, 0.0);
        for day in 0..weather.pattern.counted {
            let today = walk_day(weather, day, walker);
            open_h += open_hours(weather, day, walker);
            if weather.pattern.day_aboard(day).is_some() {
                days_aboard += 1.0;
                if today.lowest_ah < (walker.orders.low - BELOW) * walker.capacity_ah {
                    days_below += 1.0;
                }
            }
            ledger.add(&today);
        }
        // What still waits for the engine counts as drawn, and the bank lacks it.
        let owed_ah = walker.waiting_ah() - waited_ah;
        ledger.balance.use_ah += owed_ah;
        let mut change_ah = walker.charge_ah - before_ah - owed_ah;
        change_ah += put_back(&mut ledger, walker, -change_ah, open_h);
        ledger.balance.change_ah = change_ah;
        Weeks {
            lowest_pct: walker.pct(ledger.lowest_ah),
            ledger,
            days: f64::from(weather.pattern.counted),
            days_aboard,
            days_below,
        }
    }
}

/// Walks until the bank no longer drifts: it is charged by the rule, or ends
/// the weeks as it began them.
fn settle(weather: &Weather, walker: &mut YearWalk) {
    for _ in 0..MOST_SETTLING {
        let before_ah = walker.charge_ah;
        let mut ledger = EnergyLedger::starting(before_ah);
        for day in 0..weather.pattern.settling {
            ledger.add(&walk_day(weather, day, walker));
        }
        let drift_ah = (walker.charge_ah - before_ah).abs();
        let given = &ledger.balance;
        let charged_ah = ledger.ruled_ah + given.shore_ah + given.generator_ah;
        if charged_ah > 0.0 || drift_ah < STEADY * walker.capacity_ah {
            return;
        }
    }
}

/// What a day of the pattern is; none with nobody aboard.
fn kind(weather: &Weather, day: u32, orders: &EngineSchedule) -> Option<DayKind> {
    let aboard = weather.pattern.day_aboard(day)?;
    Some(match orders.under_way(aboard) {
        true => DayKind::UnderWay,
        false => DayKind::Anchor,
    })
}

/// How long the rule may charge the bank on a day of the pattern \[h\]: outside the
/// quiet hours, and with the engine not while it runs anyway.
fn open_hours(weather: &Weather, day: u32, walker: &YearWalk) -> f64 {
    let orders = walker.orders;
    let Some(kind) = kind(weather, day, orders) else {
        return 0.0;
    };
    let open = weather.hours(kind).iter().filter(|hour| !hour.quiet);
    let open_h: f64 = match orders.source {
        Source::Engine => open.map(|hour| 1.0 - hour.motoring_h).sum(),
        Source::Shore | Source::Generator | Source::Nothing => open.count() as f64,
    };
    open_h.min(orders.charging_h())
}

/// A day of the pattern, from midnight.
fn walk_day(weather: &Weather, day: u32, walker: &mut YearWalk) -> EnergyLedger {
    let mut today = EnergyLedger::starting(walker.charge_ah);
    let aboard = kind(weather, day, walker.orders);
    walker.begin_day(aboard);
    for hour in weather.hours(aboard.unwrap_or(DayKind::Anchor)) {
        let hour = match aboard {
            Some(_) => *hour,
            None => hour.alone(),
        };
        walker.hour(&hour, &mut today);
    }
    today
}
