//! The name of an input: [`Key`]. Uses the sections and what is installed.

use serde::{Serialize, Serializer};

use crate::boat::input::Condition;
use crate::boat::{Inputs, SectionId};

/// Names one input: its section and its place there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Key {
    /// The section it stands in.
    pub section: SectionId,
    /// Its place there.
    pub(super) field: u8,
}

/// As its name.
impl Serialize for Key {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(&self.name())
    }
}

impl Key {
    /// Every input, in worksheet order.
    pub fn all() -> impl Iterator<Item = Key> {
        SectionId::ALL.iter().flat_map(|section| section.keys())
    }

    /// The input at a place of its section, such as `Alternator::rated_a`. Ask
    /// [`key!`](crate::key) instead, which takes no place of another section.
    #[doc(hidden)]
    pub const fn at(section: SectionId, place: u8) -> Key {
        Key {
            section,
            field: place,
        }
    }

    /// The input of that name, as [`Key::name`] writes it.
    pub fn named(name: &str) -> Option<Key> {
        SectionId::ALL.iter().find_map(|section| {
            let short = name.strip_prefix(section.prefix())?.strip_prefix('_')?;
            section.keys().find(|key| key.short() == short)
        })
    }

    /// Whether it matters for these inputs; one of an alternator that is not
    /// there does not.
    pub fn applies(self, inputs: &Inputs) -> bool {
        let alternator = match self.section.alternator() {
            None => None,
            Some(which) => match inputs.alternator(which) {
                None => return false,
                there => there,
            },
        };
        match self.condition() {
            Condition::Boat(holds) => holds(inputs),
            Condition::Alternator(holds) => alternator.as_ref().is_some_and(holds),
        }
    }

    /// Its name in links, files and reports: `bank_capacity_ah`.
    pub fn name(self) -> String {
        format!("{}_{}", self.section.prefix(), self.short())
    }
}

impl SectionId {
    /// Its inputs, in order.
    pub fn keys(self) -> impl Iterator<Item = Key> {
        (0..self.count()).map(move |field| Key {
            section: self,
            field: field as u8,
        })
    }
}
