//! Temperatures as a report writes them.

use serde::Serialize;

use crate::physics::thermal::Temperatures;
use crate::simulation::alternator::AlternatorAtSpeed;

/// Temperatures \[°C\].
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PartTemperatures {
    /// Stator winding.
    pub winding_c: f64,
    /// What that may be at most, where only the case was measured; none where the
    /// winding is known as well as the rest.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub winding_may_be_c: Option<f64>,
    /// Case.
    pub case_c: f64,
    /// Rectifier plate.
    pub rectifier_c: f64,
    /// Air of the engine space.
    pub air_c: f64,
}

impl From<Temperatures> for PartTemperatures {
    fn from(t: Temperatures) -> PartTemperatures {
        PartTemperatures {
            winding_c: t.winding_c,
            winding_may_be_c: None,
            case_c: t.body_c,
            rectifier_c: t.rectifier_c,
            air_c: t.air_c,
        }
    }
}

impl PartTemperatures {
    /// The winding at the most that it may be \[°C\].
    pub fn winding_at_most_c(&self) -> f64 {
        self.winding_may_be_c.unwrap_or(self.winding_c)
    }

    /// Those of an alternator at one moment.
    pub(super) fn of(alternator: &AlternatorAtSpeed, t: &Temperatures) -> PartTemperatures {
        PartTemperatures {
            winding_may_be_c: alternator.winding_may_be_c(t),
            ..(*t).into()
        }
    }
}
