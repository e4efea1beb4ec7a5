//! The boat's alternators, calibrated once for all that is asked of them.

use crate::boat::Inputs;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::plant::Plant;

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
            main: CalibratedAlternator::of(inputs),
            second: inputs
                .as_second()
                .map(|seen| CalibratedAlternator::of(&seen)),
        }
    }

    /// The boat with these alternators, its house drawing `load_a` \[A\] while
    /// charging. `inputs` may differ from those they were calibrated with in
    /// all that is not of an alternator, its regulator or its cooling air.
    pub fn plant(&self, inputs: &Inputs, load_a: f64) -> Plant {
        self.plant_at(inputs, load_a, inputs.eng.rpm)
    }

    /// The boat with these alternators at another engine speed \[rpm\]; see
    /// [`Self::plant`].
    pub fn plant_at(&self, inputs: &Inputs, load_a: f64, engine_rpm: f64) -> Plant {
        Plant::with(self, inputs, load_a, engine_rpm)
    }
}
