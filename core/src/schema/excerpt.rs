//! The beginning of what somebody typed or of what a file holds.

use std::fmt;

/// The first few characters of a text, for a sentence about it: however long the
/// text, no more than [`Excerpt::LONGEST`] characters of it and an ellipsis.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
#[serde(transparent)]
pub struct Excerpt(String);

impl Excerpt {
    /// Most characters that are kept.
    pub const LONGEST: usize = 24;

    /// The beginning of a text.
    pub fn of(text: &str) -> Excerpt {
        Excerpt(match text.char_indices().nth(Excerpt::LONGEST) {
            Some((end, _)) => format!("{}…", &text[..end]),
            None => text.to_string(),
        })
    }
}

impl fmt::Display for Excerpt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use crate::schema::Excerpt;

    #[test]
    fn cut_between_characters() {
        let long = "é".repeat(25);
        assert_eq!(Excerpt::of(&long).to_string(), "é".repeat(24) + "…");
        assert_eq!(Excerpt::of(&long[2..]).to_string(), "é".repeat(24));
    }
}
