//! Another way to set up the same boat: a name, and the inputs that differ.

use crate::boat::{Inputs, Key, SectionId, Worksheet};
use crate::schema::Value;

/// Another way to set up the same boat.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Arrangement {
    /// What the user calls it; empty as long as nobody has named it.
    pub name: String,
    /// The inputs that differ from the worksheet, in worksheet order.
    pub changes: Vec<(Key, Value)>,
}

impl Arrangement {
    /// What differs between two sets of inputs, without a name.
    pub fn between(from: &Inputs, to: &Inputs) -> Arrangement {
        Arrangement {
            name: String::new(),
            changes: Key::all()
                .filter(|key| from.get(*key) != to.get(*key))
                .map(|key| (key, to.get(key)))
                .collect(),
        }
    }

    /// Changes one input more, or takes a change back.
    pub fn put(&mut self, key: Key, value: Option<Value>) {
        self.changes.retain(|(changed, _)| *changed != key);
        if let Some(value) = value {
            let place = self.changes.partition_point(|(before, _)| *before < key);
            self.changes.insert(place, (key, value));
        }
    }

    /// Every input it may change, of those that matter when the worksheet is set
    /// up this way; goal and engine rule are the same for all arrangements.
    pub fn changeable(&self, sheet: &Worksheet) -> Vec<Key> {
        let with = self.on(sheet);
        let same = [SectionId::goal, SectionId::rule];
        Key::all()
            .filter(|key| !same.contains(&key.section) && key.applies(&with.inputs))
            .collect()
    }

    /// The worksheet set up this way, under its own name.
    pub fn on(&self, sheet: &Worksheet) -> Worksheet {
        let mut with = sheet.clone();
        for (key, value) in &self.changes {
            // What a field does not take stays as it was.
            drop(with.state(*key, *value));
        }
        with
    }
}
