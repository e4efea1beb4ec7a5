//! Temperatures as a report writes them.

use serde::Serialize;

use crate::physics::thermal::Temperatures;

/// Temperatures \[°C\].
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PartTemperatures {
    /// Stator winding.
    pub winding_c: f64,
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
            case_c: t.body_c,
            rectifier_c: t.rectifier_c,
            air_c: t.air_c,
        }
    }
}
