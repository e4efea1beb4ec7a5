//! Goes through the combinations.

use super::front::Front;
use super::lever::COUNT;
use super::plan::{Found, found};
use super::weigh::{Levels, Scales, Tried, Verdict};
use crate::worksheet::{GoalKind, Worksheet};

/// So many combinations are all tried. Of more, those are tried that are one
/// change away from one on the front or close to it, until nothing new joins.
const ALL: usize = 3000;
/// No more than so many are ever tried.
const MOST: usize = 6000;

/// A search under way. Nothing happens but in [`Search::step`], so that a page
/// can do it piece by piece and leave it whenever it likes.
#[derive(Debug, Clone)]
pub struct Search {
    pub(super) sheet: Worksheet,
    pub(super) scales: Scales,
    sizes: [usize; COUNT],
    /// One flag a combination: whether it stands in the queue or did.
    seen: Vec<bool>,
    queue: Vec<u32>,
    next: usize,
    everything: bool,
    most: usize,
    pub(super) front: Front,
    pub(super) best: Option<Tried>,
    pub(super) tried: usize,
    pub(super) harmful: usize,
}

impl Search {
    /// Begins one for the goal on the worksheet.
    pub fn new(sheet: &Worksheet) -> Search {
        Search::trying_all(sheet, ALL)
    }

    /// The same, trying everything where there are no more than so many
    /// combinations, however long it takes.
    pub fn trying_all(sheet: &Worksheet, all: usize) -> Search {
        let scales = Scales::new(sheet);
        let sizes: [usize; COUNT] =
            std::array::from_fn(|at| scales.amounts.get(at).map_or(1, |a| a.len() + 1));
        let combinations: usize = sizes.iter().product();
        let mut search = Search {
            sheet: sheet.clone(),
            scales,
            sizes,
            seen: vec![false; combinations],
            queue: Vec::new(),
            next: 0,
            everything: combinations <= all,
            most: all.max(MOST),
            front: Front::default(),
            best: None,
            tried: 0,
            harmful: 0,
        };
        let last = if search.everything { combinations } else { 1 };
        for index in 0..last {
            search.enqueue(index);
        }
        search
    }

    /// Combinations there are, senseless ones among them.
    pub fn combinations(&self) -> usize {
        self.seen.len()
    }

    /// How many were worked out so far.
    pub fn tried(&self) -> usize {
        self.tried
    }

    /// Whether all are done.
    pub fn done(&self) -> bool {
        self.next >= self.queue.len() || self.tried >= self.most
    }

    /// The part that is done, 0 to 1; it can fall when more turns up.
    pub fn share(&self) -> f64 {
        if self.done() {
            1.0
        } else {
            self.next as f64 / self.queue.len().max(1) as f64
        }
    }

    /// Works out so many more, or as many as are left.
    pub fn step(&mut self, many: usize) {
        for _ in 0..many {
            if self.done() {
                return;
            }
            let Some(index) = self.queue.get(self.next).copied() else {
                return;
            };
            self.next += 1;
            self.tried += 1;
            let levels = self.levels(index as usize);
            match self.scales.weigh(&levels) {
                Verdict::Harmful => self.harmful += 1,
                Verdict::Fine(tried) => self.note(&tried),
            }
        }
    }

    /// What came of it so far.
    pub fn found(&self) -> Found {
        found(self)
    }

    fn note(&mut self, tried: &Tried) {
        self.front.take(tried);
        if self.better(tried) {
            self.best = Some(*tried);
        }
        if !self.everything && (tried.hours.is_infinite() || self.front.nearly(tried)) {
            self.neighbours(&tried.levels);
        }
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
        self.meets(tried) && one < other
    }

    pub(super) fn meets(&self, tried: &Tried) -> bool {
        let goal = &self.scales.inputs.goal;
        tried.hours.is_finite()
            && match goal.kind {
                GoalKind::Hours => tried.hours <= goal.hours,
                GoalKind::Fuel => tried.fuel_l <= goal.fuel_l,
                GoalKind::Budget => tried.bought <= goal.budget,
            }
    }

    /// All that differ in one lever.
    fn neighbours(&mut self, levels: &Levels) {
        for lever in 0..COUNT {
            let Some(size) = self.sizes.get(lever).copied() else {
                continue;
            };
            for level in 0..size {
                let mut next = *levels;
                if let Some(place) = next.get_mut(lever) {
                    *place = level as u8;
                }
                self.enqueue(self.index(&next));
            }
        }
    }

    fn enqueue(&mut self, index: usize) {
        if self.seen.get(index) == Some(&false) && Scales::sensible(&self.levels(index)) {
            self.queue.push(index as u32);
            if let Some(seen) = self.seen.get_mut(index) {
                *seen = true;
            }
        }
    }

    /// A combination's number: its levels as digits of a number with mixed bases.
    fn index(&self, levels: &Levels) -> usize {
        self.sizes
            .iter()
            .zip(levels)
            .rev()
            .fold(0, |index, (size, level)| index * size + usize::from(*level))
    }

    fn levels(&self, index: usize) -> Levels {
        let mut left = index;
        std::array::from_fn(|at| {
            let size = self.sizes.get(at).copied().unwrap_or(1);
            let level = left % size;
            left /= size;
            level as u8
        })
    }
}
