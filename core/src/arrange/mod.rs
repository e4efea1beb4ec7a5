//! Which arrangement: ways to set up the same boat, each worked out by the
//! same report and put beside the others by hours, heat, fuel, risk and money.
//!
//! `machine` is the larger alternator the proposals are made with, `propose`
//! writes the usual arrangements down as changes of the worksheet, `parts` says
//! what would have to be bought for them, `outcome` works one out.

mod machine;
mod outcome;
mod parts;
mod propose;

use serde::Serialize;

use crate::worksheet::{Arrangement, Worksheet};

use machine::large;
pub use outcome::{Hottest, Outcome, YearCost};
pub(crate) use parts::price;
pub use parts::{Part, parts};
pub use propose::proposals;
pub(crate) use propose::{add_second, put_large, straight};

/// The arrangements of a boat beside each other.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Comparison {
    /// The worksheet as it stands first, then the usual arrangements that
    /// differ from it, then the user's own.
    pub outcomes: Vec<Outcome>,
}

/// Works out all arrangements of a boat.
pub fn compare(sheet: &Worksheet) -> Comparison {
    let all = all(sheet);
    let mut outcomes: Vec<Outcome> = Vec::with_capacity(all.len());
    for arrangement in &all {
        let next = Outcome::of(sheet, arrangement, outcomes.first());
        outcomes.push(next);
    }
    Comparison { outcomes }
}

/// The worksheet as it stands, the usual arrangements, the user's own.
pub fn all(sheet: &Worksheet) -> Vec<Arrangement> {
    let usual = proposals(sheet);
    let standing = usual
        .iter()
        .find(|proposal| proposal.changes.is_empty())
        .map_or("As the worksheet stands", |proposal| proposal.name.as_str());
    let mut all = vec![Arrangement {
        name: standing.to_string(),
        changes: Vec::new(),
    }];
    all.extend(usual.iter().filter(|p| !p.changes.is_empty()).cloned());
    all.extend(sheet.arrangements.iter().cloned());
    all
}
