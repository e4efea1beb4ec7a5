//! Cooling as the worksheet can tell it: by the winding's temperature at full
//! field on the bench.

use crate::boat::Inputs;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::cooling::{anchor_range_c, cooling_of_winding};

/// Worst and best cooling factor that an anchor can express.
pub(super) fn cooling_span(inputs: &Inputs, alternator: &AlternatorAtSpeed) -> (f64, f64) {
    let installed = inputs.first_alternator();
    let (coolest_c, hottest_c) = anchor_range_c();
    let cooling = |winding_c: f64| cooling_of_winding(&installed, &alternator.curve, winding_c);
    (cooling(hottest_c), cooling(coolest_c))
}
