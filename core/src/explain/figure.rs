//! A figure that can be explained: what the page calls it, and how it came about.

use crate::boat::Key;
use crate::explain::boat::Boat;
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::{Shown, Term};
use crate::explain::used::Used;
use crate::formula::Source;
use crate::physics::sources::ARITHMETIC;

const UNSETTLED: &str = "The alternator never settles: each degree makes more heat than it carries away, so there is no steady current.";

/// A figure that can be explained.
pub(super) struct Figure {
    /// Its dotted name in the report, or a step's own.
    pub(super) id: &'static str,
    /// What the page calls it; "…" goes on from the line above.
    pub(super) what: &'static str,
    /// What it is called in a line that stands alone.
    pub(super) name: &'static str,
    /// Its unit.
    pub(super) unit: &'static str,
    /// Decimals it is shown with.
    pub(super) decimals: usize,
    /// When it is.
    pub(super) when: When,
    /// The part that gets hot, where it is a temperature.
    pub(super) part: Part,
    source: Option<Source>,
    value: Option<fn(&Instant) -> Option<f64>>,
    explain: fn(&Instant) -> Explanation,
    there: fn(&Boat) -> bool,
    /// Its place among those of its list, where it is one of a list.
    pub(super) place: usize,
    listed: fn(&Boat, usize) -> bool,
}

/// How a figure came about on a boat.
#[derive(Default)]
pub(super) struct Explanation {
    /// What ran; none where there is no formula.
    pub(super) term: Option<Term>,
    /// Why this formula holds here, or what was stepped through.
    pub(super) note: String,
    /// What decides without standing in the formula.
    pub(super) beside: Vec<Beside>,
}

/// What a figure used without having it in its formula.
#[derive(Clone, Copy)]
pub(super) enum Beside {
    /// An input.
    Input(Key),
    /// Another figure.
    Figure(&'static Figure),
}

impl Explanation {
    /// A formula that ran.
    pub(super) fn of(term: Term) -> Explanation {
        Explanation {
            term: Some(term),
            ..Explanation::default()
        }
    }

    /// No formula, and why.
    pub(super) fn none(note: impl Into<String>) -> Explanation {
        Explanation::default().note(note)
    }

    /// With a note.
    pub(super) fn note(mut self, note: impl Into<String>) -> Explanation {
        self.note = note.into();
        self
    }

    /// With inputs that decide.
    pub(super) fn inputs(mut self, keys: &[Key]) -> Explanation {
        self.beside.extend(keys.iter().copied().map(Beside::Input));
        self
    }

    /// With other figures to look at.
    pub(super) fn figures(mut self, figures: &[&'static Figure]) -> Explanation {
        let figures = figures.iter().copied().map(Beside::Figure);
        self.beside.extend(figures);
        self
    }
}

impl Figure {
    /// A figure by its name, what the page calls it, its unit and decimals, and
    /// how it came about. Its value is what its formula comes to.
    pub(super) const fn new(
        id: &'static str,
        what: &'static str,
        unit: &'static str,
        decimals: usize,
        explain: fn(&Instant) -> Explanation,
    ) -> Figure {
        Figure {
            id,
            what,
            name: what,
            unit,
            decimals,
            when: When::Any,
            part: Part::Air,
            source: None,
            value: None,
            explain,
            there: |_| true,
            place: 0,
            listed: |_, _| true,
        }
    }

    /// Its name in a line that stands alone, where the page's goes on from the
    /// line above.
    pub(super) const fn named(mut self, name: &'static str) -> Figure {
        self.name = name;
        self
    }

    /// Its value, where a result holds it.
    pub(super) const fn is(mut self, value: fn(&Instant) -> Option<f64>) -> Figure {
        self.value = Some(value);
        self
    }

    /// When it is.
    pub(super) const fn at(mut self, when: When) -> Figure {
        self.when = when;
        self
    }

    /// The part that gets hot.
    pub(super) const fn of(mut self, part: Part) -> Figure {
        self.part = part;
        self
    }

    /// Who says so, where it is not the formula's own source.
    pub(super) const fn source(mut self, source: Source) -> Figure {
        self.source = Some(source);
        self
    }

    /// Only on some boats.
    pub(super) const fn only(mut self, there: fn(&Boat) -> bool) -> Figure {
        self.there = there;
        self
    }

    /// One of a list, at a place; only where the boat's list has that place.
    pub(super) const fn nth(mut self, place: usize, listed: fn(&Boat, usize) -> bool) -> Figure {
        self.place = place;
        self.listed = listed;
        self
    }

    /// Whether this boat has it.
    pub(super) fn is_there(&self, boat: &Boat) -> bool {
        (self.there)(boat) && (self.listed)(boat, self.place)
    }

    /// How it came about.
    pub(super) fn explained(&self, instant: &Instant) -> Explanation {
        if instant.is_unsettled() {
            return Explanation::none(UNSETTLED);
        }
        (self.explain)(instant)
    }

    /// The figure; none where it does not happen.
    pub(super) fn value_of(&self, instant: &Instant, explanation: &Explanation) -> Option<f64> {
        let value = match self.value {
            Some(value) => value(instant),
            None => explanation.term.as_ref().map(|term| {
                let (shown, node) = Shown::of(term);
                shown.value(&node)
            }),
        };
        value.filter(|value| !value.is_nan())
    }

    /// Who says so.
    pub(super) fn source_of(&self, explanation: &Explanation) -> Source {
        let formula = || explanation.term.as_ref().and_then(Term::source);
        self.source.or_else(formula).unwrap_or(ARITHMETIC)
    }

    /// It as a formula of an instant uses it: at its own moment, where it has one.
    pub(super) fn used(&'static self, instant: &Instant) -> Used {
        let same = (self.when, self.part) == (instant.when, instant.part);
        if same || self.when == When::Any {
            return self.used_here(instant);
        }
        self.used_here(&instant.boat.instant(self.when, self.part))
    }

    /// It as a formula of an instant uses it, as it is at that instant.
    pub(super) fn used_here(&'static self, instant: &Instant) -> Used {
        let value = match self.value {
            Some(value) => value(instant),
            None => self.value_of(instant, &self.explained(instant)),
        };
        Used {
            working: Some(self.id),
            ..Used::described(self.name, self.unit, value.unwrap_or(f64::NAN))
        }
    }
}
