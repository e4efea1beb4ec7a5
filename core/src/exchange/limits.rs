//! What a worksheet holds, counted; and how much a reader tells of what it did
//! not understand.

use crate::boat::Worksheet;
use crate::schema::{InputError, quoted};

/// Most sentences about one link or file.
const MOST: usize = 40;
/// Most loads and arrangements that are taken: far more than a boat has, and
/// no more than a page can show.
pub const MOST_LOADS: usize = 500;
/// See [`MOST_LOADS`].
pub const MOST_ARRANGEMENTS: usize = 50;
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
pub(super) fn not_endless(text: &str, what: &str, most: usize) -> Result<(), InputError> {
    if text.len() <= most {
        return Ok(());
    }
    Err(InputError(format!(
        "{what} is longer than {} MB, which no worksheet is. Nothing was taken from it.",
        most / 1_000_000
    )))
}

/// Cuts what is more than a worksheet can hold, and says so.
pub(super) fn bounded(sheet: &mut Worksheet, remarks: &mut Vec<String>) {
    let mut say = |count: usize, most: usize, what: &str| {
        if count > most {
            remarks.insert(
                0,
                format!(
                    "{count} {what} are more than a worksheet holds; the first {most} were taken."
                ),
            );
        }
    };
    say(sheet.loads.len(), MOST_LOADS, "loads");
    say(sheet.arrangements.len(), MOST_ARRANGEMENTS, "arrangements");
    sheet.loads.truncate(MOST_LOADS);
    sheet.arrangements.truncate(MOST_ARRANGEMENTS);
    let loads = sheet.loads.iter_mut().map(|load| &mut load.name);
    let arrangements = sheet.arrangements.iter_mut().map(|one| &mut one.name);
    for name in [&mut sheet.name]
        .into_iter()
        .chain(loads)
        .chain(arrangements)
    {
        if let Some((end, _)) = name.char_indices().nth(LONGEST_NAME) {
            remarks.push(format!(
                "The name {} is longer than {LONGEST_NAME} characters; the rest is left out.",
                quoted(name)
            ));
            name.truncate(end);
        }
    }
}

/// Leaves the first of many remarks and a count of the others.
pub(super) fn shortened(remarks: &mut Vec<String>) {
    let more = remarks.len().saturating_sub(MOST);
    if more > 0 {
        remarks.truncate(MOST);
        remarks.push(format!("{more} more parts were not understood."));
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::{Worksheet, demo};
    use crate::exchange::limits::shortened;

    #[test]
    fn counts() {
        assert_eq!(demo().contents(), "19 inputs, 11 loads and 0 arrangements");
        assert_eq!(
            Worksheet::default().contents(),
            "0 inputs, 0 loads and 0 arrangements"
        );
    }

    #[test]
    fn many_remarks_are_counted() {
        let mut remarks = vec![String::from("So."); 42];
        shortened(&mut remarks);
        assert_eq!(remarks.len(), 41);
        assert_eq!(remarks[40], "2 more parts were not understood.");
    }
}
