//! How well each input is known, where somebody has said so.

use crate::boat::Key;
use crate::schema::Confidence;

/// Inputs somebody has vouched for, in worksheet order.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Known(Vec<(Key, Confidence)>);

impl Known {
    /// What was said about an input.
    pub fn get(&self, key: Key) -> Option<Confidence> {
        let at = self.place(key).ok()?;
        self.0.get(at).map(|(_, knowledge)| *knowledge)
    }

    /// Says how well an input is known.
    pub fn insert(&mut self, key: Key, knowledge: Confidence) {
        self.remove(key);
        let at = self.place(key).unwrap_or_else(|at| at);
        self.0.insert(at, (key, knowledge));
    }

    /// Nothing is said about an input any more.
    pub fn remove(&mut self, key: Key) {
        self.0.retain(|(known, _)| *known != key);
    }

    /// How many inputs something was said about.
    pub fn count(&self) -> usize {
        self.0.len()
    }

    /// Where an input stands, or would.
    fn place(&self, key: Key) -> Result<usize, usize> {
        self.0.binary_search_by_key(&key, |(known, _)| *known)
    }
}
