//! What flows in a run, kept for whoever asks for the same moment again.

use crate::simulation::moment::ThermalState;
use crate::simulation::per_alternator::MOST_ALTERNATORS;
use crate::simulation::plant::{Drive, Plant};

/// What a drive follows from: a winding, a plate or air a little warmer drives the
/// same (but air that a built-in regulator feels).
#[derive(Clone, Copy, PartialEq, Default)]
struct Asked {
    seconds: f64,
    soc: f64,
    air_c: f64,
    /// Of each alternator.
    sensed_c: [f64; MOST_ALTERNATORS],
    /// Of each alternator: what its rotor follows.
    body_c: [f64; MOST_ALTERNATORS],
}

impl Asked {
    fn new(plant: &Plant, seconds: f64, soc: f64, states: &[ThermalState]) -> Asked {
        let mut asked = Asked {
            seconds,
            soc,
            ..Asked::default()
        };
        let places = asked.sensed_c.iter_mut().zip(&mut asked.body_c);
        for ((sensed_c, body_c), state) in places.zip(states) {
            (*sensed_c, *body_c) = (state.sensed_c, state.t.body_c);
            if plant.held_by_built_in() {
                asked.air_c = state.t.air_c;
            }
        }
        asked
    }
}

/// The two drives asked for last: how rates change with what drives the same is
/// asked at every step.
#[derive(Default)]
pub(super) struct Drives {
    asked: [Asked; 2],
    kept: [Option<Drive>; 2],
    last: usize,
}

impl Drives {
    /// What flows at a time, a state of charge and temperatures.
    pub(super) fn at(
        &mut self,
        plant: &Plant,
        seconds: f64,
        soc: f64,
        states: &[ThermalState],
    ) -> &Drive {
        let asked = Asked::new(plant, seconds, soc, states);
        if self.asked[self.last] != asked {
            self.last = 1 - self.last;
            if self.asked[self.last] != asked {
                self.asked[self.last] = asked;
                self.kept[self.last] = None;
            }
        }
        self.kept[self.last].get_or_insert_with(|| plant.drive(seconds, soc, states))
    }
}
