//! A month's days: sun and use by the hour, and the weeks that are walked of it.

use crate::analysis::energy::Energy;
use crate::analysis::energy::hours::DayHours;
use crate::analysis::solar_day::{SolarDay, solar_day_of};
use crate::analysis::year::climate::in_month;
use crate::analysis::year::pattern::DayPattern;
use crate::analysis::year::rule::{EngineSchedule, Source};
use crate::analysis::year::walk::{EnergyLedger, Hour, YearWalk};
use crate::analysis::year::{Balance, DayReport, HourReport, MonthReport};
use crate::boat::{DayUse, Month, MonthFigures, Worksheet};
use crate::physics::climate::MONTH_DAYS;

/// Days after which a pattern that has not repeated itself is left at that.
const LONGEST_PATTERN: usize = 60;
/// A bank is below the lowest wanted from this much on: shown percents are
/// whole, and an engine that is started there takes a minute \[state of charge\].
const BELOW: f64 = 0.005;
/// Two days are alike when their states of charge differ by no more.
const ALIKE: f64 = 0.001;
/// A run whose mean current stands for a month without any \[h\].
const USUAL_RUN_H: f64 = 2.0;

/// The hours of a month.
#[derive(Debug, Clone)]
pub struct Weather {
    /// What the month is worked out with.
    pub figures: MonthFigures,
    month: Month,
    sky: SolarDay,
    pattern: DayPattern,
    bank_v: f64,
    anchor: Vec<Hour>,
    under_way: Vec<Hour>,
}

/// The weeks that were walked of a month.
#[derive(Debug, Clone)]
pub struct Weeks {
    tally: EnergyLedger,
    change_ah: f64,
    days_aboard: f64,
    days_below: f64,
    lowest_pct: f64,
}

impl Weeks {
    /// Days of them aboard; at least one.
    pub fn days_aboard(&self) -> f64 {
        self.days_aboard
    }

    /// What the alternators' shafts took in them \[kWh\].
    pub fn shaft_kwh(&self) -> f64 {
        self.tally.shaft_kwh
    }
}

impl Weather {
    /// Of a month of the boat.
    pub fn new(
        sheet: &Worksheet,
        energy: &Energy,
        month: Month,
        figures: &MonthFigures,
    ) -> Weather {
        let inputs = in_month(&sheet.inputs, figures);
        let orders = EngineSchedule::of(&inputs);
        let sky = solar_day_of(&inputs, month, figures.sun_h);
        let bank_v = energy.bank_v;
        let hours = |day: &DayUse| {
            let used = figures.use_pct / 100.0;
            hours(&DayHours::new(day, &sky, bank_v).scaled(used, 1.0), &orders)
        };
        let under_way = hours(&energy.under_way);
        let mut anchor = hours(&energy.anchor);
        anchor.iter_mut().for_each(|hour| hour.motoring_h = 0.0);
        let month_days = MONTH_DAYS[month as usize % MONTH_DAYS.len()];
        Weather {
            pattern: DayPattern::of(
                inputs.rule.aboard,
                figures.days,
                month_days,
                inputs.rule.under_way_days_week,
            ),
            figures: *figures,
            month,
            sky,
            bank_v,
            anchor,
            under_way,
        }
    }

    /// Whether a day of it is like a day of another, and comes in the same weeks.
    pub fn alike(&self, other: &Weather) -> bool {
        self.pattern == other.pattern
            && self.figures.air_c == other.figures.air_c
            && self.figures.bank_c == other.figures.bank_c
            && self.anchor == other.anchor
            && self.under_way == other.under_way
    }

