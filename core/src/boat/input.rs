//! How an input of a boat is written in its `section!`: its description, when it
//! matters, and what an empty field stands for.

use crate::boat::{Inputs, InstalledAlternator, Worksheet};
use crate::schema::{Choice, Confidence, FieldSpec, Kind, Place, Spread};
use crate::units::UnitOfMeasure;

/// An input as its section writes it.
#[derive(Debug, Clone, Copy)]
pub struct Input {
    /// Its description.
    pub spec: FieldSpec,
    /// When it matters.
    pub applies: Condition,
    /// What is used where it is left empty.
    pub empty_means: EmptyMeans,
}

/// When an input matters.
#[derive(Debug, Clone, Copy)]
pub enum Condition {
    /// When this holds for the boat.
    Boat(fn(&Inputs) -> bool),
    /// When this holds for the alternator that the input's section is about.
    Alternator(fn(&InstalledAlternator) -> bool),
}

/// The figure that an empty input stands for, if it is one.
#[derive(Debug, Clone, Copy)]
pub enum EmptyMeans {
    /// It follows from the boat.
    Boat(fn(&Worksheet) -> Option<f64>),
    /// It follows from the alternator that the input's section is about.
    Alternator(fn(&InstalledAlternator) -> Option<f64>),
}

const fn bare(label: &'static str, kind: Kind) -> Input {
    Input {
        spec: FieldSpec::bare(label, kind),
        applies: Condition::Boat(|_| true),
        empty_means: EmptyMeans::Boat(|_| None),
    }
}

/// A number.
pub(crate) const fn number(
    label: &'static str,
    unit: &'static UnitOfMeasure,
    low: f64,
    high: f64,
    default: f64,
) -> Input {
    bare(
        label,
        Kind::Number {
            low,
            high,
            default,
            unit,
        },
    )
}

/// A number that may be left empty; `empty_says` is what empty means in words.
pub(crate) const fn optional(
    label: &'static str,
    unit: &'static UnitOfMeasure,
    low: f64,
    high: f64,
    empty_says: &'static str,
    empty_means: fn(&Worksheet) -> Option<f64>,
) -> Input {
    may_be_empty(
        label,
        unit,
        low,
        high,
        empty_says,
        EmptyMeans::Boat(empty_means),
    )
}

/// A number of an alternator or its belt that may be left empty; what that means
/// follows from the alternator.
pub(crate) const fn optional_of_alternator(
    label: &'static str,
    unit: &'static UnitOfMeasure,
    low: f64,
    high: f64,
    empty_says: &'static str,
    empty_means: fn(&InstalledAlternator) -> Option<f64>,
) -> Input {
    may_be_empty(
        label,
        unit,
        low,
        high,
        empty_says,
        EmptyMeans::Alternator(empty_means),
    )
}

const fn may_be_empty(
    label: &'static str,
    unit: &'static UnitOfMeasure,
    low: f64,
    high: f64,
    empty_says: &'static str,
    empty_means: EmptyMeans,
) -> Input {
    let kind = Kind::Optional {
        low,
        high,
        empty_says,
        unit,
    };
    Input {
        empty_means,
        ..bare(label, kind)
    }
}

/// One of a few options.
pub(crate) const fn choose(
    label: &'static str,
    options: &'static [Choice],
    default: usize,
) -> Input {
    bare(label, Kind::Choice { options, default })
}

impl Input {
    pub(crate) const fn help(mut self, help: &'static str) -> Input {
        self.spec.help = help;
        self
    }
    pub(crate) const fn measured(mut self) -> Input {
        self.spec.usual = Confidence::Measured;
        self
    }
    pub(crate) const fn nameplate(mut self) -> Input {
        self.spec.usual = Confidence::Nameplate;
        self
    }
    /// May be from one figure to another when it is a guess.
    pub(crate) const fn spread(mut self, low: f64, high: f64) -> Input {
        self.spec.spread = Some(Spread::Between(low, high));
        self
    }
    /// May be so many per cent more or less when it is a guess.
    pub(crate) const fn spread_pct(mut self, percent: f64) -> Input {
        self.spec.spread = Some(Spread::Percent(percent));
        self
    }
    /// May be so much more or less when it is a guess.
    pub(crate) const fn spread_by(mut self, reach: f64) -> Input {
        self.spec.spread = Some(Spread::By(reach));
        self
    }
    /// May be any of its options when it is a guess.
    pub(crate) const fn spread_either(mut self) -> Input {
        self.spec.spread = Some(Spread::Either);
        self
    }
    /// A decision, such as a goal: it is what it says.
    pub(crate) const fn decided(mut self) -> Input {
        self.spec.decided = true;
        self
    }
    pub(crate) const fn advanced(mut self) -> Input {
        self.spec.place = Place::Advanced;
        self
    }
    /// Matters only when this holds for the boat.
    pub(crate) const fn when(mut self, applies: fn(&Inputs) -> bool) -> Input {
        self.applies = Condition::Boat(applies);
        self
    }
    /// Matters only when this holds for the alternator its section is about.
    pub(crate) const fn when_of_alternator(
        mut self,
        applies: fn(&InstalledAlternator) -> bool,
    ) -> Input {
        self.applies = Condition::Alternator(applies);
        self
    }
}
