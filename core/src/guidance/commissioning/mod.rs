//! The commissioning list: what to do, in order, before the arrangement is
//! trusted, and when to stop. `steps` is the list, `figures` the numbers of
//! this boat that stand in it, `form` the sheet for the readings of the hot
//! run, which the sea trial reads.
//!
//! Which steps are done is kept in the worksheet: [`Worksheet::tick`].

mod figures;
mod form;
mod steps;

use serde::Serialize;

use crate::boat::Worksheet;
use crate::report::Report;

use figures::Figures;
pub use form::{COLUMNS, Form, FormRow, form};
use steps::STEPS;

/// A part of the list.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Stage {
    /// Its name, the same for ever.
    pub key: &'static str,
    /// Its heading.
    pub title: &'static str,
    /// One line beneath the heading.
    pub about: &'static str,
    /// Its steps that this boat has.
    pub steps: Vec<Step>,
}

/// A step of the list.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// Its name, the same for ever: what a tick is kept under.
    pub id: &'static str,
    /// What to do, with this boat's figures.
    pub text: String,
    /// What to beware of while doing it.
    pub caution: Option<&'static str>,
    /// When to stop and not go on.
    pub stop: Option<String>,
    /// Whether it is ticked.
    pub done: bool,
}

/// When a step is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum When {
    Before,
    Start,
    Hot,
    Disconnect,
    Month,
}

/// A part of the list before its steps stand in it.
struct Part {
    when: When,
    key: &'static str,
    title: &'static str,
    about: &'static str,
}

/// The parts, in order.
const PARTS: [Part; 5] = [
    Part {
        when: When::Before,
        key: "before",
        title: "Before power",
        about: "Engine stopped and cold, bank disconnected.",
    },
    Part {
        when: When::Start,
        key: "start",
        title: "First start",
        about: "One person at the engine stop, one at the meter.",
    },
    Part {
        when: When::Hot,
        key: "hot",
        title: "Hot run, 30 minutes",
        about: "The readings go into the sea trial and correct the calculation.",
    },
    Part {
        when: When::Disconnect,
        key: "disconnect",
        title: "Disconnect test",
        about: "Charging must stop before the bank disconnects. No contactor or switch is ever opened with an alternator charging.",
    },
    Part {
        when: When::Month,
        key: "month",
        title: "After a month",
        about: "New belts stretch and new lugs settle.",
    },
];

/// The list for a boat; stages that would be empty are left out.
pub fn commissioning(sheet: &Worksheet, report: &Report) -> Vec<Stage> {
    let figures = Figures::of(sheet, report);
    let mut stages = Vec::new();
    for part in &PARTS {
        let mut listed = Vec::new();
        for item in STEPS {
            if item.when != part.when || !(item.applies)(&sheet.inputs) {
                continue;
            }
            let mut text = item.text.to_string();
            if let Some(figure) = item.figure {
                text.push(' ');
                text.push_str(&figure(&figures));
            }
            listed.push(Step {
                id: item.id,
                text,
                caution: item.caution,
                stop: item.stop.map(|stop| stop(&figures)),
                done: sheet.is_done(item.id),
            });
        }
        if !listed.is_empty() {
            stages.push(Stage {
                key: part.key,
                title: part.title,
                about: part.about,
                steps: listed,
            });
        }
    }
    stages
}

/// Every step there is, of any boat, in order.
pub fn all_ids() -> impl Iterator<Item = &'static str> {
    STEPS.iter().map(|item| item.id)
}

#[cfg(test)]
mod tests {
    use crate::boat::COMMISSIONING_STEPS;
    use crate::guidance::commissioning::all_ids;

    #[test]
    fn every_step_can_be_ticked() {
        assert!(all_ids().eq(COMMISSIONING_STEPS.iter().copied()));
    }
}
