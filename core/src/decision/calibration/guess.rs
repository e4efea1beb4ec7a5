//! The figures a log may correct.

use crate::boat::Inputs;

/// What is asked of a log.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guess {
    /// Factor on the worksheet's air conductances.
    pub cooling: f64,
    /// Factor on the heat capacities the mass gives.
    pub capacity: f64,
    /// Part of its own warm air drawn in again, β.
    pub recirculation: f64,
    /// Factor on the worksheet's heat through the walls.
    pub walls: f64,
    /// Factor on the worksheet's heat from winding to case.
    pub coupling: f64,
    /// Everything at the first reading above what the case showed \[K\].
    pub start_k: f64,
}

impl Guess {
    /// As the worksheet has it.
    pub fn of(inputs: &Inputs) -> Guess {
        Guess {
            cooling: 1.0,
            capacity: inputs.alt.heat_capacity_factor,
            recirculation: inputs.space.recirculation_pct / 100.0,
            walls: 1.0,
            coupling: 1.0,
            start_k: 0.0,
        }
    }
}
