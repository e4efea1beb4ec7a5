//! Boats by their link, and what is proposed for them and comes of it.

use ampwright_core::boat::Worksheet;
use ampwright_core::decision::arrangements::{Kind, Outcome, compare, parts, proposals};
use ampwright_core::text::{arrangements, purchase};
use ampwright_core::units::Reader;

use crate::regulated;

pub fn boat(link: &str) -> Worksheet {
    regulated::opened(&format!("v=2&{link}&end"))
}

pub fn proposal_of(sheet: &Worksheet, kind: Kind) -> Option<Worksheet> {
    let proposals = proposals(sheet);
    let (_, found) = proposals.iter().find(|(one, _)| *one == kind)?;
    Some(found.on(sheet))
}

pub fn outcome_of(sheet: &Worksheet, called: &str) -> Outcome {
    compare(sheet)
        .outcomes
        .into_iter()
        .find(|outcome| arrangements::name(outcome).contains(called))
        .unwrap_or_else(|| panic!("no arrangement called {called}"))
}

/// What there is to buy, in words.
pub fn bought(now: &Worksheet, with: &Worksheet) -> Vec<String> {
    let parts = parts(now, with);
    parts
        .iter()
        .map(|part| purchase(part, &Reader::METRIC))
        .collect()
}
