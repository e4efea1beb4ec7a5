//! How well each input is known, where somebody has said so.

use std::collections::BTreeMap;

use crate::boat::Key;
use crate::schema::Confidence;

/// Inputs somebody has vouched for, in worksheet order.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Known(BTreeMap<Key, Confidence>);

impl Known {
    /// What was said about an input.
    pub fn get(&self, key: Key) -> Option<Confidence> {
        self.0.get(&key).copied()
    }

    /// Says how well an input is known.
    pub fn insert(&mut self, key: Key, knowledge: Confidence) {
        self.0.insert(key, knowledge);
    }

    /// Nothing is said about an input any more.
    pub fn remove(&mut self, key: Key) {
        self.0.remove(&key);
    }

    /// How many inputs something was said about.
    pub fn count(&self) -> usize {
        self.0.len()
    }
}
