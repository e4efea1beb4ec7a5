//! The commissioning list in words: headings, what to do in each step with this
//! boat's figures, what to beware of, and when to stop.

mod figure;
mod steps;
mod stop;

use crate::guidance::commissioning::{StageCode, Step};
use crate::units::Reader;

pub use steps::caution;
pub use stop::stop;

/// The heading of a stage.
pub const fn title(stage: StageCode) -> &'static str {
    match stage {
        StageCode::Before => "Before power",
        StageCode::Start => "First start",
        StageCode::Hot => "Hot run, 30 minutes",
        StageCode::Disconnect => "Disconnect test",
        StageCode::Month => "After a month",
    }
}

/// One line beneath the heading.
pub const fn about(stage: StageCode) -> &'static str {
    match stage {
        StageCode::Before => "Engine stopped and cold, bank disconnected.",
        StageCode::Start => "One person at the engine stop, one at the meter.",
        StageCode::Hot => "The readings go into the sea trial and correct the calculation.",
        StageCode::Disconnect => {
            "Charging must stop before the bank disconnects. Never open a contactor or switch with an alternator charging."
        }
        StageCode::Month => "New belts stretch and new lugs settle.",
    }
}

/// What to do, with this boat's figures.
pub fn text(step: &Step, reader: &Reader) -> String {
    let instruction = steps::instruction(step.code);
    match &step.figure {
        Some(figure) => format!("{instruction} {}", figure::sentence(figure, reader)),
        None => instruction.to_string(),
    }
}
