//! Works out one combination of changes.

use super::lever::{CONVERTER, COUNT, LEVERS, MACHINE, SECOND, STRAIGHT};
use crate::arrange::price;
use crate::charge::day::{DayNeed, daily_trace};
use crate::charge::plant::Plant;
use crate::energy::energy;
use crate::energy::hours::{DayHours, SolarStorage};
use crate::physics::thermal::Temperatures;
use crate::sky::sky;
use crate::worksheet::{Alternator, Inputs, May, Worksheet};

/// Which amount of each lever is taken; 0 for none.
pub(super) type Levels = [u8; COUNT];

/// What comes of one combination.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Tried {
    pub levels: Levels,
    pub bought: f64,
    /// Engine time a day \[h\]; without end where no run is long enough.
    pub hours: f64,
    /// Fuel a year \[L\].
    pub fuel_l: f64,
}

/// What came of trying.
pub(super) enum Verdict {
    /// It works.
    Fine(Tried),
    /// Something gets hotter than it may, turns faster than it may, or the
    /// engine labours.
    Harmful,
}

/// Power of the engine that charging may take: the bound at which the findings
/// begin to complain.
const MOST_SHARE: f64 = 0.6;

/// Panels that the hours of a day are kept for \[W\].
const HOURS_PANEL_W: f64 = 1000.0;

/// A boat whose changes are weighed.
#[derive(Debug, Clone)]
pub(super) struct Scales {
    pub inputs: Inputs,
    pub amounts: [Vec<f64>; COUNT],
    /// The day's use before any saving \[A·h\].
    whole_ah: f64,
    /// The hours of that day, with the sun of so many watts of panels.
    hours: DayHours,
    /// What harm the boat as it stands does already: kelvins beyond the limit
    /// of its worst part, and its part of the engine's power.
    over_k: f64,
    share: f64,
}

impl Scales {
    pub fn new(sheet: &Worksheet) -> Scales {
        let inputs = sheet.inputs;
        let mut asked = sheet.clone();
        asked.inputs.sun.panel_w = HOURS_PANEL_W;
        asked.inputs.daily.saved_pct = 0.0;
        let day = energy(&asked);
        let mut scales = Scales {
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
            whole_ah: day.anchor.use_ah,
            hours: DayHours::new(
                &day.anchor,
                &sky(&asked.inputs, asked.inputs.sun.month),
                day.bank_v,
            ),
            over_k: 0.0,
            share: MOST_SHARE,
        };
        let (over_k, share) = scales.harm(&inputs);
        scales.over_k = over_k.max(0.0);
        scales.share = share.max(MOST_SHARE);
        scales
    }

    /// The boat with some changes made.
    pub fn with(&self, levels: &Levels) -> Inputs {
        let mut inputs = self.inputs;
        for ((lever, amounts), level) in LEVERS.iter().zip(&self.amounts).zip(levels) {
            let chosen = usize::from(*level)
                .checked_sub(1)
                .and_then(|at| amounts.get(at));
            if let Some(amount) = chosen {
                (lever.apply)(&mut inputs, *amount);
            }
        }
        inputs
    }

    /// Whether the changes go together at all.
    pub fn sensible(levels: &Levels) -> bool {
        let is = |at: usize| levels.get(at).is_some_and(|level| *level > 0);
        let twice = is(SECOND) && (is(MACHINE) || is(STRAIGHT));
        // A converter turned round need not be large.
        let idle = is(CONVERTER) && (is(SECOND) || is(STRAIGHT));
        !twice && !idle
    }

    /// The day's use \[A·h\].
    fn use_ah(&self, inputs: &Inputs) -> f64 {
        self.whole_ah * (1.0 - inputs.daily.saved_pct / 100.0)
    }

    fn need_ah(&self, inputs: &Inputs) -> f64 {
        if !inputs.engine_charges() {
            return 0.0;
        }
        let used = 1.0 - inputs.daily.saved_pct / 100.0;
        let hours = self.hours.scaled(used, inputs.sun.panel_w / HOURS_PANEL_W);
        hours.rest_ah(&SolarStorage::of(inputs))
    }

    pub fn plant(&self, inputs: &Inputs) -> Plant {
        let mean_a = self.use_ah(inputs) / 24.0;
        Plant::new(inputs, inputs.run.house_load_a.unwrap_or(mean_a))
    }

    /// The worst part's heat beyond its limit \[K\] and the part of the
    /// engine's power that is taken, in the day's run.
    fn harm(&self, inputs: &Inputs) -> (f64, f64) {
        let plant = self.plant(inputs);
        let day = DayNeed::new(inputs, self.need_ah(inputs));
        daily_trace(&plant, &day).map_or((0.0, 0.0), |daily| {
            let (trace, seconds) = (&daily.run.trace, daily.run.seconds);
            let over_k = over_k(inputs, &trace.hottest(seconds));
            (over_k, share(inputs, &plant, trace.peak_shaft_w(seconds)))
        })
    }

    /// Works one combination out.
    pub fn weigh(&self, levels: &Levels) -> Verdict {
        let inputs = self.with(levels);
        let overspeed = |alt: &Alternator| inputs.eng.top_rpm * alt.pulley_ratio > alt.max_rpm;
        if overspeed(&inputs.alt) && !overspeed(&self.inputs.alt) {
            return Verdict::Harmful;
        }
        let mut tried = Tried {
            levels: *levels,
            bought: price(&self.inputs, &inputs, self.use_ah(&self.inputs)),
            hours: 0.0,
            fuel_l: 0.0,
        };
        let need_ah = self.need_ah(&inputs);
        if need_ah <= 0.0 {
            return Verdict::Fine(tried);
        }
        let plant = self.plant(&inputs);
        let Ok(daily) = daily_trace(&plant, &DayNeed::new(&inputs, need_ah)) else {
            tried.hours = f64::INFINITY;
            tried.fuel_l = f64::INFINITY;
            return Verdict::Fine(tried);
        };
        let (trace, seconds) = (&daily.run.trace, daily.run.seconds);
        if over_k(&inputs, &trace.hottest(seconds)) > self.over_k
            || share(&inputs, &plant, trace.peak_shaft_w(seconds)) > self.share
        {
            return Verdict::Harmful;
        }
        let runs = f64::from(daily.runs);
        tried.hours = runs * seconds / 3600.0;
        let marginal_l = plant.marginal_fuel_l_h(1000.0) * runs * trace.shaft_kwh(seconds);
        tried.fuel_l = inputs.cost.days * (plant.fuel.idle_l_h * tried.hours + marginal_l);
        Verdict::Fine(tried)
    }
}

/// How far the worst part is beyond its limit \[K\]; negative below it.
fn over_k(inputs: &Inputs, hottest: &[Temperatures; 2]) -> f64 {
    let second = inputs.as_second().is_some();
    [Some(&inputs.alt), second.then_some(&inputs.alt2)]
        .into_iter()
        .flatten()
        .zip(hottest)
        .flat_map(|(machine, t)| {
            [
                t.winding_c - machine.class.limit_c(),
                t.rectifier_c - machine.rectifier_limit_c,
                t.body_c - machine.case_limit_c,
            ]
        })
        .fold(f64::NEG_INFINITY, f64::max)
}

/// What part of the engine's power at charging speed is taken.
fn share(inputs: &Inputs, plant: &Plant, shaft_w: f64) -> f64 {
    shaft_w / 1000.0 / plant.belt_efficiency / inputs.available_kw()
}
