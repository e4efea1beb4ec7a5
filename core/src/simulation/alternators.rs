//! The boat's alternators, calibrated once for all that is asked of them.

use crate::boat::{Inputs, WhichAlternator};
use crate::simulation::alternator::CalibratedAlternator;

/// The alternators of a boat, at no speed yet. Plants for other engine speeds,
/// blowers and banks come of the same ones: none of these changes what an
/// alternator is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Alternators {
    /// The alternator.
    pub main: CalibratedAlternator,
    /// A second one.
    pub second: Option<CalibratedAlternator>,
}

impl Alternators {
    /// Calibrates those of a worksheet.
    pub fn of(inputs: &Inputs) -> Alternators {
        Alternators {
            main: CalibratedAlternator::of(&inputs.first_alternator()),
            second: inputs
                .alternator(WhichAlternator::Second)
                .map(|installed| CalibratedAlternator::of(&installed)),
        }
    }
}
