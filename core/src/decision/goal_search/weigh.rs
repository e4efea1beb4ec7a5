//! Works out one combination of changes.

use crate::analysis::energy::energy;
use crate::analysis::energy::hours::{DayHours, SolarStorage, UnderWay};
use crate::analysis::engine_day::{DayNeed, daily_trace};
use crate::analysis::generator::generator_day;
use crate::analysis::solar_day::{solar_day, solar_day_of};
use crate::analysis::year::{YearSums, year_sums};
use crate::boat::{DayUse, Inputs, May, Month, Worksheet};
use crate::decision::arrangements::{Stated, harm, price};
use crate::decision::goal_search::lever::{
    CAP, CHARGER, COUNT, DIRECT, GENERATOR, LARGER, LEVERS, PULLEY, REGULATOR, SECOND,
};
use crate::decision::goal_search::rules::{run_harms, stands_to_harm, unwatched_harms};
use crate::findings::Finding;
use crate::report::report;
use crate::simulation::engine_load::{SwitchedLoad, anchor_loads};
use crate::simulation::plant::Plant;

/// Which amount of each lever is taken; 0 for none.
pub(super) type Levels = [u8; COUNT];

/// What comes of one combination.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Tried {
    pub levels: Levels,
    pub bought: f64,
    /// Engine time a day \[h\]; without end where no run is long enough, and not
    /// worked out where what is quicker finds harm.
    pub hours: f64,
    /// About how much fuel a year takes \[L\], by what the days of each month need
    /// beside the worksheet's day, less what motoring brings: to leave out what
    /// is far from a goal. What is told is [`Scales::year`].
    pub rough_fuel_l: f64,
    /// Whether the quick rules find harm in it; the whole report may find more.
    pub harmful: bool,
}

/// Panels that the hours of a day are kept for \[W\].
const HOURS_PANEL_W: f64 = 1000.0;

/// A boat whose changes are weighed.
#[derive(Debug, Clone)]
pub(super) struct Scales {
    pub inputs: Inputs,
    pub amounts: [Vec<f64>; COUNT],
    stated: Stated,
    /// The day's use before any saving \[A·h\].
    whole_ah: f64,
    /// Days aboard in each month \[d\], and the hours of one of them.
    months: Vec<(f64, DayHours)>,
    /// What runs with the engine alone, before any saving, and what of the day's
    /// use that is \[A·h\].
    engine_loads: Vec<SwitchedLoad>,
    with_engine_ah: f64,
    /// The hours of that day, with the sun of so many watts of panels.
    hours: DayHours,
}

/// The days aboard of each month and the hours of one of them, of a boat with a
/// day's use.
fn months(sheet: &Worksheet, day: &DayUse, bank_v: f64) -> Vec<(f64, DayHours)> {
    let figures = sheet.month_figures();
    let each = Month::ALL.iter().zip(&figures);
    each.map(|(month, figures)| {
        let sky = solar_day_of(&sheet.inputs, *month, figures.sun_h);
        let hours = DayHours::new(day, &sky, bank_v)
            .with_other(sheet.inputs.other_at_anchor_a(), UnderWay::NEVER);
        (figures.days, hours.scaled(figures.use_pct / 100.0, 1.0))
    })
    .collect()
}

/// What sun and other sources leave of a day to be put back by engine or generator
/// \[A·h\].
fn need_of_ah(inputs: &Inputs, hours: &DayHours) -> f64 {
    if inputs.dock_charges() {
        return 0.0;
    }
    let used = 1.0 - inputs.daily.saved_pct / 100.0;
    let hours = hours.scaled(used, inputs.sun.panel_w / HOURS_PANEL_W);
    hours.rest_ah(&SolarStorage::of(inputs))
}

impl Scales {
    pub fn new(sheet: &Worksheet) -> Scales {
        let inputs = sheet.inputs;
        let mut asked = sheet.clone();
        asked.inputs.sun.panel_w = HOURS_PANEL_W;
        asked.inputs.daily.saved_pct = 0.0;
        let day = energy(&asked);
        let engine_loads = anchor_loads(&asked);
        let drawn_ah = |load: &SwitchedLoad| load.amperes * load.until_s / 3600.0;
        Scales {
            amounts: std::array::from_fn(|at| {
                LEVERS.get(at).map_or(Vec::new(), |lever| {
                    if (lever.open)(&inputs.goal) == May::Change {
                        (lever.amounts)(&inputs)
                    } else {
                        Vec::new()
                    }
                })
            }),
            inputs,
            stated: Stated::of(sheet),
            whole_ah: day.anchor.use_ah,
            with_engine_ah: engine_loads
                .iter()
                .map(drawn_ah)
                .fold(0.0, |sum, ah| sum + ah),
            engine_loads,
            months: months(&asked, &day.anchor, day.bank_v),
            hours: DayHours::new(
                &day.anchor,
                &solar_day(&asked.inputs, asked.inputs.sun.month),
                day.bank_v,
            )
            .with_other(inputs.other_at_anchor_a(), UnderWay::NEVER),
        }
    }

    /// The boat with some changes made.
    pub fn with(&self, levels: &Levels) -> Inputs {
        let mut inputs = self.inputs;
        for ((lever, amounts), level) in LEVERS.iter().zip(&self.amounts).zip(levels) {
            let chosen = usize::from(*level)
                .checked_sub(1)
                .and_then(|at| amounts.get(at));
            if let Some(amount) = chosen {
                (lever.apply)(&mut inputs, *amount, self.stated);
            }
        }
        inputs
    }

