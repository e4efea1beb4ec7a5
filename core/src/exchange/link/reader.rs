//! A link as it is being read, and its text without escapes.

use percent_encoding::percent_decode_str;

use crate::boat::Worksheet;
use crate::boat::reading::Remark;
use crate::exchange::remarks::Remarks;
use crate::schema::Excerpt;

/// A link as it is being read.
#[derive(Default)]
pub(super) struct LinkReader {
    /// What was understood so far.
    pub sheet: Worksheet,
    /// Whether its end was there.
    pub whole: bool,
    /// What was not understood so far.
    pub remarks: Remarks,
}

impl LinkReader {
    /// Notes what was not understood.
    pub fn remark(&mut self, remark: Remark) {
        self.remarks.push(remark);
    }

    /// Notes all of this.
    pub fn remark_all(&mut self, remarks: impl IntoIterator<Item = Remark>) {
        remarks.into_iter().for_each(|remark| self.remark(remark));
    }

    /// A name, as far as it is text.
    pub fn text(&mut self, escaped: &str) -> String {
        let text = unescape(escaped);
        if text.contains(char::REPLACEMENT_CHARACTER) && !escaped.contains("%EF%BF%BD") {
            self.remark(Remark::NameDamaged {
                name: Excerpt::of(&text),
            });
        }
        text
    }
}

/// The beginning of a part of a link, as text.
pub(super) fn excerpt(escaped: &str) -> Excerpt {
    Excerpt::of(&unescape(escaped))
}

/// Text without its escapes: `+` is a blank, `%41` an A.
pub(super) fn unescape(text: &str) -> String {
    percent_decode_str(&text.replace('+', " "))
        .decode_utf8_lossy()
        .into_owned()
}
