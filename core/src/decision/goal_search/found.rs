//! What came of a search, put so that it can be told.

use serde::Serialize;

use crate::decision::goal_search::plan::{Plan, plan};
use crate::decision::goal_search::search::Search;
use crate::decision::goal_search::weigh::Tried;
use crate::findings::{Code, Finding};

/// So many plans are shown at most.
const SHOWN: usize = 8;

/// What came of a search.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Found {
    /// Combinations there are.
    pub combinations: usize,
    /// Of those, worked out.
    pub tried: usize,
    /// Of those, left out because they do harm.
    pub harmful: usize,
    /// What speaks against the boat as it stands, worst first. Where anything
    /// does, leaving it as it is is no plan.
    pub today: Vec<Finding>,
    /// What no other beats on money and hours, by rising price.
    pub plans: Vec<Plan>,
    /// Which of them meets the goal best; none when none does.
    pub best: Option<usize>,
    /// Why none does; none when one does.
    pub unmet: Option<Unmet>,
}

/// Why a goal cannot be had.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "snake_case", tag = "why")]
pub enum Unmet {
    /// Nothing that was tried is free of harm.
    NothingSafe {
        /// Codes of findings that no change puts right; empty when different
        /// ones speak against different combinations.
        always: Vec<Code>,
    },
    /// Plans are free of harm, and none of them reaches the goal.
    OutOfReach,
}

impl Search {
    /// What came of it so far.
    pub fn found(&self) -> Found {
        found(self)
    }
}

fn found(search: &Search) -> Found {
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
    let plans: Vec<Plan> = shown.iter().map(|tried| plan(search, tried)).collect();
    let unmet = if search.best.is_some() {
        None
    } else if plans.is_empty() {
        Some(Unmet::NothingSafe {
            always: search.always.clone().unwrap_or_default(),
        })
    } else {
        Some(Unmet::OutOfReach)
    };
    Found {
        combinations: search.combinations(),
        tried: search.tried(),
        harmful: search.harmful,
        best: shown.iter().position(is_best),
        today: search.today.clone(),
        plans,
        unmet,
    }
}
