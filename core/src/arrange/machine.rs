//! The larger alternator that proposals are made with.

use crate::worksheet::{Alternator, Engine, InsulationClass};

/// A large-frame machine of a rating \[A\] on this engine: 9.5 kg, insulation
/// class H, 60 % efficient, 140 °C at full field on the bench, good for
/// 10 000 rpm. Common practice, no source. Its pulley is that of the machine
/// it replaces, or a larger one where that would overspeed it.
pub(crate) fn large(rated_a: f64, instead_of: &Alternator, engine: &Engine) -> Alternator {
    const MOST_RPM: f64 = 10_000.0;
    Alternator {
        rated_a,
        mass_kg: Some(9.5),
        class: InsulationClass::H,
        efficiency_pct: 60.0,
        anchor_winding_c: Some(140.0),
        max_rpm: MOST_RPM,
        // To a hundredth, as a tape measures pulleys.
        pulley_ratio: instead_of
            .pulley_ratio
            .min((100.0 * MOST_RPM / engine.top_rpm).floor() / 100.0)
            .max(0.5),
        ..Alternator::default()
    }
}
