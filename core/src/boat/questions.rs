//! The short way in: the few questions that give a first honest answer. Their
//! fields are those of the worksheet; only the question is put differently.

use crate::boat::{Key, NominalVolts, Worksheet, key};

/// One question and the inputs that answer it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Question {
    /// The question.
    pub asks: &'static str,
    /// The inputs that answer it; see [`is_asked`].
    pub keys: &'static [Key],
}

/// Whether the questions show an input: where it applies; the alternator's
/// voltage only where it may be another one than 12 V, or once it is said.
pub fn is_asked(sheet: &Worksheet, key: Key) -> bool {
    let unusual = key != key!(alt.nominal_v)
        || sheet.inputs.bank.nominal_v != NominalVolts::V12
        || sheet.is_said(key);
    key.applies(&sheet.inputs) && unusual
}

/// The questions, in order.
pub const QUESTIONS: &[Question] = &[
    Question {
        asks: "What is aboard today?",
        keys: &[key!(before.battery), key!(before.connection)],
    },
    Question {
        asks: "What is the house bank to be?",
        keys: &[
            key!(bank.chemistry),
            key!(bank.capacity_ah),
            key!(bank.nominal_v),
        ],
    },
    Question {
        asks: "What does the boat use in a day?",
        keys: &[key!(daily.basis), key!(daily.use_ah)],
    },
    Question {
        asks: "How much solar is there?",
        keys: &[key!(sun.panel_w)],
    },
    Question {
        asks: "Which alternator, and what regulates it?",
        keys: &[
            key!(alt.rated_a),
            key!(alt.nominal_v),
            key!(reg.kind),
            key!(reg.set_point_c),
            key!(reg.link),
        ],
    },
    Question {
        asks: "How is the alternator to be connected to the house bank?",
        keys: &[key!(way.kind), key!(way.joined), key!(way.converter_a)],
    },
    Question {
        asks: "How fast does it turn while charging?",
        keys: &[key!(eng.rpm), key!(alt.pulley_ratio)],
    },
    Question {
        asks: "How warm does the engine space get?",
        keys: &[key!(space.basis), key!(space.hot_c), key!(space.outside_c)],
    },
];
