//! A month's days: sun and use by the hour, and four weeks of them.

use crate::analysis::energy::Energy;
use crate::analysis::energy::hours::DayHours;
use crate::analysis::solar_day::SolarDay;
use crate::analysis::year::rule::EngineSchedule;
use crate::analysis::year::walk::{EnergyLedger, Hour, YearWalk};
use crate::analysis::year::{Balance, DayReport, HourReport, MonthReport};
use crate::boat::DayUse;

/// Days counted in each month.
const DAYS: u32 = 28;
/// Days after which a pattern that has not repeated itself is left at that.
const LONGEST_PATTERN: usize = 60;
/// A bank is below the lowest wanted from this much on: shown percents are
/// whole, and an engine that is started there takes a minute \[state of charge\].
const BELOW: f64 = 0.005;
/// Two days are alike when their states of charge differ by no more.
const ALIKE: f64 = 0.001;

/// The hours of a month.
#[derive(Debug, Clone)]
pub struct Weather<'a> {
    sky: &'a SolarDay,
    bank_v: f64,
    anchor: Vec<Hour>,
    under_way: Vec<Hour>,
}

impl<'a> Weather<'a> {
    /// A month of that sun.
    pub fn new(energy: &Energy, sky: &'a SolarDay, orders: &EngineSchedule) -> Weather<'a> {
        let bank_v = energy.bank_v;
        let under_way = hours(&energy.under_way, sky, bank_v, orders);
        let mut anchor = hours(&energy.anchor, sky, bank_v, orders);
        anchor.iter_mut().for_each(|hour| hour.motoring_h = 0.0);
        Weather {
            sky,
            bank_v,
            anchor,
            under_way,
        }
    }

    /// Four weeks: what came and went, and on how many days the bank was lower
    /// than wanted.
    pub fn four_weeks(&self, walker: &mut YearWalk) -> (EnergyLedger, u32) {
        let mut tally = EnergyLedger::starting(walker.charge_ah);
        let mut days_below = 0;
        for day in 0..DAYS {
            let hours = if walker.orders.under_way(day) {
                &self.under_way
            } else {
                &self.anchor
            };
            let mut today = EnergyLedger::starting(walker.charge_ah);
            for hour in hours {
                walker.hour(hour, &mut today);
            }
            if today.lowest_ah < (walker.orders.low - BELOW) * walker.capacity_ah {
                days_below += 1;
            }
            tally.add(&today);
        }
        (tally, days_below)
    }

    /// The report of a month, 1 to 12.
    pub fn month(&self, month: usize, walker: &mut YearWalk) -> MonthReport {
        let before_ah = walker.charge_ah;
        let (tally, days_below) = self.four_weeks(walker);
        let days = f64::from(DAYS);
        let used_ah = tally.sun_ah - tally.wasted_ah;
        let part_pct = |part: f64, whole: f64| {
            if whole > 0.0 {
                (100.0 * part / whole).clamp(0.0, 100.0)
            } else {
                0.0
            }
        };
        MonthReport {
            month,
            full_hours: self.sky.full_hours,
            daylight_h: self.sky.daylight_h,
            sun_wh_day: self.sky.day_wh(),
            sun_ah_day: self.sky.day_wh() / self.bank_v,
            wasted_wh_day: tally.wasted_ah * self.bank_v / days,
            wasted_ah_day: tally.wasted_ah / days,
            wasted_pct: part_pct(tally.wasted_ah, tally.sun_ah),
            use_ah_day: tally.use_ah / days,
            engine_ah_day: tally.engine_ah / days,
            engine_h_week: 7.0 * tally.engine_h / days,
            motoring_h_week: 7.0 * tally.motoring_h / days,
            shore_ah_day: tally.shore_ah / days,
            shore_h_week: 7.0 * tally.shore_h / days,
            shore_kwh: tally.shore_kwh,
            sun_share_pct: part_pct(used_ah, used_ah + tally.engine_ah + tally.shore_ah),
            lowest_pct: walker.pct(tally.lowest_ah),
            days_below,
            short_ah_day: tally.short_ah / days,
            balance: Balance {
                sun_ah: tally.sun_ah,
                wasted_ah: tally.wasted_ah,
                engine_ah: tally.engine_ah,
                shore_ah: tally.shore_ah,
                use_ah: tally.use_ah,
                short_ah: tally.short_ah,
                lost_ah: tally.lost_ah,
                change_ah: walker.charge_ah - before_ah,
            },
            day: self.settled_day(walker.clone()),
        }
    }

    /// Days at anchor, one after the other, until they repeat themselves; of
    /// those the one with the most charging by engine or shore power.
    fn settled_day(&self, mut walker: YearWalk) -> DayReport {
        let mut mornings = vec![(walker.charge(), walker.charging)];
        let mut days: Vec<DayReport> = Vec::new();
        let mut repeats_days = None;
        while repeats_days.is_none() && days.len() < LONGEST_PATTERN {
            days.push(self.day(&mut walker));
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
            .max_by(|a, b| (a.engine_h + a.shore_h).total_cmp(&(b.engine_h + b.shore_h)));
        DayReport {
            repeats_days,
            ..busiest.unwrap_or_default()
        }
    }

    fn day(&self, walker: &mut YearWalk) -> DayReport {
        let mut report = DayReport::default();
        for (at, hour) in self.anchor.iter().enumerate() {
            let mut tally = EnergyLedger::default();
            let charge_pct = walker.pct(walker.charge_ah);
            walker.hour(hour, &mut tally);
            report.engine_h += tally.engine_h;
            report.shore_h += tally.shore_h;
            report.hours.push(HourReport {
                hour: at,
                charge_pct,
                sun_w: hour.sun_a * self.bank_v,
                use_w: hour.use_a * self.bank_v,
                engine_min: 60.0 * tally.engine_h,
                shore_min: 60.0 * tally.shore_h,
            });
        }
        report.end_charge_pct = walker.pct(walker.charge_ah);
        report
    }
}

/// The hours of a day under way.
fn hours(day: &DayUse, sky: &SolarDay, bank_v: f64, orders: &EngineSchedule) -> Vec<Hour> {
    let day = DayHours::new(day, sky, bank_v);
    let hour = |(at, (sun_a, use_a)): (usize, (&f64, &f64))| Hour {
        sun_a: *sun_a,
        use_a: *use_a,
        quiet: orders.is_quiet(at),
        motoring_h: orders.motoring_h(at),
    };
    let hours = day.sun_ah.iter().zip(&day.use_ah);
    hours.enumerate().map(hour).collect()
}
