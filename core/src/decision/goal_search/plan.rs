//! A combination of changes told step by step.

use serde::Serialize;

use crate::boat::Arrangement;
use crate::decision::goal_search::lever::{CAP, COUNT, Change, LEVERS};
use crate::decision::goal_search::search::Search;
use crate::decision::goal_search::weigh::{Levels, Tried};
use crate::simulation::steady_state::settled;
use crate::units::Quantity;
use crate::units::quantity::amperes;

/// A set of changes.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Plan {
    /// Money.
    pub bought: f64,
    /// Engine time a day, a generator's too \[h\].
    pub hours_day: f64,
    /// Fuel in the year's days aboard \[L\], by the year by months; none when that
    /// is not covered.
    pub fuel_year_l: Option<f64>,
    /// Engine time for charging in them, a generator's too \[h\].
    pub hours_year: Option<f64>,
    /// Current once all is hot \[A\].
    pub hot_a: f64,
    /// Whether it meets the goal.
    pub meets: bool,
    /// Its changes: what puts an end to harm first, then what brings most for
    /// its money.
    pub steps: Vec<Step>,
    /// The plan as an arrangement, to compare or take over.
    #[serde(skip)]
    pub arrangement: Arrangement,
}

/// One change.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// What is changed.
    pub change: Change,
    /// To or by how much; none where there is only one way to do it.
    pub amount: Option<Quantity>,
    /// The current cap that the regulator gets with it; none where that stays
    /// or is itself what is changed.
    pub cap: Option<Quantity>,
    /// Its price.
    pub price: f64,
    /// Engine time a day that it saves after the steps before it \[h\].
    pub saves_h: f64,
    /// Current, hot, that it adds after the steps before it \[A\].
    pub adds_a: f64,
}

pub(super) fn plan(search: &Search, tried: &Tried) -> Plan {
    let with = search.scales.with(&tried.levels);
    let year = search.scales.year(&search.sheet, &tried.levels);
    Plan {
        bought: tried.bought,
        hours_day: tried.hours,
        fuel_year_l: year.covered.then_some(year.fuel_l),
        hours_year: year.covered.then_some(year.charging_h + year.generator_h),
        hot_a: hot_a(search, &tried.levels),
        meets: search.meets(tried),
        steps: steps(search, &tried.levels),
        arrangement: Arrangement::between(&search.scales.inputs, &with),
    }
}

fn hot_a(search: &Search, levels: &Levels) -> f64 {
    let inputs = search.scales.with(levels);
    let plant = search.scales.plant(&inputs);
    let half_way = (inputs.run.from_pct + inputs.run.to_pct) / 200.0;
    plant.charging_a(&settled(&plant, half_way).flow)
}

/// The changes one after the other: first what puts an end to harm, then each
/// time the one that saves most engine time for its money and does none.
fn steps(search: &Search, levels: &Levels) -> Vec<Step> {
    let mut at: Levels = [0; COUNT];
    let mut steps = Vec::new();
    // A day where no run is long enough.
    let hours = |tried: &Tried| tried.hours.min(24.0);
    let mut now = search.scales.weigh(&at);
    while at != *levels {
        let mut chosen: Option<((bool, f64), usize, Tried)> = None;
        for lever in 0..COUNT {
            let (Some(is), Some(wanted)) = (at.get(lever), levels.get(lever)) else {
                continue;
            };
            if is == wanted {
                continue;
            }
            let mut next = at;
            if let Some(place) = next.get_mut(lever) {
                *place = *wanted;
            }
            let tried = search.scales.weigh(&next);
            let gain = (hours(&now) - hours(&tried)) / (tried.bought - now.bought).max(1.0);
            let rank = (!tried.harmful, gain);
            if chosen.is_none_or(|(best, ..)| rank > best) {
                chosen = Some((rank, lever, tried));
            }
        }
        let Some((_, lever, next)) = chosen else {
            break;
        };
        let Some(change) = LEVERS.get(lever).map(|lever| lever.change) else {
            break;
        };
        steps.push(Step {
            change,
            amount: amount(search, lever, &next.levels),
            cap: cap(search, lever, &at, &next.levels),
            price: next.bought - now.bought,
            saves_h: hours(&now) - hours(&next),
            adds_a: hot_a(search, &next.levels) - hot_a(search, &at),
        });
        at = next.levels;
        now = next;
    }
    steps
}

/// To or by how much a lever is moved.
fn amount(search: &Search, lever: usize, levels: &Levels) -> Option<Quantity> {
    let kind = LEVERS.get(lever)?.change.amounts_of()?;
    let at = usize::from(*levels.get(lever)?).checked_sub(1)?;
    let amount = search.scales.amounts.get(lever)?.get(at)?;
    Some(Quantity::new(*amount, kind).up_to(2))
}

/// The current cap that comes with a step, where it is another than before.
fn cap(search: &Search, lever: usize, before: &Levels, after: &Levels) -> Option<Quantity> {
    let cap_a = |levels| search.scales.with(levels).reg.current_cap_a;
    let now_a = cap_a(after).filter(|_| lever != CAP)?;
    (cap_a(before) != Some(now_a)).then(|| amperes(now_a).up_to(2))
}
