//! What the engine burns, with the alternators and without them.

use crate::boat::{Injection, Inputs};
use crate::physics::fuel::{Willans, friction_kpa, friction_kw, willans};

/// What the way of injection adds to an engine's friction, C₁ \[kPa\]; see [`friction_kpa()`].
pub(crate) fn chamber_kpa(injection: Injection) -> f64 {
    match injection {
        Injection::Direct => 75.0,
        Injection::Chamber => 110.0,
    }
}

/// Fuel of the boat's engine at a speed \[rpm\].
pub(super) fn engine_fuel(inputs: &Inputs, engine_rpm: f64) -> Willans {
    let eng = &inputs.eng;
    let kpa = friction_kpa(chamber_kpa(eng.injection), engine_rpm, eng.stroke_mm);
    willans(
        friction_kw(kpa, eng.displacement_l, engine_rpm),
        eng.indicated_efficiency_pct / 100.0,
        eng.fuel_mj_kg,
        eng.fuel_kg_l,
    )
}
