//! What came of a search, put so that it can be told.

use serde::Serialize;

use super::lever::{COUNT, LEVERS};
use super::search::Search;
use super::weigh::{Levels, Tried, Verdict};
use crate::arrange::price;
use crate::charge::steady::settled;
use crate::report::clock;
use crate::worksheet::Arrangement;

/// So many plans are shown at most.
const SHOWN: usize = 8;

/// What came of a search.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Found {
    /// Combinations there are.
    pub combinations: usize,
    /// Of those, worked out.
    pub tried: usize,
    /// Of those, left out: something would get too hot or turn too fast, or
    /// the engine would labour.
    pub harmful: usize,
    /// What no other beats on money and hours, by rising price.
    pub plans: Vec<Plan>,
    /// Which of them meets the goal best; none when none does.
    pub best: Option<usize>,
}

/// A set of changes.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Plan {
    /// Money.
    pub bought: f64,
    /// Engine time a day \[h\].
    pub hours_day: f64,
    /// Fuel a year \[L\].
    pub fuel_year_l: f64,
    /// Current once all is hot \[A\].
    pub hot_a: f64,
    /// Whether it meets the goal.
    pub meets: bool,
    /// Its changes, what brings most for its money first.
    pub steps: Vec<Step>,
    /// The same as an arrangement to compare or take over.
    #[serde(skip)]
    pub arrangement: Arrangement,
}

/// One change.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// What: "a blower of 200 m³/h more".
    pub what: String,
    /// Its price.
    pub price: f64,
    /// Engine time a day that it saves after the steps before it \[h\].
    pub saves_h: f64,
    /// Current, hot, that it adds after the steps before it \[A\].
    pub adds_a: f64,
}

impl Step {
    /// Amounts and hours in a sentence; the price is the page's to write.
    pub fn sentence(&self) -> String {
        let amps = if self.adds_a.abs() >= 0.5 {
            format!("{:+.0} A hot, ", self.adds_a).replace('-', "−")
        } else {
            String::new()
        };
        let minutes = 60.0 * self.saves_h;
        let time = if minutes.abs() < 0.5 {
            "no time by itself".to_string()
        } else if minutes > 0.0 {
            format!("{} a day less", clock(minutes))
        } else {
            format!("{} a day more", clock(-minutes))
        };
        format!("{}: {amps}{time}", self.what)
    }
}

pub(super) fn found(search: &Search) -> Found {
    let front = search.front.all();
    let mut shown: Vec<Tried> = Vec::new();
    // Evenly among many, both ends kept.
    let every = front.len().div_ceil(SHOWN).max(1);
    for (at, tried) in front.iter().enumerate() {
        if at % every == 0 || at + 1 == front.len() {
            shown.push(*tried);
        }
    }
    if let Some(best) = &search.best
        && !shown.iter().any(|tried| tried.levels == best.levels)
    {
        let place = shown.partition_point(|tried| tried.bought <= best.bought);
        shown.insert(place, *best);
    }
    let is_best = |tried: &Tried| search.best.is_some_and(|best| best.levels == tried.levels);
    Found {
        combinations: search.combinations(),
        tried: search.tried(),
        harmful: search.harmful,
        best: shown.iter().position(is_best),
        plans: shown.iter().map(|tried| plan(search, tried)).collect(),
    }
}

fn plan(search: &Search, tried: &Tried) -> Plan {
    let with = search.scales.with(&tried.levels);
    Plan {
        bought: tried.bought,
        hours_day: tried.hours,
        fuel_year_l: tried.fuel_l,
        hot_a: hot_a(search, &tried.levels),
        meets: search.meets(tried),
        steps: steps(search, &tried.levels),
        arrangement: Arrangement::between("", &search.scales.inputs, &with),
    }
}

fn hot_a(search: &Search, levels: &Levels) -> f64 {
    let inputs = search.scales.with(levels);
    let plant = search.scales.plant(&inputs);
    let half_way = (inputs.run.from_pct + inputs.run.to_pct) / 200.0;
    plant.charging_a(&settled(&plant, half_way).flow)
}

/// Hours of a combination, whatever harm it does on the way; a day where no
/// run is long enough.
fn hours(search: &Search, levels: &Levels) -> f64 {
    match search.scales.weigh(levels) {
        Verdict::Fine(tried) => tried.hours.min(24.0),
        Verdict::Harmful => 24.0,
    }
}

/// The changes one after the other, each time the one that saves most engine
/// time for its money.
fn steps(search: &Search, levels: &Levels) -> Vec<Step> {
    let mut at: Levels = [0; COUNT];
    let mut steps = Vec::new();
    let whole_ah = crate::energy::energy(&search.sheet).anchor.use_ah;
    let cost =
        |levels: &Levels| price(&search.scales.inputs, &search.scales.with(levels), whole_ah);
    while at != *levels {
        let (hours_now, amps_now, cost_now) = (hours(search, &at), hot_a(search, &at), cost(&at));
        let mut chosen: Option<(f64, usize, Levels, f64)> = None;
        for lever in 0..COUNT {
            let (Some(now), Some(wanted)) = (at.get(lever), levels.get(lever)) else {
                continue;
            };
            if now == wanted {
                continue;
            }
            let mut next = at;
            if let Some(place) = next.get_mut(lever) {
                *place = *wanted;
            }
            let hours_next = hours(search, &next);
            let gain = (hours_now - hours_next) / (cost(&next) - cost_now).max(1.0);
            if chosen.is_none_or(|(best, ..)| gain > best) {
                chosen = Some((gain, lever, next, hours_next));
            }
        }
        let Some((_, lever, next, hours_next)) = chosen else {
            break;
        };
        steps.push(Step {
            what: words(search, lever, &next),
            price: cost(&next) - cost_now,
            saves_h: hours_now - hours_next,
            adds_a: hot_a(search, &next) - amps_now,
        });
        at = next;
    }
    steps
}

fn words(search: &Search, lever: usize, levels: &Levels) -> String {
    let says = LEVERS.get(lever).map_or("", |lever| lever.says);
    let amount = levels
        .get(lever)
        .and_then(|level| usize::from(*level).checked_sub(1))
        .and_then(|at| search.scales.amounts.get(lever)?.get(at));
    says.replace('#', &amount.map_or(String::new(), f64::to_string))
}
