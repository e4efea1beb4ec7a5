//! What a goal search found, in sentences.

use crate::decision::goal_search::{Found, Unmet};
use crate::text::findings::sentences;
use crate::units::Reader;

/// What there is to say before the plans, one sentence or a few each.
pub fn goal_search(found: &Found, reader: &Reader) -> Vec<String> {
    let mut said = Vec::new();
    if !found.today.is_empty() {
        said.push(format!(
            "Your boat as it stands is not safe to run like this, so leaving it unchanged is not a plan. {}",
            sentences(&found.today, reader)
        ));
    }
    match &found.unmet {
        None => {}
        Some(Unmet::NothingSafe { always }) => {
            let kept: Vec<_> = found
                .today
                .iter()
                .filter(|finding| always.contains(&finding.code()))
                .cloned()
                .collect();
            said.push(if kept.is_empty() {
                "None of these combinations is safe. Let more be changed, or put right what is wrong today first.".to_string()
            } else {
                format!(
                    "None of these combinations is safe, because none of them changes this: {} Put that right first, then search again.",
                    sentences(&kept, reader)
                )
            });
        }
        Some(Unmet::OutOfReach) => said.push(
            "None of the safe combinations reaches the goal. Let more be changed, or ask for less."
                .to_string(),
        ),
    }
    said
}
