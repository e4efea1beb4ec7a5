//! The questions that are still open.

use crate::findings::OpenQuestion;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{amperes, kilowatts_of};

/// The question, and what is known without the answer.
pub fn question(question: &OpenQuestion, reader: &Reader) -> String {
    match *question {
        OpenQuestion::Belt {
            alternator,
            shaft_w,
            amperes: alternator_a,
            v_belts,
            ribs,
        } => format!(
            "Which belt turns the {}? It has to carry up to {} for {}. {}",
            words::alternator(alternator),
            reader.show(kilowatts_of(shaft_w)),
            reader.show(amperes(alternator_a)),
            words::belt_needed(v_belts, ribs)
        ),
    }
}
