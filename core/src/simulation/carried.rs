//! What one run leaves to the next: charge, heat, and how long the engine has
//! turned; and what a pause between two makes of it.

use crate::physics::thermal::Temperatures;
use crate::simulation::heat_soak::{Stopped, after_stop};
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;
use crate::simulation::run_state::{Nodes, RunState};
use crate::simulation::trace::Trace;

/// What a run begins with.
#[derive(Debug, Clone, PartialEq)]
pub struct Carried {
    pub(super) state: RunState,
    /// The engine block \[°C\].
    engine_c: f64,
    /// How long the engine has turned without a pause \[s\].
    turning_s: f64,
}

impl Carried {
    /// Everything as it has stood, the bank at a state of charge, 0 to 1.
    pub fn cold(plant: &Plant, soc: f64) -> Carried {
        let alternators = plant.alternators.len();
        Carried {
            state: RunState {
                soc,
                given_as: 0.0,
                shaft_j: 0.0,
                ..RunState::all(plant.start_c, alternators)
            },
            engine_c: plant.space.start_c,
            turning_s: 0.0,
        }
    }

    /// What a run leaves that ends at a time \[s\] after its start.
    pub fn after(trace: &Trace, seconds: f64) -> Carried {
        let plant = &trace.plant;
        Carried {
            state: RunState {
                given_as: 0.0,
                shaft_j: 0.0,
                ..trace.state(seconds)
            },
            engine_c: plant.space.engine_c(seconds),
            turning_s: plant.turning_s + seconds,
        }
    }

    /// The boat that goes on from here: its block as warm, its regulator as long
    /// at work.
    pub fn onto(&self, mut plant: Plant) -> Plant {
        plant.space.start_c = self.engine_c;
        plant.turning_s = self.turning_s;
        plant
    }

    /// What is carried on once the engine has stood for a time \[s\] in which the bank
    /// gave a charge \[A·h\]. A sensor that lags has come as near to the part it sits on
    /// as its lag allows: own reasoning.
    pub fn rested(&self, plant: &Plant, seconds: f64, drawn_ah: f64) -> Carried {
        if seconds <= 0.0 {
            return self.clone();
        }
        let start = Stopped {
            alternators: self.temperatures(),
            air_c: self.state.air_c,
            engine_c: self.engine_c,
        };
        let end = after_stop(plant, &start, seconds);
        let sensors = self.state.alternators.iter().map(|nodes| nodes.sensor_c);
        let each = plant.alternators.iter().zip(&end.alternators).zip(sensors);
        let alternators = each
            .map(|((alternator, t), sensor_c)| Nodes {
                winding_c: t.winding_c,
                body_c: t.body_c,
                rectifier_c: t.rectifier_c,
                sensor_c: alternator.sensor_after(t, sensor_c, seconds),
            })
            .collect();
        Carried {
            state: RunState {
                soc: self.state.soc - drawn_ah / plant.bank.capacity_ah,
                air_c: end.air_c,
                alternators,
                ..self.state
            },
            engine_c: end.engine_c,
            turning_s: 0.0,
        }
    }

    /// State of charge, 0 to 1.
    pub fn soc(&self) -> f64 {
        self.state.soc
    }

    /// Temperatures of each alternator and its air.
    pub fn temperatures(&self) -> PerAlternator<Temperatures> {
        self.state.temperatures()
    }
}
