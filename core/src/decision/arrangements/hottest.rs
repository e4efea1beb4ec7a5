//! The part of all alternators that comes closest to what it bears. Uses the run's
//! highest temperatures.

use serde::Serialize;

use crate::analysis;
use crate::analysis::PartTemperatures;
use crate::boat::Alternator;

/// The part that comes closest to its limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Hottest {
    /// Which.
    pub part: analysis::Part,
    /// How hot it gets \[°C\].
    pub celsius: f64,
    /// What it bears \[°C\].
    pub limit_c: f64,
}

impl Hottest {
    /// How far from its limit \[K\]; negative beyond it.
    pub fn margin_k(&self) -> f64 {
        self.limit_c - self.celsius
    }

    /// That of one alternator.
    pub(super) fn of(temps: &PartTemperatures, alternator: &Alternator) -> Hottest {
        let parts = [
            (analysis::Part::Winding, temps.winding_c),
            (analysis::Part::Rectifier, temps.rectifier_c),
            (analysis::Part::Case, temps.case_c),
        ]
        .map(|(part, celsius)| Hottest {
            part,
            celsius,
            limit_c: part.limit_c(alternator),
        });
        let [winding, rest @ ..] = parts;
        rest.into_iter().fold(winding, Hottest::worse)
    }

    /// The one of two that is closer to its limit; itself where they are equal.
    pub(super) fn worse(self, other: Hottest) -> Hottest {
        if other.margin_k() < self.margin_k() {
            other
        } else {
            self
        }
    }
}
