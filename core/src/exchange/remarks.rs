//! Remarks as a reader makes them: however many there are, the first are kept
//! and the others counted.

use crate::boat::reading::Remark;

/// Most remarks on one link or file.
const MOST: usize = 40;

/// The remarks on a link or a file.
#[derive(Debug, Default)]
pub(super) struct Remarks {
    /// The first of them.
    kept: Vec<Remark>,
    /// How many more there were.
    more: usize,
}

impl Remarks {
    /// Adds one behind the others.
    pub(super) fn push(&mut self, remark: Remark) {
        if self.kept.len() < MOST {
            self.kept.push(remark);
        } else {
            self.more += 1;
        }
    }

    /// Adds one before the others.
    pub(super) fn push_front(&mut self, remark: Remark) {
        self.kept.insert(0, remark);
        if self.kept.len() > MOST {
            self.kept.pop();
            self.more += 1;
        }
    }

    /// How many were made.
    pub(super) fn count(&self) -> usize {
        self.kept.len() + self.more
    }

    /// The first of them, and a count of the others if there are any.
    pub(super) fn finish(self) -> Vec<Remark> {
        let mut remarks = self.kept;
        if self.more > 0 {
            remarks.push(Remark::More { count: self.more });
        }
        remarks
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::reading::Remark;
    use crate::exchange::remarks::Remarks;

    #[test]
    fn many_are_counted() {
        let mut remarks = Remarks::default();
        for _ in 0..41 {
            remarks.push(Remark::NameTwice);
        }
        remarks.push_front(Remark::NameNotText);
        assert_eq!(remarks.count(), 42);
        let told = remarks.finish();
        assert_eq!(told.len(), 41);
        assert_eq!(told[0], Remark::NameNotText);
        assert_eq!(told[40], Remark::More { count: 2 });
    }
}
