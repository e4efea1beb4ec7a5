//! The one description of an input.

use crate::schema::{Choice, Value};
use crate::units::UnitOfMeasure;

/// How well a figure is usually known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Confidence {
    /// Read off an instrument on this boat.
    Measured,
    /// Printed on the machine or in its papers.
    Nameplate,
    /// Put forward by somebody else, as in a link that was sent back.
    Proposed,
    /// Nobody has looked yet.
    Guess,
}

impl Confidence {
    /// All of them, best first.
    pub const ALL: [Confidence; 4] = [
        Confidence::Measured,
        Confidence::Nameplate,
        Confidence::Proposed,
        Confidence::Guess,
    ];

    /// Whether somebody has looked aboard.
    pub const fn is_read(self) -> bool {
        matches!(self, Confidence::Measured | Confidence::Nameplate)
    }

    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Confidence::Measured => "measured",
            Confidence::Nameplate => "nameplate",
            Confidence::Proposed => "proposed",
            Confidence::Guess => "guess",
        }
    }

    /// One letter, for links.
    pub const fn letter(self) -> char {
        match self {
            Confidence::Measured => 'm',
            Confidence::Nameplate => 'n',
            Confidence::Proposed => 'p',
            Confidence::Guess => 'g',
        }
    }
}

/// Where in its section the form shows an input.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// In sight when the section is open.
    Plain,
    /// Behind "finer points".
    Advanced,
}

/// What a figure may be when nobody has looked. Only facts about the boat have
/// one; a decision, such as a set-point, is what it says.
/// Ranges are those that the help texts name; shares are own reasoning.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spread {
    /// From one figure to another, in the input's unit.
    Between(f64, f64),
    /// So many per cent either way of what it says.
    Percent(f64),
    /// So much either way of what it says, in the input's unit.
    By(f64),
    /// Any of its options.
    Either,
}

/// The kind of value an input takes.
#[derive(Debug, Clone, Copy)]
pub enum Kind {
    /// A number from `low` to `high`.
    Number {
        /// Smallest accepted.
        low: f64,
        /// Largest accepted.
        high: f64,
        /// Used until the user says otherwise.
        default: f64,
        /// The unit.
        unit: &'static UnitOfMeasure,
    },
    /// A number that may be left empty.
    Optional {
        /// Smallest accepted.
        low: f64,
        /// Largest accepted.
        high: f64,
        /// What empty means, in words for the form.
        empty_says: &'static str,
        /// The unit.
        unit: &'static UnitOfMeasure,
    },
    /// One of a few options.
    Choice {
        /// The options.
        options: &'static [Choice],
        /// Position of the default.
        default: usize,
    },
}

/// The one description of an input.
#[derive(Debug, Clone, Copy)]
pub struct FieldSpec {
    /// What the form calls it.
    pub label: &'static str,
    /// Where to read it on a boat, and what it does.
    pub help: &'static str,
    /// What it takes.
    pub kind: Kind,
    /// How well it is usually known once somebody has filled it in.
    pub usual: Confidence,
    /// What it may be when it is a guess; none for decisions and for what
    /// moves no answer.
    pub spread: Option<Spread>,
    /// Whether it is decided rather than found out: nobody can know it better.
    pub decided: bool,
    /// Where the form shows it.
    pub place: Place,
}

impl FieldSpec {
    /// An input with nothing said but its label and kind.
    pub(crate) const fn bare(label: &'static str, kind: Kind) -> FieldSpec {
        FieldSpec {
            label,
            help: "",
            kind,
            usual: Confidence::Guess,
            spread: None,
            decided: false,
            place: Place::Plain,
        }
    }

    /// The value used until the user says otherwise.
    pub const fn default(&self) -> Value {
        match self.kind {
            Kind::Number { default, .. } => Value::Number(default),
            Kind::Optional { .. } => Value::Absent,
            Kind::Choice { default, .. } => Value::Choice(default),
        }
    }

    /// Whether it can be known better or worse: a choice is made, not measured,
    /// unless it is one of fact.
    pub fn is_fact(&self) -> bool {
        match self.kind {
            Kind::Choice { .. } => self.spread == Some(Spread::Either),
            _ => !self.decided,
        }
    }

    /// The unit; none for a choice.
    pub const fn unit(&self) -> Option<&'static UnitOfMeasure> {
        match self.kind {
            Kind::Number { unit, .. } | Kind::Optional { unit, .. } => Some(unit),
            Kind::Choice { .. } => None,
        }
    }

    /// Smallest and largest accepted; none for a choice.
    pub const fn range(&self) -> Option<(f64, f64)> {
        match self.kind {
            Kind::Number { low, high, .. } | Kind::Optional { low, high, .. } => Some((low, high)),
            Kind::Choice { .. } => None,
        }
    }
}
