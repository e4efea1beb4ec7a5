//! A combination of changes told step by step.

use serde::Serialize;

use crate::boat::Arrangement;
use crate::decision::goal_search::lever::{CAP, COUNT, LEVERS};
use crate::decision::goal_search::search::Search;
use crate::decision::goal_search::weigh::{Levels, Tried};
use crate::simulation::steady_state::settled;
use crate::units::clock;

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
    /// Its changes: what puts an end to harm first, then what brings most for
    /// its money.
    pub steps: Vec<Step>,
    /// The same as an arrangement to compare or take over.
    #[serde(skip)]
    pub arrangement: Arrangement,
}

/// One change.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// What: "a blower with 200 m³/h more".
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
        let amps = if self.adds_a.round() != 0.0 {
            format!("{:+.0} A hot, ", self.adds_a.round()).replace('-', "−")
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

pub(super) fn plan(search: &Search, tried: &Tried) -> Plan {
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
        steps.push(Step {
            what: words(search, lever, &at, &next.levels),
            price: next.bought - now.bought,
            saves_h: hours(&now) - hours(&next),
            adds_a: hot_a(search, &next.levels) - hot_a(search, &at),
        });
        at = next.levels;
        now = next;
    }
    steps
}

/// What a step changes, and the current cap that comes with it.
fn words(search: &Search, lever: usize, before: &Levels, after: &Levels) -> String {
    let says = LEVERS.get(lever).map_or("", |lever| lever.says);
    let amount = after
        .get(lever)
        .and_then(|level| usize::from(*level).checked_sub(1))
        .and_then(|at| search.scales.amounts.get(lever)?.get(at));
    let what = says.replace('#', &amount.map_or(String::new(), f64::to_string));
    let cap_a = |levels| search.scales.with(levels).reg.current_cap_a;
    match cap_a(after) {
        Some(now_a) if lever != CAP && cap_a(before) != Some(now_a) => {
            format!("{what}, its current cap set to {now_a} A")
        }
        _ => what,
    }
}
