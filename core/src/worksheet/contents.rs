//! What a worksheet holds, counted; and how much a reader tells of what it did
//! not understand.

use super::Worksheet;

/// Most sentences about one link or file.
const MOST: usize = 40;

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
    use super::shortened;
    use crate::worksheet::{Worksheet, demo};

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
