//! The combinations, each by its number, and which of them are looked at next. Uses
//! what is sensible by `weigh`.

use crate::decision::goal_search::lever::COUNT;
use crate::decision::goal_search::weigh::{Levels, Scales};

/// Which combinations are looked at, one after the other, each once.
#[derive(Debug, Clone)]
pub(super) struct Queue {
    /// How many levels each lever has.
    sizes: [usize; COUNT],
    /// One flag a combination: whether it stands in the queue or did.
    seen: Vec<bool>,
    waiting: Vec<u32>,
    next: usize,
    /// So many at the beginning of the queue have one or two changes, or none.
    simple: usize,
}

impl Queue {
    /// Begins with nothing changed, one change, and two: a boat that is not safe
    /// as it stands may need both before anything else is worth looking at.
    pub fn new(sizes: [usize; COUNT]) -> Queue {
        let mut queue = Queue {
            sizes,
            seen: vec![false; sizes.iter().product()],
            waiting: Vec::new(),
            next: 0,
            simple: 0,
        };
        let none = [0; COUNT];
        queue.enqueue(0);
        let one_changed = queue.one_changed(&none);
        for levels in &one_changed {
            queue.enqueue(queue.index(levels));
        }
        for levels in &one_changed {
            queue.enqueue_neighbours(levels);
        }
        queue.simple = queue.waiting.len();
        queue
    }

    /// Lets all that are sensible join.
    pub fn enqueue_all(&mut self) {
        for index in 0..self.combinations() {
            self.enqueue(index);
        }
    }

    /// Lets all join that differ from a combination in one lever.
    pub fn enqueue_neighbours(&mut self, levels: &Levels) {
        for next in self.one_changed(levels) {
            self.enqueue(self.index(&next));
        }
    }

    /// Combinations there are, senseless ones among them.
    pub fn combinations(&self) -> usize {
        self.seen.len()
    }

    /// The next one, which then is done; none when all are.
    pub fn take_next(&mut self) -> Option<Levels> {
        let index = self.waiting.get(self.next).copied()?;
        self.next += 1;
        Some(self.levels(index as usize))
    }

    /// Whether none waits.
    pub fn is_done(&self) -> bool {
        self.next >= self.waiting.len()
    }

    /// Whether those of one and two changes are done.
    pub fn simple_done(&self) -> bool {
        self.next >= self.simple
    }

    /// The part that is done, 0 to 1; it can fall when more join.
    pub fn share(&self) -> f64 {
        self.next as f64 / self.waiting.len().max(1) as f64
    }

    /// All that differ in one lever.
    fn one_changed(&self, levels: &Levels) -> Vec<Levels> {
        let mut all = Vec::new();
        for (lever, size) in self.sizes.iter().enumerate() {
            for level in 0..*size {
                let mut next = *levels;
                if let Some(place) = next.get_mut(lever) {
                    *place = level as u8;
                }
                all.push(next);
            }
        }
        all
    }

    fn enqueue(&mut self, index: usize) {
        if self.seen.get(index) == Some(&false) && Scales::sensible(&self.levels(index)) {
            self.waiting.push(index as u32);
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
