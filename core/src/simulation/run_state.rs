//! The state that a run steps through time, by name, and as the numbers in a
//! row that the solver wants.

use crate::numerics::hermite::Blend;
use crate::physics::thermal::Temperatures;
use crate::simulation::moment::{Moment, ThermalState};
use crate::simulation::per_alternator::{PerAlternator, listed};
use crate::simulation::plant::Plant;

/// Everything that changes in a run; or how fast it does, each a second.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct RunState {
    /// State of charge, 0 to 1.
    pub(super) soc: f64,
    /// Air of the engine space \[°C\].
    pub(super) air_c: f64,
    /// What all alternators have given \[A·s\]: carried along, feeds nothing.
    pub(super) given_as: f64,
    /// What their shafts have taken \[J\]: carried along, feeds nothing.
    pub(super) shaft_j: f64,
    /// Each alternator.
    pub(super) alternators: PerAlternator<Nodes>,
}

/// What is warm of one alternator \[°C\].
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Nodes {
    pub(super) winding_c: f64,
    pub(super) body_c: f64,
    pub(super) rectifier_c: f64,
    /// Of a sensor that lags; without meaning for one that does not.
    pub(super) sensor_c: f64,
}

/// Parts of a state beside those of the alternators.
const SHARED: usize = 4;

/// Parts of a state with so many alternators, none of whose sensors lags.
pub(super) const fn parts(alternators: usize) -> usize {
    SHARED + 3 * alternators
}

/// Parts of a state with so many alternators whose sensors may lag.
pub(super) const fn parts_with_sensors(alternators: usize) -> usize {
    SHARED + 4 * alternators
}

/// Parts of each of so many alternators in a row of so many parts: winding, body
/// and rectifier, and its sensor where there is room for it.
const fn nodes(row: usize, alternators: usize) -> usize {
    if row < parts_with_sensors(alternators) {
        3
    } else {
        4
    }
}

impl RunState {
    /// A state of which every part is one figure.
    pub(super) fn all(figure: f64, alternators: usize) -> RunState {
        let nodes = Nodes {
            winding_c: figure,
            body_c: figure,
            rectifier_c: figure,
            sensor_c: figure,
        };
        RunState {
            soc: figure,
            air_c: figure,
            given_as: figure,
            shaft_j: figure,
            alternators: (0..alternators).map(|_| nodes).collect(),
        }
    }

    /// As the solver wants it: what is shared, then one alternator after another.
    /// What there is no place for stays out.
    pub(super) fn to_row<const N: usize>(&self) -> [f64; N] {
        let mut row = [0.0; N];
        row[..SHARED].copy_from_slice(&[self.soc, self.air_c, self.given_as, self.shaft_j]);
        let places = row[SHARED..].chunks_mut(nodes(N, self.alternators.len()));
        for (places, nodes) in places.zip(&self.alternators) {
            let nodes = [
                nodes.winding_c,
                nodes.body_c,
                nodes.rectifier_c,
                nodes.sensor_c,
            ];
            for (place, node) in places.iter_mut().zip(nodes) {
                *place = node;
            }
        }
        row
    }

    /// The state of so many alternators that stands in a row.
    pub(super) fn of_row<const N: usize>(row: &[f64; N], alternators: usize) -> RunState {
        let [soc, air_c, given_as, shaft_j] = std::array::from_fn(|part| row[part]);
        let each = row[SHARED..].chunks(nodes(N, alternators));
        let of = |parts: &[f64]| Nodes {
            winding_c: parts[0],
            body_c: parts[1],
            rectifier_c: parts[2],
            sensor_c: parts.get(3).copied().unwrap_or(air_c),
        };
        RunState {
            soc,
            air_c,
            given_as,
            shaft_j,
            alternators: listed(each.take(alternators).map(of)),
        }
    }

    /// Temperatures of one alternator and its air; none where there is no such one.
    pub(super) fn temperatures_of(&self, alternator: usize) -> Option<Temperatures> {
        let nodes = self.alternators.get(alternator)?;
        Some(nodes.temperatures(self.air_c))
    }

    /// Temperatures of each alternator and its air.
    pub(super) fn temperatures(&self) -> PerAlternator<Temperatures> {
        let nodes = self.alternators.iter();
        listed(nodes.map(|one| one.temperatures(self.air_c)))
    }

    /// How warm each alternator is, and what its sensor feels.
    pub(super) fn thermal(&self, plant: &Plant) -> PerAlternator<ThermalState> {
        let each = plant.alternators.iter().zip(&self.alternators);
        listed(each.map(|(alternator, nodes)| {
            let t = nodes.temperatures(self.air_c);
            ThermalState {
                t,
                sensed_c: alternator.sensed_c(&t, nodes.sensor_c),
            }
        }))
    }

    /// What happens aboard at a time \[s\] in this state.
    pub(super) fn moment(&self, plant: &Plant, seconds: f64) -> Moment {
        plant.moment(seconds, self.soc, &self.thermal(plant))
    }

    /// The hottest node of all alternators \[°C\].
    pub(super) fn hottest_c(&self) -> f64 {
        let nodes = self.alternators.iter();
        nodes
            .flat_map(|one| [one.winding_c, one.body_c, one.rectifier_c])
            .fold(f64::NEG_INFINITY, f64::max)
    }

    /// The state between two points, each a state and its rate.
    pub(super) fn between(blend: &Blend, a: [&RunState; 2], b: [&RunState; 2]) -> RunState {
        let of = |figure: fn(&RunState) -> f64| blend.of(a.map(figure), b.map(figure));
        let nodes = |alternator: usize| {
            let node = |figure: fn(&Nodes) -> f64| {
                let figure = |state: &RunState| figure(&state.alternators[alternator]);
                blend.of(a.map(figure), b.map(figure))
            };
            Nodes {
                winding_c: node(|one| one.winding_c),
                body_c: node(|one| one.body_c),
                rectifier_c: node(|one| one.rectifier_c),
                sensor_c: node(|one| one.sensor_c),
            }
        };
        let [state, _] = a;
        RunState {
            soc: of(|state| state.soc),
            air_c: of(|state| state.air_c),
            given_as: of(|state| state.given_as),
            shaft_j: of(|state| state.shaft_j),
            alternators: listed((0..state.alternators.len()).map(nodes)),
        }
    }
}

impl Nodes {
    fn temperatures(&self, air_c: f64) -> Temperatures {
        Temperatures {
            winding_c: self.winding_c,
            body_c: self.body_c,
            rectifier_c: self.rectifier_c,
            air_c,
        }
    }
}
