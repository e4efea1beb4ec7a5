//! The worksheet: a boat's inputs, how well they are known, its loads, its legs, its months and
//! the user's own arrangements. Uses the inputs and their keys.

use crate::boat::{Arrangement, EmptyMeans, Inputs, Key, Known, Leg, Load, Months};
use crate::schema::{Confidence, InputError, Kind, Value};

/// A boat's worksheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Worksheet {
    /// What the user calls it.
    pub name: String,
    /// The figures.
    pub inputs: Inputs,
    /// Inputs somebody has vouched for, and how well they are known; all
    /// others are defaults, that is guesses.
    pub known: Known,
    /// The list of loads.
    pub loads: Vec<Load>,
    /// The day as legs, in their order; none for a day of one run.
    pub legs: Vec<Leg>,
    /// The year by months.
    pub months: Months,
    /// Arrangements of the user's own, to be compared with this one.
    pub arrangements: Vec<Arrangement>,
    /// Steps of the commissioning list that are done, in its order; see
    /// [`Worksheet::tick`]. No link carries them.
    pub done: Vec<String>,
}

impl Worksheet {
    /// Sets an input and marks it as known as well as it usually is.
    ///
    /// # Errors
    /// Why the field does not take it; nothing is changed then.
    pub fn state(&mut self, key: Key, value: Value) -> Result<(), InputError> {
        self.inputs.set(key, value)?;
        if self.known.get(key).is_none() {
            self.known.insert(key, key.spec().usual);
        }
        Ok(())
    }

    /// Sets an input as somebody types it. What is usually read off a plate counts
    /// as that; what would have to be measured is a guess until they say that it
    /// was.
    ///
    /// # Errors
    /// Why the field does not take it; nothing is changed then.
    pub fn enter(&mut self, key: Key, value: Value) -> Result<(), InputError> {
        let said = self.known.get(key);
        self.state(key, value)?;
        if said.is_none() && key.spec().usual == Confidence::Measured {
            self.known.insert(key, Confidence::Guess);
        }
        Ok(())
    }

    /// Puts an input back to its default, a guess.
    pub fn forget(&mut self, key: Key) {
        self.inputs.put(key, key.spec().default());
        self.known.remove(key);
    }

    /// The number an input stands for: the one given, or for an empty field
    /// the figure used instead. `None` for choices and for "none".
    pub fn figure(&self, key: Key) -> Option<f64> {
        match (self.inputs.get(key), key.spec().kind) {
            (Value::Number(number), _) => Some(number),
            (Value::Absent, Kind::Optional { .. }) => match key.empty_means() {
                EmptyMeans::Boat(stands_for) => stands_for(self),
                EmptyMeans::Alternator(stands_for) => {
                    let which = key.section.alternator()?;
                    stands_for(&self.inputs.as_described(which))
                }
            },
            _ => None,
        }
    }

    /// How well an input is known.
    pub fn knowledge(&self, key: Key) -> Confidence {
        self.known.get(key).unwrap_or(Confidence::Guess)
    }

    /// Says how well an input is known; a default that is called a guess is
    /// not said at all.
    pub fn know(&mut self, key: Key, knowledge: Confidence) {
        if knowledge == Confidence::Guess && self.inputs.get(key) == key.spec().default() {
            self.known.remove(key);
        } else {
            self.known.insert(key, knowledge);
        }
    }

    /// Marks facts that a boat was sent with and that differ from one's own boat
    /// as proposed: who sent them has not looked aboard. Without an own boat all
    /// is as well known as it was sent. What was changed here since it was sent
    /// is left alone.
    pub fn mark_proposed(&mut self, sent: &Worksheet, own: Option<&Worksheet>) {
        let unchanged =
            |key: &Key| self.inputs.get(*key) == sent.inputs.get(*key) && key.spec().is_fact();
        let as_sent: Vec<Key> = Key::all().filter(unchanged).collect();
        for key in as_sent {
            match sent.known.get(key) {
                Some(known) => self.known.insert(key, known),
                None => self.known.remove(key),
            }
            let differs = own.is_some_and(|own| own.inputs.get(key) != sent.inputs.get(key));
            if differs && sent.is_said(key) {
                self.know(key, Confidence::Proposed);
            }
        }
    }

    /// Whether a link or a file has to carry this input.
    pub fn is_said(&self, key: Key) -> bool {
        self.known.get(key).is_some() || self.inputs.get(key) != key.spec().default()
    }
}