    /// Walks the weeks that count, after those to settle.
    pub fn weeks(&self, walker: &mut YearWalk) -> Weeks {
        for day in 0..self.pattern.settling {
            self.walk_day(day, walker);
        }
        let before_ah = walker.charge_ah;
        let mut tally = EnergyLedger::starting(before_ah);
        let (mut days_aboard, mut days_below) = (0.0, 0.0);
        for day in 0..self.pattern.counted {
            let today = self.walk_day(day, walker);
            if self.pattern.day_aboard(day).is_some() {
                days_aboard += 1.0;
                if today.lowest_ah < (walker.orders.low - BELOW) * walker.capacity_ah {
                    days_below += 1.0;
                }
            }
            tally.add(&today);
        }
        let mut change_ah = walker.charge_ah - before_ah;
        let open_h = self.anchor.iter().filter(|hour| !hour.quiet).count() as f64;
        change_ah += put_back(&mut tally, walker, -change_ah, days_aboard * open_h);
        Weeks {
            lowest_pct: walker.pct(tally.lowest_ah),
            tally,
            change_ah,
            days_aboard,
            days_below,
        }
    }

    /// A day of the pattern, from midnight.
    fn walk_day(&self, day: u32, walker: &mut YearWalk) -> EnergyLedger {
        let mut today = EnergyLedger::starting(walker.charge_ah);
        let aboard = self.pattern.day_aboard(day);
        let under_way = aboard.is_some_and(|aboard| walker.orders.under_way(aboard));
        let hours = if under_way {
            &self.under_way
        } else {
            &self.anchor
        };
        for hour in hours {
            let hour = match aboard {
                Some(_) => *hour,
                None => hour.alone(),
            };
            walker.hour(&hour, &mut today);
        }
        today
    }

    /// What is told of a month of which weeks were walked, without fuel.
    pub fn report(&self, weeks: &Weeks, bank_v: f64) -> MonthReport {
        let Weeks {
            tally,
            change_ah,
            days_aboard: days,
            days_below,
            lowest_pct,
        } = *weeks;
        let times = self.figures.days / days;
        let all_days = f64::from(self.pattern.counted);
        let used_ah = tally.sun_ah - tally.wasted_ah;
        let part_pct = |part: f64, whole: f64| {
            if whole > 0.0 {
                (100.0 * part / whole).clamp(0.0, 100.0)
            } else {
                0.0
            }
        };
        MonthReport {
            wasted_wh_day: tally.wasted_ah * bank_v / all_days,
            wasted_ah_day: tally.wasted_ah / all_days,
            wasted_pct: part_pct(tally.wasted_ah, tally.sun_ah),
            use_ah_day: tally.use_ah / days,
            engine_ah_day: tally.engine_ah / days,
            engine_h_week: 7.0 * tally.engine_h / days,
            motoring_h_week: 7.0 * tally.motoring_h / days,
            charging_h: times * (tally.engine_h - tally.motoring_h).max(0.0),
            motoring_h: times * tally.motoring_h,
            shore_ah_day: tally.shore_ah / days,
            shore_h_week: 7.0 * tally.shore_h / days,
            shore_kwh: times * tally.shore_kwh,
            sun_share_pct: part_pct(used_ah, used_ah + tally.engine_ah + tally.shore_ah),
            lowest_pct,
            days_below: (times * days_below).ceil() as u32,
            short_ah_day: tally.short_ah / days,
            balance: Balance {
                sun_ah: times * tally.sun_ah,
                wasted_ah: times * tally.wasted_ah,
                engine_ah: times * tally.engine_ah,
                shore_ah: times * tally.shore_ah,
                use_ah: times * tally.use_ah,
                short_ah: times * tally.short_ah,
                lost_ah: times * tally.lost_ah,
                change_ah: times * change_ah,
            },
            ..self.ashore()
        }
    }

