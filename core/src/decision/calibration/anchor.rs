//! Cooling as the worksheet asks for it: the winding's temperature at full
//! field on the bench.

use crate::boat::{Inputs, Key};
use crate::numerics::bracketed_root;
use crate::physics::thermal::{CalibrationPoint, calibrate_cooling};
use crate::simulation::alternator::{AlternatorAtSpeed, alternator_build};

/// The input it stands in.
pub(super) const ANCHOR: &str = "alt_anchor_winding_c";

/// Lowest and highest anchor the worksheet takes \[°C\].
fn anchor_range() -> (f64, f64) {
    let range = Key::named(ANCHOR).and_then(|key| key.spec().range());
    range.unwrap_or((80.0, 260.0))
}

/// Cooling factor of a machine with its own losses and this anchor \[°C\].
fn cooling_at(inputs: &Inputs, alternator: &AlternatorAtSpeed, winding_c: f64) -> f64 {
    let alt = &inputs.alt;
    let losses = alternator
        .losses
        .at_speed(&alternator.curve, alt.anchor_rpm);
    let anchor = CalibrationPoint {
        winding_c,
        shaft_rpm: alt.anchor_rpm,
        air_c: alt.anchor_air_c,
    };
    calibrate_cooling(
        &alternator_build(&inputs.first_alternator()),
        &alternator.curve,
        &losses,
        &anchor,
    )
    .0
}

/// Worst and best cooling factor an anchor can express.
pub(super) fn cooling_span(inputs: &Inputs, alternator: &AlternatorAtSpeed) -> (f64, f64) {
    let (coolest_c, hottest_c) = anchor_range();
    (
        cooling_at(inputs, alternator, hottest_c),
        cooling_at(inputs, alternator, coolest_c),
    )
}

/// The anchor \[°C\] that gives a cooling factor.
pub(super) fn anchor_c(inputs: &Inputs, alternator: &AlternatorAtSpeed, cooling: f64) -> f64 {
    let (low, high) = anchor_range();
    let spare = |winding_c: f64| cooling_at(inputs, alternator, winding_c) - cooling;
    bracketed_root(spare, low, high, 1e-6)
}
