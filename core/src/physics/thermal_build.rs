//! How an alternator is built, as far as its heat goes.

use crate::physics::heat_balance::size;

/// How an alternator is built, as far as its heat goes. The rating says how large
/// the surfaces are that heat passes through; the mass says how much heat warms
/// it by a kelvin, and so how long it takes to get hot, and nothing else.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Build {
    /// Its mass \[kg\].
    pub mass_kg: f64,
    /// Rated current times the voltage of the rating \[W\].
    pub rated_w: f64,
    /// Rotor above body \[K\].
    pub rotor_rise_k: f64,
    /// How its heat divides between the ways out.
    pub paths: HeatPaths,
}

/// How an alternator's heat divides between its ways out. What is not known of
/// it moves the hot current of the same winding on the bench by up to two fifths.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatPaths {
    /// From winding to body, of an alternator of 1520 W \[W/K\]: 2 to 10.
    pub winding_body_w_k: f64,
    /// From body to air, over that from winding to air: 1 to 2.
    pub body_air: f64,
    /// From rectifier plate to air, over that from winding to air.
    pub rectifier_air: f64,
    /// Part of the cooling that there is without the fan, 0 to 1.
    pub still_air: f64,
}

impl Build {
    /// Its surfaces against those of the alternator the conductances are given for.
    pub fn size(&self) -> f64 {
        size(self.rated_w)
    }
}
