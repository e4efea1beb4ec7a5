//! The texts of boats in the browser's storage, by their numbers.

use ampwright_core::Worksheet;
use ampwright_core::exchange::{Reading, read_json};
use ampwright_core::text::remarks::{read_error, remarks};

use crate::browser::storage::{Storage, StorageError};

/// A boat stands under this and its number.
const BOAT: &str = "ampwright.sheet.";
/// The number of the boat worked on last.
const LAST: &str = "ampwright.last";
/// How many texts were kept so far.
const COUNT: &str = "ampwright.count";

/// The storage with its texts.
pub struct KeptTexts(Storage);

impl KeptTexts {
    /// Looks whether there is a storage.
    ///
    /// # Errors
    /// Where the browser blocks it.
    pub fn open() -> Result<KeptTexts, StorageError> {
        Storage::open().map(KeptTexts)
    }

    /// Whether something of this name is a boat.
    pub fn is_boat(name: &str) -> bool {
        name.starts_with(BOAT)
    }

    /// Number and text of the boat worked on last.
    pub fn last(&self) -> Option<(u32, String)> {
        let number = match self.0.get(LAST) {
            Some(last) => last.parse().ok()?,
            None => *self.numbers().first()?,
        };
        Some((number, self.text(number)?))
    }

    /// A boat's text.
    pub fn text(&self, number: u32) -> Option<String> {
        self.0.get(&name(number))
    }

    /// A boat, with what was not understood in sentences, or why it cannot be
    /// read.
    pub fn boat(&self, number: u32) -> Option<Result<(Worksheet, Vec<String>), String>> {
        self.text(number).map(|text| read(&text))
    }

    /// Numbers of all boats, newest first.
    pub fn numbers(&self) -> Vec<u32> {
        let names = self.0.names();
        let numbers = names.iter().filter_map(|name| name.strip_prefix(BOAT));
        let mut numbers: Vec<u32> = numbers.filter_map(|number| number.parse().ok()).collect();
        numbers.sort_unstable_by(|one, other| other.cmp(one));
        numbers
    }

    /// Numbers that are free, best first.
    pub fn free_numbers(&self) -> impl Iterator<Item = u32> {
        free(self.numbers())
    }

    /// A number that is free.
    pub fn next_number(&self) -> u32 {
        self.free_numbers().next().unwrap_or(1)
    }

    /// Keeps a boat's text.
    ///
    /// # Errors
    /// Where there is no room for it.
    pub fn keep(&self, number: u32, text: &str) -> Result<(), StorageError> {
        self.0.set(&name(number), text)
    }

    /// Keeps a boat no longer.
    pub fn remove(&self, number: u32) {
        self.0.remove(&name(number));
    }

    /// Remembers which boat was worked on last.
    pub fn make_last(&self, number: u32) {
        // Without room for it the newest one opens next time.
        let _ = self.0.set(LAST, &number.to_string());
    }

    /// How many texts were kept so far.
    pub fn count(&self) -> f64 {
        let count = self.0.get(COUNT).and_then(|count| count.parse().ok());
        count.filter(|count: &f64| count.is_finite()).unwrap_or(0.0)
    }

    /// Remembers how many that were.
    pub fn set_count(&self, count: f64) {
        // Without room for it the journal is read once more.
        let _ = self.0.set(COUNT, &count.to_string());
    }
}

fn name(number: u32) -> String {
    format!("{BOAT}{number}")
}

/// The numbers that are free where these are taken, newest first: those above all
/// of them, then the gaps.
fn free(taken: Vec<u32>) -> impl Iterator<Item = u32> {
    let newest = taken.first().copied().unwrap_or(0);
    let above = (newest..u32::MAX).map(|below| below + 1);
    // Somebody may have written the last number there is into the storage.
    let gaps = (1..newest).filter(move |number| !taken.contains(number));
    above.chain(gaps)
}

/// Reads a kept text: the boat and what was not understood, in sentences.
pub fn read(text: &str) -> Result<(Worksheet, Vec<String>), String> {
    match read_json(text) {
        Ok(Reading {
            sheet,
            remarks: left_out,
        }) => Ok((sheet, remarks(&left_out))),
        Err(error) => Err(read_error(&error)),
    }
}

#[cfg(test)]
mod tests {
    use super::free;

    #[test]
    fn new_numbers_are_free() {
        let three = |taken: &[u32]| free(taken.to_vec()).take(3).collect::<Vec<_>>();
        assert_eq!(three(&[]), [1, 2, 3]);
        assert_eq!(three(&[7, 3]), [8, 9, 10]);
        assert_eq!(three(&[u32::MAX - 1, 2, 1]), [u32::MAX, 3, 4]);
        assert_eq!(three(&[u32::MAX, 2, 1]), [3, 4, 5]);
    }
}
