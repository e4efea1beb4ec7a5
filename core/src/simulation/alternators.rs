//! The boat's alternators, calibrated once for all that is asked of them.

use crate::boat::InstalledAlternator;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::per_alternator::PerAlternator;

/// The alternators of a boat, at no speed yet. Plants for other engine speeds,
/// blowers and banks come of the same ones: none of these changes what an
/// alternator is.
#[derive(Debug, Clone, PartialEq)]
pub struct Alternators {
    /// Each of them.
    pub list: PerAlternator<CalibratedAlternator>,
}

impl Alternators {
    /// Calibrates any that are on one engine.
    pub fn calibrate(installed: &PerAlternator<InstalledAlternator>) -> Alternators {
        Alternators {
            list: installed.iter().map(CalibratedAlternator::of).collect(),
        }
    }
}
