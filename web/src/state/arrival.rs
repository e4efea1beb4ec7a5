//! How the open boat came here, where that needs saying.

/// A boat that was not simply opened from the list, or one that did not come.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Arrival {
    /// One sentence.
    pub headline: String,
    /// What was not understood, in sentences.
    pub remarks: Vec<String>,
    /// Whether it came by a link: then it may be a proposal for a boat kept here.
    pub by_link: bool,
}

impl Arrival {
    /// With nothing to remark on.
    pub fn of(headline: &str) -> Arrival {
        Arrival {
            headline: headline.to_string(),
            remarks: Vec::new(),
            by_link: false,
        }
    }

    /// Of a kept boat that is understood in part: what is changed goes into a
    /// copy.
    pub fn spoilt(remarks: Vec<String>) -> Arrival {
        Arrival {
            remarks,
            ..Arrival::of(
                "Some of what was kept is not understood. It is left as it is, and can be saved as a file from the list of saved boats; this is a copy of the rest.",
            )
        }
    }
}
