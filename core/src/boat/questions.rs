//! The short way in: the few questions that give a first honest answer. Their
//! fields are those of the worksheet; only the question is put differently.

use crate::boat::{Key, NominalVolts, Worksheet};

/// One question and the inputs that answer it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Question {
    /// The question.
    pub asks: &'static str,
    /// Keys of the inputs that answer it; see [`is_asked`].
    pub keys: &'static [&'static str],
}

/// Whether the questions show an input: where it applies; the alternator's
/// voltage only where it may be another one than 12 V, or once it is said.
pub fn is_asked(sheet: &Worksheet, key: Key) -> bool {
    let unusual = Key::named("alt_nominal_v") != Some(key)
        || sheet.inputs.bank.nominal_v != NominalVolts::V12
        || sheet.is_said(key);
    key.applies(&sheet.inputs) && unusual
}

/// The questions, in order.
pub const QUESTIONS: &[Question] = &[
    Question {
        asks: "What is aboard today?",
        keys: &["before_battery", "before_connection"],
    },
    Question {
        asks: "What is the house bank to be?",
        keys: &["bank_chemistry", "bank_capacity_ah", "bank_nominal_v"],
    },
    Question {
        asks: "What does the boat use in a day?",
        keys: &["daily_basis", "daily_use_ah"],
    },
    Question {
        asks: "How much solar is there?",
        keys: &["sun_panel_w"],
    },
    Question {
        asks: "Which alternator, and what regulates it?",
        keys: &[
            "alt_rated_a",
            "alt_nominal_v",
            "reg_kind",
            "reg_set_point_c",
            "reg_link",
        ],
    },
    Question {
        asks: "How is the alternator to be connected to the house bank?",
        keys: &["way_kind", "way_converter_a"],
    },
    Question {
        asks: "How fast does it turn while charging?",
        keys: &["eng_rpm", "alt_pulley_ratio"],
    },
    Question {
        asks: "How warm does the engine space get?",
        keys: &["space_basis", "space_hot_c", "space_outside_c"],
    },
];
