//! The combinations that nothing beats.

use crate::decision::goal_search::weigh::Tried;

/// Engine time that counts as the same \[h\]: half a minute.
const SAME_H: f64 = 0.5 / 60.0;

/// Combinations by rising price and falling hours.
#[derive(Debug, Clone, Default)]
pub(super) struct Front(Vec<Tried>);

impl Front {
    /// Whether it has a place here: no other is no dearer and no slower.
    pub fn would_take(&self, tried: &Tried) -> bool {
        tried.hours.is_finite() && !self.0.iter().any(|held| beats(held, tried))
    }

    /// Takes one in that has a place here; those it beats go.
    pub fn take(&mut self, tried: &Tried) {
        if !self.would_take(tried) {
            return;
        }
        self.0.retain(|held| !beats(tried, held));
        let place = self.0.partition_point(|held| held.bought <= tried.bought);
        self.0.insert(place, *tried);
    }

    /// Whether one is close enough to the front to be worth going on from:
    /// nothing as cheap is much quicker.
    pub fn nearly(&self, tried: &Tried) -> bool {
        !self
            .0
            .iter()
            .any(|held| held.bought <= tried.bought && held.hours < 0.85 * tried.hours)
    }

    pub fn all(&self) -> &[Tried] {
        &self.0
    }
}

fn beats(one: &Tried, other: &Tried) -> bool {
    one.bought <= other.bought && one.hours <= other.hours + SAME_H
}
