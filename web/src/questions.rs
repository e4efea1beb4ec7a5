//! The short way in.

use ampwright_core::boat::{Key, QUESTIONS};

use crate::field;
use crate::loads;
use crate::paper::{Section, written};

/// The few questions that give a first honest answer.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut text = r#"<section class="questions" aria-labelledby="questions-title"><h2 id="questions-title">Your boat in eight questions</h2><p class="lead">Answer what you know and leave the rest. The answer above follows each figure.</p><ol>"#.to_string();
        for question in QUESTIONS {
            text += &format!("<li><h3>{}</h3>", question.asks);
            for key in question.keys.iter().filter_map(|name| Key::named(name)) {
                text += &field::row("ask", key);
            }
            if question.keys.contains(&"daily_basis") {
                text += &loads::place("ask");
            }
            text += "</li>";
        }
        text + "</ol></section>" + &loads::form()
    }),
    parts: &[],
    acts: loads::ACTS,
    start: |_| (),
};
