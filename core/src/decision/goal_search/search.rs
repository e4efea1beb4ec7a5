//! Goes through the combinations: each is weighed, and what would become a plan is
//! verified. Uses the queue, the front and the scales.

use crate::boat::{GoalKind, Worksheet};
use crate::decision::goal_search::front::Front;
use crate::decision::goal_search::lever::COUNT;
use crate::decision::goal_search::queue::Queue;
use crate::decision::goal_search::weigh::{Scales, Tried};
use crate::findings::{Code, Finding};

/// So many combinations are all tried. Of more, those are tried that are one
/// change away from one on the front or close to it, until nothing new joins.
const ALL: usize = 3000;
/// No more than so many are ever tried.
const MOST: usize = 6000;

/// A year's fuel is worked out only where a rough estimate of it is no more than
/// so many times the goal: months with more sun, and runs from another state of
/// charge, make less of a difference than that.
const ROUGHLY: f64 = 3.0;

/// With nothing free of harm found, so many refused by the whole report are
/// enough.
const OFTEN: usize = 300;

/// A search under way. Nothing happens but in [`Search::step`], so that a page
/// can do it piece by piece and leave it whenever it likes.
///
/// What is about to join the front, or to become the best, is verified with the
/// whole report first: only what does no harm does either.
#[derive(Debug, Clone)]
pub struct Search {
    pub(super) sheet: Worksheet,
    pub(super) scales: Scales,
    queue: Queue,
    everything: bool,
    most: usize,
    pub(super) front: Front,
    pub(super) best: Option<Tried>,
    pub(super) tried: usize,
    pub(super) harmful: usize,
    /// Of those, refused by the whole report.
    refused: usize,
    /// What speaks against the boat as it stands.
    pub(super) today: Vec<Finding>,
    /// What spoke against every combination that was verified so far.
    pub(super) always: Option<Vec<Code>>,
}

impl Search {
    /// Begins one for the goal on the worksheet.
    pub fn new(sheet: &Worksheet) -> Search {
        Search::trying_all(sheet, ALL)
    }

    /// Begins one that tries everything where there are no more than so many
    /// combinations, however long it takes.
    pub fn trying_all(sheet: &Worksheet, all: usize) -> Search {
        let scales = Scales::new(sheet);
        let sizes: [usize; COUNT] =
            std::array::from_fn(|at| scales.amounts.get(at).map_or(1, |a| a.len() + 1));
        let mut queue = Queue::new(sizes);
        let everything = queue.combinations() <= all;
        if everything {
            queue.enqueue_all();
        }
        Search {
            sheet: sheet.clone(),
            scales,
            queue,
            everything,
            most: all.max(MOST),
            front: Front::default(),
            best: None,
            tried: 0,
            harmful: 0,
            refused: 0,
            today: Vec::new(),
            always: None,
        }
    }

    /// Combinations there are, senseless ones among them.
    pub fn combinations(&self) -> usize {
        self.queue.combinations()
    }

    /// How many were worked out so far.
    pub fn tried(&self) -> usize {
        self.tried
    }

    /// Whether all are done.
    pub fn done(&self) -> bool {
        self.queue.is_done() || self.tried >= self.most || self.hopeless()
    }

    /// Whether the report spoke against every combination that was verified,
    /// all those of one or two changes among them, and always for one reason or
    /// very often.
    fn hopeless(&self) -> bool {
        let one_reason = self.always.as_ref().is_some_and(|codes| !codes.is_empty());
        self.queue.simple_done()
            && self.front.all().is_empty()
            && (one_reason || self.refused >= OFTEN)
    }

    /// The part that is done, 0 to 1; it can fall when more turns up.
    pub fn share(&self) -> f64 {
        if self.done() { 1.0 } else { self.queue.share() }
    }

    /// Works out so many more, or as many as are left.
    pub fn step(&mut self, many: usize) {
        for _ in 0..many {
            if self.done() {
                return;
            }
            let Some(levels) = self.queue.take_next() else {
                return;
            };
            self.tried += 1;
            if levels == [0; COUNT] {
                self.today = self.scales.verified(&self.sheet, &levels);
            }
            let tried = self.scales.weigh(&levels);
            self.note(&tried);
        }
    }

    fn note(&mut self, tried: &Tried) {
        let better = !tried.harmful && self.better(tried);
        let joins = !tried.harmful && self.front.would_take(tried);
        let harmful = tried.harmful || (joins || better) && !self.verify(tried);
        if harmful {
            self.harmful += 1;
        } else {
            self.front.take(tried);
            if better {
                self.best = Some(*tried);
            }
        }
        // As long as nothing is free of harm, every way on is looked at.
        let lost = self.front.all().is_empty();
        let near = !harmful && (tried.hours.is_infinite() || self.front.nearly(tried));
        if !self.everything && (lost || near) {
            self.queue.enqueue_neighbours(&tried.levels);
        }
    }

    /// Whether the whole report finds no harm in a combination.
    fn verify(&mut self, tried: &Tried) -> bool {
        let against = self.scales.verified(&self.sheet, &tried.levels);
        let spoke = |code: &Code| against.iter().any(|finding| finding.code() == *code);
        match &mut self.always {
            Some(always) => always.retain(spoke),
            None => self.always = Some(against.iter().map(Finding::code).collect()),
        }
        self.refused += usize::from(!against.is_empty());
        against.is_empty()
    }

    /// Whether it meets the goal better than any before.
    fn better(&self, tried: &Tried) -> bool {
        let Some(best) = &self.best else {
            return self.meets(tried);
        };
        let (one, other) = match self.scales.inputs.goal.kind {
            GoalKind::Budget => ((tried.hours, tried.bought), (best.hours, best.bought)),
            GoalKind::Hours | GoalKind::Fuel => {
                ((tried.bought, tried.hours), (best.bought, best.hours))
            }
        };
        one < other && self.meets(tried)
    }

    pub(super) fn meets(&self, tried: &Tried) -> bool {
        let goal = &self.scales.inputs.goal;
        tried.hours.is_finite()
            && match goal.kind {
                GoalKind::Hours => tried.hours <= goal.hours,
                GoalKind::Fuel => {
                    tried.rough_fuel_l <= ROUGHLY * goal.fuel_l && self.fuel_met(tried)
                }
                GoalKind::Budget => tried.bought <= goal.budget,
            }
    }

    /// Whether a year takes no more fuel than the goal.
    fn fuel_met(&self, tried: &Tried) -> bool {
        let sums = self.scales.year(&self.sheet, &tried.levels);
        sums.covered && sums.fuel_l <= self.scales.inputs.goal.fuel_l
    }
}
