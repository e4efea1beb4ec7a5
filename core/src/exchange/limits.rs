//! What a worksheet holds, counted, and the most that a reader takes.

use crate::boat::Worksheet;
use crate::boat::reading::{Listed, ReadError, Remark, TextKind};
use crate::exchange::remarks::Remarks;
use crate::schema::Excerpt;

/// Most loads and arrangements that are taken: far more than a boat has, and
/// no more than a page can show.
pub const MOST_LOADS: usize = 500;
/// See [`MOST_LOADS`].
pub const MOST_ARRANGEMENTS: usize = 50;
/// Most legs of a day that are taken.
pub const MOST_LEGS: usize = 12;
/// Longest name that is taken \[characters\].
pub const LONGEST_NAME: usize = 200;
/// Most of a link or file that is looked at \[bytes\]; a worksheet takes
/// thousands.
pub(super) const LONGEST_LINK: usize = 1_000_000;
pub(super) const LONGEST_FILE: usize = 10_000_000;

impl Worksheet {
    /// "18 inputs, 11 loads and 1 arrangement".
    pub fn contents(&self) -> String {
        let inputs = counted(self.known.count(), "input");
        let loads = counted(self.loads.len(), "load");
        let arrangements = counted(self.arrangements.len(), "arrangement");
        format!("{inputs}, {loads} and {arrangements}")
    }
}

fn counted(count: usize, what: &str) -> String {
    let many = if count == 1 { "" } else { "s" };
    format!("{count} {what}{many}")
}

/// Refuses a text that is longer than any of ours could be.
pub(super) fn not_endless(text: &str, what: TextKind, most_bytes: usize) -> Result<(), ReadError> {
    if text.len() <= most_bytes {
        return Ok(());
    }
    Err(ReadError::TooLong { what, most_bytes })
}

/// Cuts what is more than a worksheet can hold, and remarks on it.
pub(super) fn bounded(sheet: &mut Worksheet, remarks: &mut Remarks) {
    let mut cut = |what: Listed, count: usize, kept: usize| {
        if count > kept {
            remarks.push_front(Remark::TooMany { what, count, kept });
        }
    };
    cut(Listed::Loads, sheet.loads.len(), MOST_LOADS);
    let arrangements = sheet.arrangements.len();
    cut(Listed::Arrangements, arrangements, MOST_ARRANGEMENTS);
    cut(Listed::Legs, sheet.legs.len(), MOST_LEGS);
    sheet.loads.truncate(MOST_LOADS);
    sheet.legs.truncate(MOST_LEGS);
    sheet.arrangements.truncate(MOST_ARRANGEMENTS);
    let loads = sheet.loads.iter_mut().map(|load| &mut load.name);
    let legs = sheet.legs.iter_mut().map(|leg| &mut leg.name);
    let arrangements = sheet.arrangements.iter_mut().map(|one| &mut one.name);
    for name in [&mut sheet.name]
        .into_iter()
        .chain(loads)
        .chain(legs)
        .chain(arrangements)
    {
        if let Some((end, _)) = name.char_indices().nth(LONGEST_NAME) {
            remarks.push(Remark::NameCut {
                name: Excerpt::of(name),
                longest: LONGEST_NAME,
            });
            name.truncate(end);
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::{Worksheet, demo};

    #[test]
    fn counts() {
        assert_eq!(demo().contents(), "19 inputs, 11 loads and 0 arrangements");
        assert_eq!(
            Worksheet::default().contents(),
            "0 inputs, 0 loads and 0 arrangements"
        );
    }
}
