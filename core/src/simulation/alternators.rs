//! The boat's alternators, calibrated once for all that is asked of them.

use crate::boat::{Inputs, InstalledAlternator};
use crate::physics::regulator::hot_cap_a;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::hot_output::holds_hot_a;
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
    /// Calibrates those of a worksheet.
    pub fn of(inputs: &Inputs) -> Alternators {
        let alternators = Alternators::calibrate(&inputs.alternators().collect());
        match inputs.hot_cap() {
            Some(part) => alternators.capped_hot(part, inputs),
            None => alternators,
        }
    }

    /// The same, each capped at a part of what it holds hot, 0 to 2. One that never
    /// settles has no such cap.
    fn capped_hot(self, part: f64, inputs: &Inputs) -> Alternators {
        let each = self.list.iter().zip(holds_hot_a(inputs, 0.0));
        let capped = |(one, hot_a): (&CalibratedAlternator, f64)| match hot_a > 0.0 {
            true => one.capped(hot_cap_a(part, hot_a)),
            false => *one,
        };
        Alternators {
            list: each.map(capped).collect(),
        }
    }

    /// Calibrates any that are on one engine.
    pub fn calibrate(installed: &PerAlternator<InstalledAlternator>) -> Alternators {
        Alternators {
            list: installed.iter().map(CalibratedAlternator::of).collect(),
        }
    }
}
