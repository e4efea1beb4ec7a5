//! How well each input is known, where somebody has said so.

use crate::boat::Key;
use crate::schema::Knowledge;

/// Inputs somebody has vouched for, in worksheet order. A list in order is all
/// it takes: there are never more than the inputs, and mostly some twenty.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Known(Vec<(Key, Knowledge)>);

impl Known {
    /// Where an input stands, or would.
    fn place(&self, key: Key) -> Result<usize, usize> {
        self.0.binary_search_by_key(&key, |(key, _)| *key)
    }

    /// What was said about an input.
    pub fn get(&self, key: Key) -> Option<Knowledge> {
        let (_, knowledge) = self.0.get(self.place(key).ok()?)?;
        Some(*knowledge)
    }

    /// Says how well an input is known.
    pub fn insert(&mut self, key: Key, knowledge: Knowledge) {
        self.remove(key);
        if let Err(at) = self.place(key) {
            self.0.insert(at, (key, knowledge));
        }
    }

    /// Nothing is said about an input any more.
    pub fn remove(&mut self, key: Key) {
        if let Ok(at) = self.place(key) {
            self.0.remove(at);
        }
    }

    /// How many inputs something was said about.
    pub fn count(&self) -> usize {
        self.0.len()
    }
}