    /// What is told of a month with nobody aboard: its weather.
    pub fn ashore(&self) -> MonthReport {
        MonthReport {
            month: self.month.number(),
            days_aboard: self.figures.days,
            air_c: self.figures.air_c,
            bank_c: self.figures.bank_c,
            full_hours: self.sky.full_hours,
            daylight_h: self.sky.daylight_h,
            sun_wh_day: self.sky.day_wh(),
            sun_ah_day: self.sky.day_wh() / self.bank_v,
            wasted_wh_day: 0.0,
            wasted_ah_day: 0.0,
            wasted_pct: 0.0,
            use_ah_day: 0.0,
            engine_ah_day: 0.0,
            engine_h_week: 0.0,
            motoring_h_week: 0.0,
            charging_h: 0.0,
            motoring_h: 0.0,
            fuel_l: 0.0,
            shore_ah_day: 0.0,
            shore_h_week: 0.0,
            shore_kwh: 0.0,
            sun_share_pct: 0.0,
            lowest_pct: 100.0,
            days_below: 0,
            short_ah_day: 0.0,
            trouble: None,
            balance: Balance::default(),
            day: DayReport::default(),
        }
    }

    /// Days at anchor, one after the other, until they repeat themselves; of
    /// those the one with the most charging by engine or shore power.
    pub fn settled_day(&self, mut walker: YearWalk) -> DayReport {
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

/// Lets what charges by the rule put back what the weeks have taken from the
/// bank \[A·h\], or leave out what they have gained, at its mean current of the
/// weeks and in no more than the hours that the rule leaves; gives what the bank
/// gains by it \[A·h\]. So a month counts parts of runs, and does not depend on
/// whether one has just ended.
fn put_back(tally: &mut EnergyLedger, walker: &YearWalk, lacks_ah: f64, open_h: f64) -> f64 {
    let given_ah = lacks_ah / walker.kept;
    match walker.orders.source {
        Source::Engine => {
            let charging_h = tally.engine_h - tally.motoring_h;
            let usual_a = walker
                .engine()
                .mean_a(0.0, USUAL_RUN_H, walker.orders.start);
            let (mean_a, kwh_ah) = if charging_h > 0.0 && tally.ruled_ah > 0.0 {
                let kwh_ah = tally.shaft_kwh / tally.engine_ah;
                (tally.ruled_ah / charging_h, kwh_ah)
            } else {
                let kwh_ah = walker.engine().shaft_kwh_ah(walker.orders.start);
                (usual_a, kwh_ah)
            };
            if mean_a <= 0.0 {
                return 0.0;
            }
            let most_ah = (open_h - charging_h).max(0.0) * mean_a;
            let given_ah = given_ah.clamp(-tally.ruled_ah, most_ah);
            tally.ruled_ah += given_ah;
            tally.engine_ah += given_ah;
            tally.engine_h += given_ah / mean_a;
            tally.shaft_kwh += given_ah * kwh_ah;
            tally.lost_ah += given_ah * (1.0 - walker.kept);
            given_ah * walker.kept
        }
        Source::Shore if tally.shore_ah > 0.0 && tally.shore_h > 0.0 => {
            let most_ah = tally.shore_ah * (open_h / tally.shore_h - 1.0).max(0.0);
            let given_ah = given_ah.clamp(-tally.shore_ah, most_ah);
            let more = given_ah / tally.shore_ah;
            tally.shore_ah += given_ah;
            tally.shore_h += more * tally.shore_h;
            tally.shore_kwh += more * tally.shore_kwh;
            tally.lost_ah += given_ah * (1.0 - walker.kept);
            given_ah * walker.kept
        }
        Source::Shore | Source::Nothing => 0.0,
    }
}

/// The hours of a day under way.
fn hours(day: &DayHours, orders: &EngineSchedule) -> Vec<Hour> {
    let hour = |(at, (sun_a, use_a)): (usize, (&f64, &f64))| Hour {
        sun_a: *sun_a,
        use_a: *use_a,
        quiet: orders.is_quiet(at),
        motoring_h: orders.motoring_h(at),
    };
    let hours = day.sun_ah.iter().zip(&day.use_ah);
    hours.enumerate().map(hour).collect()
}