    /// Whether the changes go together at all.
    pub fn sensible(levels: &Levels) -> bool {
        let is = |at: usize| levels.get(at).is_some_and(|level| *level > 0);
        let twice = is(SECOND) && (is(LARGER) || is(DIRECT) || is(REGULATOR));
        // A charger turned round need not be large.
        let idle = is(CHARGER) && (is(SECOND) || is(DIRECT));
        // These bring the cap that they need.
        let capped_anyway = is(CAP) && (is(SECOND) || is(LARGER) || is(DIRECT));
        // The engine's alternators do not charge the bank then.
        let no_engine = is(GENERATOR) && (0..=PULLEY).any(is);
        !twice && !idle && !capped_anyway && !no_engine
    }

    /// The day's use \[A·h\].
    fn use_ah(&self, inputs: &Inputs) -> f64 {
        self.whole_ah * (1.0 - inputs.daily.saved_pct / 100.0)
    }

    fn need_ah(&self, inputs: &Inputs) -> f64 {
        need_of_ah(inputs, &self.hours)
    }

    /// The days aboard of a year \[d\], each counted by what it needs beside the
    /// worksheet's day, which needs so much \[A·h\].
    fn days_like_this(&self, inputs: &Inputs, need_ah: f64) -> f64 {
        let months = self.months.iter();
        months
            .map(|(days, hours)| days * need_of_ah(inputs, hours) / need_ah)
            .fold(0.0, |sum, days| sum + days)
    }

    pub fn plant(&self, inputs: &Inputs) -> Plant {
        let used = 1.0 - inputs.daily.saved_pct / 100.0;
        let mean_a = self.use_ah(inputs) / 24.0 - used * self.with_engine_ah / 24.0;
        let switched = self.engine_loads.iter().map(|load| SwitchedLoad {
            amperes: used * load.amperes,
            ..*load
        });
        Plant::new(inputs, inputs.run.house_load_a.unwrap_or(mean_a))
            .with_engine_loads(switched.collect())
    }

    /// Price of a combination.
    pub fn price(&self, inputs: &Inputs) -> f64 {
        price(&self.inputs, inputs, self.use_ah(&self.inputs))
    }

    /// Works one combination out: its price, the engine's day, and whether the
    /// quick rules find harm in it.
    pub fn weigh(&self, levels: &Levels) -> Tried {
        let inputs = self.with(levels);
        let smaller_pulley = levels.get(PULLEY).is_some_and(|level| *level > 0);
        let mut tried = Tried {
            levels: *levels,
            bought: self.price(&inputs),
            hours: 0.0,
            rough_fuel_l: 0.0,
            harmful: stands_to_harm(&inputs, smaller_pulley),
        };
        let need_ah = self.need_ah(&inputs);
        if tried.harmful || need_ah <= 0.0 {
            return tried;
        }
        if inputs.generator_charges() {
            self.weigh_generator(&inputs, need_ah, &mut tried);
            return tried;
        }
        let plant = self.plant(&inputs);
        if unwatched_harms(&inputs, &plant) {
            tried.harmful = true;
            return tried;
        }
        let Ok(daily) = daily_trace(&plant, &DayNeed::new(&inputs, need_ah)) else {
            tried.hours = f64::INFINITY;
            tried.rough_fuel_l = f64::INFINITY;
            tried.harmful = true;
            return tried;
        };
        let (trace, seconds) = (&daily.run.trace, daily.run.seconds);
        tried.harmful = run_harms(&inputs, &plant, trace, seconds);
        let runs = f64::from(daily.runs);
        tried.hours = runs * seconds / 3600.0;
        let marginal_l = plant.marginal_fuel_l_h(1000.0) * runs * trace.shaft_kwh(seconds);
        let day_l = plant.fuel.idle_l_h * tried.hours + marginal_l;
        let by_motoring = self.motoring_h(&inputs) / tried.hours.max(1e-9);
        let days = self.days_like_this(&inputs, need_ah) - by_motoring;
        tried.rough_fuel_l = day_l * days.max(0.0);
        tried
    }

    /// Motoring in the days aboard of a year \[h\].
    fn motoring_h(&self, inputs: &Inputs) -> f64 {
        let days_aboard = self.months.iter().fold(0.0, |sum, (days, _)| sum + days);
        days_aboard * inputs.rule.under_way_days_week / 7.0 * inputs.rule.motoring_h
    }

    /// Weighs a boat that a generator charges in place of the engine; its hours and fuel
    /// count as the engine's.
    fn weigh_generator(&self, inputs: &Inputs, need_ah: f64, tried: &mut Tried) {
        let mean_a = self.use_ah(inputs) / 24.0;
        let load_a = inputs.run.house_load_a.unwrap_or(mean_a);
        match generator_day(inputs, need_ah, load_a) {
            Some(day) => {
                tried.hours = day.hours;
                let days = self.days_like_this(inputs, need_ah);
                // Motoring charges too; as many hours of it count as if it gave as much.
                let by_motoring = self.motoring_h(inputs) / day.hours.max(1e-9);
                tried.rough_fuel_l = day.fuel_l * (days - by_motoring).max(0.0);
            }
            None => {
                tried.hours = f64::INFINITY;
                tried.rough_fuel_l = f64::INFINITY;
                tried.harmful = true;
            }
        }
    }

    /// What a year with a combination comes to: the same as the year's own.
    pub fn year(&self, sheet: &Worksheet, levels: &Levels) -> YearSums {
        year_sums(&Worksheet {
            inputs: self.with(levels),
            ..sheet.clone()
        })
    }

    /// What the whole report says against a combination.
    pub fn verified(&self, sheet: &Worksheet, levels: &Levels) -> Vec<Finding> {
        let with = Worksheet {
            inputs: self.with(levels),
            ..sheet.clone()
        };
        harm(&report(&with))
    }
}
