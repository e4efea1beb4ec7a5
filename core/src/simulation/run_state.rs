//! The state that a run steps through time, as the solver wants it: numbers in
//! a row.

use crate::physics::thermal::Temperatures;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::{Moment, ThermalState};
use crate::simulation::plant::Plant;

/// Parts of a state: charge, air, and carried along alternator ampere-seconds
/// and shaft joules; then winding, body, rectifier and sensor of each machine.
/// One machine alone needs the first of them only, its sensor the last of
/// these, where it lags.
pub(super) const PARTS: usize = 12;
pub(super) type State = [f64; PARTS];

/// Where the parts of the alternator begin, and those of the second one.
pub(super) const MAIN: usize = 4;
pub(super) const SECOND: usize = 8;

pub(super) fn part<const N: usize>(state: &[f64; N], at: usize) -> f64 {
    state.get(at).copied().unwrap_or(state[1])
}

/// Temperatures of the machine whose parts begin at `first`.
pub(super) fn temperatures<const N: usize>(state: &[f64; N], first: usize) -> Temperatures {
    Temperatures {
        winding_c: part(state, first),
        body_c: part(state, first + 1),
        rectifier_c: part(state, first + 2),
        air_c: state[1],
    }
}

fn machine<const N: usize>(
    unit: &AlternatorAtSpeed,
    state: &[f64; N],
    first: usize,
) -> ThermalState {
    let t = temperatures(state, first);
    ThermalState {
        t,
        sensed_c: unit.sensed_c(&t, part(state, first + 3)),
    }
}

/// Both machines; the second one is only meant where there is one.
pub(super) fn machines<const N: usize>(plant: &Plant, state: &[f64; N]) -> [ThermalState; 2] {
    let second = plant
        .second
        .as_ref()
        .map_or(&plant.main, |beside| &beside.unit);
    [
        machine(&plant.main, state, MAIN),
        machine(second, state, SECOND),
    ]
}

/// What happens at a time and state.
pub(super) fn moment<const N: usize>(plant: &Plant, seconds: f64, state: &[f64; N]) -> Moment {
    let [main, second] = machines(plant, state);
    plant.moment(seconds, state[0], &main, &second)
}
