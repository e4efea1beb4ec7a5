//! The short way in: the few questions that give a first honest answer. Their
//! fields are those of the worksheet; only the question is put differently.

/// One question and the inputs that answer it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Question {
    /// The question.
    pub asks: &'static str,
    /// Keys of the inputs that answer it; those that do not apply are not shown.
    pub keys: &'static [&'static str],
}

/// The questions, in order.
pub const QUESTIONS: &[Question] = &[
    Question {
        asks: "How big is the house bank?",
        keys: &["bank_capacity_ah", "bank_nominal_v"],
    },
    Question {
        asks: "What does the boat use in a day?",
        keys: &["daily_basis", "daily_use_ah"],
    },
    Question {
        asks: "How does the alternator reach the house bank?",
        keys: &["way_kind", "way_converter_a"],
    },
    Question {
        asks: "How many amperes does its plate promise?",
        keys: &["alt_rated_a"],
    },
    Question {
        asks: "How fast does the engine turn while charging?",
        keys: &["eng_rpm"],
    },
    Question {
        asks: "How much faster does the alternator turn?",
        keys: &["alt_pulley_ratio"],
    },
    Question {
        asks: "How warm does the engine space get?",
        keys: &["space_basis", "space_hot_c", "space_outside_c"],
    },
    Question {
        asks: "Does anything hold the alternator back when it gets hot?",
        keys: &["reg_kind", "reg_set_point_c"],
    },
];
